import type { AnyDefinition } from '../../functions/define.ts';
import type { Settings, SheetProperties, ShelfItem } from '../book/types.ts';
import type { Figures } from './figures/seam.ts';
import type { ComparisonView, VersionsView } from './kept/view.ts';
import type { ReadonlySignal } from './kit/signals.ts';
import type {
  SearchFor,
  FilterView,
  FormatView,
  Target,
  Shown,
  SaveView,
  SheetEntry,
  RemarksView,
  HeadView,
  EntryView,
  SlipView,
  FootView,
  Notice,
  CommandEntry,
  NameEntry,
  StartView,
} from './shown.ts';

/**
 * What panels see of the open book and what they may ask for. Panels read signals and run commands;
 * they hold nothing that the book, the session or this screen's settings do not hold.
 */
export interface Workbook extends WorkbookViews {
  /** Runs a command by its id. The outcome comes back as a notice; false if it was refused. */
  run(id: string, args?: unknown): boolean;
  /** Shows a sheet, as it was left. */
  show(sheet: string): void;
  /** Selects a cell or block, on another sheet if need be, and moves the focus to the grid. */
  jump(target: Target): void;
  /** Reads what was written in the name box; a reason if it names no place. */
  jumpTo(text: string): string | null;
  /** The entry line was typed in. */
  type(text: string, caret: number): void;
  /** Ends the entry: `true` if it was taken, else why not; what was typed then stays. */
  enter(text: string, then: 'stay' | 'down' | 'up' | 'right' | 'left'): true | string;
  cancel(): void;
  /** Works out what is being typed, without keeping it. */
  tryOut(text: string): Shown;
  say(sentence: string): void;
  propertiesOf(sheet: string): SheetProperties | undefined;
  /** An address for the picture with this hash; undefined where it is not on this device. */
  photo(hash: string): Promise<string | undefined>;
  /** The column of the selected cell and what its rows show; undefined where that is no table. */
  filterHere(): FilterView | undefined;
  /** Goes to the next cell that has it and says where, or that there is none. */
  findNext(wanted: SearchFor, way: 1 | -1): string;
}

export interface WorkbookViews {
  /** The start page is shown until a book is open. */
  readonly page: ReadonlySignal<'start' | 'book'>;
  readonly start: ReadonlySignal<StartView>;
  readonly title: ReadonlySignal<string>;
  readonly save: ReadonlySignal<SaveView>;
  readonly settings: ReadonlySignal<Settings>;
  readonly contents: ReadonlySignal<readonly SheetEntry[]>;
  /** "12 of 19 points agree" in the whole book; empty where one sheet says it all. */
  readonly agreement: ReadonlySignal<string>;
  /** What the check has to say on the whole book, a moment after each change. */
  readonly remarks: ReadonlySignal<RemarksView>;
  readonly head: ReadonlySignal<HeadView>;
  readonly entry: ReadonlySignal<EntryView>;
  readonly slip: ReadonlySignal<SlipView>;
  readonly foot: ReadonlySignal<FootView>;
  readonly notice: ReadonlySignal<Notice | null>;
  /** The versions of the open book, once they were asked for. */
  readonly versions: ReadonlySignal<VersionsView>;
  readonly comparison: ReadonlySignal<ComparisonView | null>;
  /** A newer build of the app waits to be let in. */
  readonly updateReady: ReadonlySignal<boolean>;
  readonly commands: ReadonlySignal<readonly CommandEntry[]>;
  readonly names: ReadonlySignal<readonly NameEntry[]>;
  /** What stands on the book’s shelf of fixtures. */
  readonly fixtures: ReadonlySignal<readonly ShelfItem[]>;
  /** What stands on its shelf of spectra. */
  readonly spectra: ReadonlySignal<readonly ShelfItem[]>;
  readonly format: ReadonlySignal<FormatView>;
  readonly figures: Figures;
  /** The function library; empty until the engine has loaded. */
  readonly functions: ReadonlySignal<readonly AnyDefinition[]>;
}
