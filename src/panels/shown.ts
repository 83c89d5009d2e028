import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Format, Phase, Photo, Role } from '../book/types.ts';
import type { Spot } from '../session/session.ts';
import type { BinEntry } from './kept/view.ts';

export interface SearchFor {
  readonly text: string;
  readonly matchCase: boolean;
  /** The cell holds this and nothing else. */
  readonly whole: boolean;
  readonly everywhere: boolean;
}

/** What the rows of a table show in one column, each text once. */
export interface FilterView {
  readonly caption: string;
  readonly values: readonly {
    readonly text: string;
    readonly count: number;
    /** In view now. */
    readonly shown: boolean;
  }[];
}

/** How the selected cell is written, and the units it could be written in. */
export interface FormatView {
  readonly format: Format;
  readonly units: readonly string[];
}

export interface Target {
  readonly sheet: string;
  readonly from: Spot;
  readonly to?: Spot;
}

/** A value as people read it. `quiet` for a dash that waits, `wrong` for an error's sentence. */
export interface Shown {
  readonly text: string;
  readonly unit?: string;
  readonly tone?: 'quiet' | 'wrong';
}

export interface SaveView {
  readonly state: 'saved' | 'saving' | 'unsaved';
  readonly sentence: string;
  /** Another tab keeps the book. */
  readonly isElsewhere?: boolean;
}

export interface SheetEntry {
  readonly id: string;
  readonly title: string;
  readonly phase: Phase | null;
  readonly shown: boolean;
  /** "4 off", "11 A free". */
  readonly count?: string;
  /** How many remarks the check has on it, where there are any. */
  readonly remarks?: number;
}

export interface RemarksView {
  /** How many things do not go together; notes are not counted. */
  readonly count: number;
  /** Sheets by the order of the contents, without those that have nothing to say. */
  readonly marks: readonly SheetRemarks[];
  /** Worth a look and no mistakes: a constant out of the usual, dome against flat. */
  readonly notes: readonly SheetRemarks[];
}

export interface SheetRemarks {
  readonly sheet: string;
  readonly title: string;
  readonly count: number;
  /** The first of them by address, each sentence once. */
  readonly said: readonly { readonly sentence: string; readonly cells: readonly Link[] }[];
}

export type Shape = 'over' | 'under' | 'agrees' | 'waits' | 'clips';

export interface Point {
  readonly label: string;
  readonly words: string;
  readonly shape: Shape;
  readonly target: Target;
}

export interface HeadView {
  readonly sheet: string;
  readonly title: string;
  readonly purpose: string;
  /** The points of the sheet, in its order. Empty where a sheet has none. */
  readonly points: readonly Point[];
  /** "5 of 7 points agree, 1 is off, 1 waits". */
  readonly agreement: string;
  /** In force here, in stops. */
  readonly tolerance: number;
  /** Set on the sheet itself, and not only by the book. */
  readonly ownTolerance: boolean;
  /** "4 of 6 rows shown, by Verdict"; empty where all are. */
  readonly filtered: string;
  /** Something on the sheet is held to its tolerance. */
  readonly isHeld: boolean;
}

export interface EntryView {
  /** "E8", "C7:C12". */
  readonly address: string;
  /** What the cell is about, by its captions: "From key, Fill side of face". */
  readonly label: string;
  /** What the cell holds, as typed; what is being typed while there is an entry. */
  readonly text: string;
  readonly typing: boolean;
  readonly quantity: QuantityName | undefined;
  readonly result: Shown;
}

export interface SlipView {
  readonly address: string;
  readonly role: Role | 'result' | 'words' | 'blank';
  readonly title: string;
  /** The column's caption, where it adds something. */
  readonly caption: string;
  readonly value: Shown;
  /** Stands before the value where it is a verdict. */
  readonly shape?: Shape;
  /** The same value in other units: label and text. */
  readonly facts: readonly Fact[];
  /** What else stands in the row, under its captions: the point as a card. */
  readonly row: readonly RowFact[];
  /** Worked formula and what it says. */
  readonly why?: Why;
  readonly comesFrom: Links;
  readonly goesTo: Links;
  readonly remarks: readonly string[];
  readonly note: string;
  readonly photos?: readonly Photo[];
}

export interface Fact {
  readonly label: string;
  readonly text: string;
  readonly shape?: Shape;
}

export interface RowFact extends Fact {
  readonly target: Target;
}

export interface Why {
  readonly function: string;
  /** The formula with this cell's numbers in place; numbers apart, so that they can be lit. */
  readonly worked: readonly { readonly text: string; readonly number: boolean }[];
  /** The arguments: name, where from, value. */
  readonly handed: readonly Fact[];
  readonly summary: string;
}

export interface Link {
  readonly label: string;
  readonly target: Target;
}

/** The first of many. */
export interface Links {
  readonly links: readonly Link[];
  /** How many there are beside them. */
  readonly more: number;
}

export interface FootView {
  /** What the selection amounts to: "Sum" "182 lx". */
  readonly facts: readonly Fact[];
  /** Said when there is nothing to add up. */
  readonly hint: string;
  readonly roles: readonly Role[];
}

export interface Notice {
  readonly id: number;
  readonly sentence: string;
  readonly tone: 'done' | 'refused';
  /** Offers undo beside the sentence. */
  readonly undo: boolean;
  /** Something that should not have been thrown. */
  readonly cause?: unknown;
}

export interface CommandEntry {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  readonly keys: readonly string[];
  readonly search: readonly string[];
  /** Why it cannot run now. */
  readonly unavailable?: string | undefined;
}

export interface NameEntry {
  readonly id: string;
  readonly name: string;
  /** What it means, written: "=Sheet1!$C$7". */
  readonly meaning: string;
  readonly value: Shown;
  readonly target?: Target;
}

export interface KeptEntry {
  readonly id: string;
  readonly title: string;
  /** "today, 14:02". */
  readonly when: string;
  /** "48 kB". */
  readonly size: string;
}

/** A sheet that knows its job. */
export interface TemplateEntry {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
}

export interface StartView {
  readonly templates: readonly TemplateEntry[];
  /** Whether the sample book is there to be opened. */
  readonly sample: boolean;
  readonly kept: readonly KeptEntry[];
  readonly bin: readonly BinEntry[];
  /** Why nothing can be kept on this device, if so. */
  readonly trouble?: string;
  /** Which books the browser has cleared, if any. */
  readonly missing?: string;
  /** A kept book that could not be read, and why. */
  readonly damaged?: { readonly id: string; readonly reason: string };
  readonly busy: boolean;
}
