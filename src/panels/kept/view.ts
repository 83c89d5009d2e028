/** What panels show of what is kept beside the open book. */

export interface VersionEntry {
  readonly id: string;
  /** "today, 14:02". */
  readonly when: string;
  /** "Before the tech recce", or why it was kept: "Saved to a file". */
  readonly title: string;
  /** Named by its planner: stays for good. */
  readonly named: boolean;
  readonly size: string;
  /** What changed since the version before it. */
  readonly changes: string;
}

export interface VersionsView {
  readonly busy: boolean;
  readonly versions: readonly VersionEntry[];
  /** Why they cannot be shown, if so. */
  readonly trouble?: string;
}

export interface BinEntry {
  readonly id: string;
  readonly title: string;
  readonly size: string;
  /** "since 3 November, until 3 December". */
  readonly when: string;
}

/** Two states of a book side by side, in words. */
export interface ComparisonView {
  /** The two states by name. */
  readonly before: string;
  readonly after: string;
  /** Title, settings, names and what stands beside the sheets. */
  readonly book: readonly Changed[];
  readonly sheets: readonly SheetChanged[];
}

export interface Changed {
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

export interface SheetChanged {
  readonly title: string;
  /** "added", "2 rows deleted". */
  readonly notes: readonly string[];
  readonly cells: readonly CellChanged[];
  /** Cells beyond those listed. */
  readonly more: number;
}

export interface CellChanged extends Changed {
  readonly address: string;
  /** "note changed". */
  readonly notes: readonly string[];
}
