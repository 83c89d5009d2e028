import type { Record } from '../../book/records.ts';
import type { ReadonlySignal } from '../../panels/kit/signals.ts';
import type { RecordedAs } from '../record.ts';

/** What a person says of a set-up besides what its sheet says. */
export type Told = Partial<Omit<RecordedAs, 'date' | 'time'>>;

/** What the screen of records shows and asks for. */
export interface RecordsSeam {
  readonly records: ReadonlySignal<readonly Record[]>;
  /** How the sheet in view would be called. */
  readonly suggested: { readonly name: string; readonly place: string; readonly meter: string };
  /** A reason where it was not done. */
  record(told: Told): string | undefined;
  remove(id: string): void;
  save(record: Record): void;
  /** Asks for a file and takes its record in; a reason where nothing was taken. */
  open(): Promise<string | undefined>;
  /** Asks for a walk of readings and takes it into the sheet in view. */
  walk(): void;
  /** What can be made from a record: each goes to a sheet, or says why not. */
  readonly makes: readonly {
    readonly name: string;
    make(record: Record): string | undefined;
  }[];
  /** Reads an amount of stops as people write it. */
  stops(text: string): number | undefined;
}
