import type { Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import type { Screen } from '../panels/screen.ts';
import type { Desk } from './desk.ts';
import type { FigureHands } from './figure-actions.ts';
import type { FileDoor } from './file-door.ts';
import type { PrintJob } from './print.ts';
import type { Shelf } from './shelf.ts';
import type { Versions } from './versions.ts';

/** What the actions of app reach: everything that is not in the book. */
export interface AppHands extends FigureHands {
  readonly screen: Screen;
  readonly locale: string;
  desk(): Desk | null;
  newId(): string;
  /** Puts a new book on the desk and keeps it. */
  begin(document: Document): Promise<Outcome>;
  readonly ownAddresses: Shelf['ownAddresses'];
  open(id: string): Promise<Outcome>;
  remove(id: string): Promise<Outcome>;
  saveRaw(id: string): Promise<Outcome>;
  readonly versions: Pick<Versions, 'keep'>;
  readonly files: Pick<FileDoor, 'open' | 'save'>;
  leave(): Promise<Outcome>;
  takeOver(): Promise<Outcome>;
  act(id: string, args: unknown): Outcome;
  find(): void;
  print(job: PrintJob): Promise<Outcome>;
  /** Shows the page that hands a set-up over. */
  handOver(): Outcome | Promise<Outcome>;
  /** Opens the readings of the sheet one by one. */
  walk(): Outcome | Promise<Outcome>;
}
