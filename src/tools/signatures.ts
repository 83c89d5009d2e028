/** What people's sheets rely on: how each function is called, by name. */
export interface Listing {
  /** The version of functions/ that this belongs to. */
  readonly version: string;
  readonly functions: Readonly<Record<string, string>>;
}

/** What a change log says under its newest heading. */
export function newestNotes(changeLog: string): string {
  return changeLog.split(/^## /m)[1] ?? '';
}

/** Whether the newest notes tell of a change: the new form in full, or that the function is gone. */
export function isNoted(name: string, now: string | undefined, notes: string): boolean {
  return notes.includes(now ?? `${name} is gone`);
}

/**
 * The listing brought up to date: what is new joins in, and what changed is taken over only
 * where the newest notes tell of it. Else it stays as promised, and the test fails.
 */
export function updated(kept: Listing, now: Listing, notes: string): Listing {
  const names = [...new Set([...Object.keys(kept.functions), ...Object.keys(now.functions)])];
  const entries = names.sort().flatMap((name) => {
    const [before, after] = [kept.functions[name], now.functions[name]];
    const taken = before === undefined || isNoted(name, after, notes) ? after : before;
    return taken === undefined ? [] : [[name, taken] as const];
  });
  return { version: now.version, functions: Object.fromEntries(entries) };
}

/** What changed without a note: a sentence each. */
export function changes(kept: Listing, now: Listing): string[] {
  return Object.entries(kept.functions).flatMap(([name, before]) => {
    const after = now.functions[name];
    if (after === before) return [];
    const what = after === undefined ? `${before} is gone` : `${before} became ${after}`;
    const note = after ?? `${name} is gone`;
    return [`${what}: write "${note}" into CHANGELOG.md, then npm run generate.`];
  });
}
