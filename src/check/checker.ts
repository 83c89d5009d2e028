import { cellAt, dependentsOf, placeAt, spotOf } from '../book/look.ts';
import type { Book, Change, Document, Effect, Place } from '../book/types.ts';
import type { CellPlace, Engine, Recalculated } from '../engine/types.ts';
import { isChecked, marksAt } from './book.ts';
import { mayHaveNotes, notesAt, type Note } from './notes.ts';
import type { Remark } from './remark.ts';

/** Remarks on a book that follow its changes. Nothing is worked out before somebody asks. */
export interface Checker {
  /** Of one cell; the rest of the book is not looked at. */
  at(place: CellPlace): readonly Remark[];
  /** Of the whole book, by sheet and address. After the first time only what changed is read anew. */
  remarks(): readonly Remark[];
  /**
   * Reads as much of the book as there is time for; true once `remarks` has nothing left to read.
   * So a long book can be read between two key presses.
   */
  readOn(hasTime: () => boolean): boolean;
  /** Calls after each change after which remarks may be others. Returns how to stop. */
  listen(heard: () => void): () => void;
  dispose(): void;
}

/** A cell by ids, as one text: it stays the same where lines are inserted above. */
type Key = string;

interface Known {
  readonly place: Place;
  readonly marks: readonly Note[];
  notes: readonly Note[];
}

const keyOf = ({ sheet, row, column }: Place): Key => `${sheet} ${row} ${column}`;

/** Beyond this many readers of a text, all notes are looked at anew. */
const most = 1_000;

/** `look`: how one cell is looked at, for whoever wants to know how often that is done. */
export function createChecker(book: Book, engine: Engine, look = marksAt): Checker {
  const state = new Checked(book.document, engine, look);
  const listeners = new Set<() => void>();
  const tell = () => {
    for (const heard of [...listeners]) heard();
  };
  const stops = [
    book.listen((change) => {
      if (state.changed(change)) tell();
    }),
    engine.listen((recalculated) => {
      if (state.recalculated(recalculated)) tell();
    }),
  ];
  return {
    at: (place) => state.at(place),
    remarks: () => state.remarks(),
    readOn: (hasTime) => state.readOn(hasTime),
    listen(heard) {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
    dispose() {
      for (const stop of stops) stop();
      listeners.clear();
    },
  };
}

class Checked {
  readonly #document: Document;
  readonly #engine: Engine;
  readonly #marksAt: typeof marksAt;
  /** Only of cells that were looked at; most have nothing to say. */
  readonly #known = new Map<Key, Known>();
  /** Cells that values may bring a note to. */
  readonly #noted = new Map<Key, Known>();
  /** Those among them whose values are others now. */
  readonly #notesDue = new Set<Known>();
  /** Cells with a mark or a note. */
  readonly #speaking = new Map<Key, Known>();
  readonly #dirty = new Map<Key, Place>();
  /** What is still to be looked at for the first time, beside the dirty cells; null after that. */
  #ahead: Iterator<Place> | null;

  constructor(document: Document, engine: Engine, look: typeof marksAt) {
    this.#document = document;
    this.#engine = engine;
    this.#marksAt = look;
    this.#ahead = checkedIn(document);
  }

  at(spot: CellPlace): readonly Remark[] {
    const place = placeAt(this.#document, spot);
    const known = place && this.#look(place);
    return known ? this.#remarksOf(known, spot) : [];
  }

  readOn(hasTime: () => boolean): boolean {
    while (this.#ahead) {
      if (!hasTime()) return false;
      const { done, value } = this.#ahead.next();
      if (done) this.#ahead = null;
      else this.#look(value);
    }
    for (const [key, place] of this.#dirty) {
      if (!hasTime()) return false;
      this.#dirty.delete(key);
      this.#look(place);
    }
    for (const known of this.#notesDue) {
      if (!hasTime()) return false;
      const spot = spotOf(this.#document, known.place);
      if (spot) this.#remarksOf(known, spot);
      else this.#notesDue.delete(known);
    }
    return true;
  }

  remarks(): readonly Remark[] {
    this.readOn(() => true);
    const remarks: Remark[] = [];
    for (const known of this.#speaking.values()) {
      const spot = spotOf(this.#document, known.place);
      if (spot) remarks.push(...this.#remarksOf(known, spot));
    }
    const order = new Map(this.#document.sheets.map(({ id }, index) => [id, index]));
    const at = ({ place }: Remark) => order.get(place.sheet) ?? 0;
    return remarks.sort(
      (a, b) => at(a) - at(b) || a.place.row - b.place.row || a.place.column - b.place.column,
    );
  }

  #look(place: Place): Known | undefined {
    const key = keyOf(place);
    const known = this.#known.get(key);
    if (known) return known;
    const cell = cellAt(this.#document, place);
    const spot = cell && isChecked(cell) ? spotOf(this.#document, place) : undefined;
    if (!spot) return undefined;
    const marks = this.#marksAt(this.#document, this.#engine, spot);
    const fresh: Known = { place, marks, notes: [] };
    this.#known.set(key, fresh);
    if (marks.length > 0) this.#speaking.set(key, fresh);
    if (mayHaveNotes(this.#document, this.#engine, spot)) {
      this.#noted.set(key, fresh);
      this.#notesDue.add(fresh);
    }
    return fresh;
  }

  #remarksOf(known: Known, place: CellPlace): readonly Remark[] {
    if (this.#notesDue.delete(known)) {
      known.notes = notesAt(this.#engine, place);
      const key = keyOf(known.place);
      if (known.marks.length + known.notes.length > 0) this.#speaking.set(key, known);
      else this.#speaking.delete(key);
    }
    return [...known.marks, ...known.notes].map(({ about, sentence }) => ({
      place,
      about,
      sentence,
    }));
  }

  /** The book is another now; says whether that can make a difference. */
  changed({ effects }: Change): boolean {
    if (effects.some(isWide)) {
      this.#forgetAll();
      return true;
    }
    let any = false;
    for (const effect of effects) {
      if (effect.kind !== 'cells') continue;
      for (const { row, column, content } of effect.cells) {
        if (!content) continue;
        any = true;
        this.#touch({ sheet: effect.sheet, row, column });
      }
    }
    return any;
  }

  recalculated({ all, cells, reread = [] }: Recalculated): boolean {
    if (reread === 'all') this.#forgetAll();
    else for (const spot of reread) this.#forget(placeAt(this.#document, spot));
    if (all) this.#forgetNotes();
    for (const spot of cells) {
      const place = placeAt(this.#document, spot);
      const known = place && this.#noted.get(keyOf(place));
      if (known) this.#notesDue.add(known);
    }
    return true;
  }

  #touch(place: Place): void {
    this.#forget(place);
    // The name of a meter is no value that a reading's f-number would change with.
    if (cellAt(this.#document, place)?.content.kind === 'number' || this.#noted.size === 0) return;
    const readers = dependentsOf(this.#document, place);
    if (readers.length > most) return this.#forgetNotes();
    for (const { place: reader } of readers) {
      const known = this.#noted.get(keyOf(reader));
      if (known) this.#notesDue.add(known);
      // A reader may have come to be held against another, or not to be any more.
      for (const { place: next } of dependentsOf(this.#document, reader)) this.#forget(next);
    }
  }

  #forget(place: Place | undefined): void {
    if (!place) return;
    const key = keyOf(place);
    const known = this.#known.get(key);
    if (known) this.#notesDue.delete(known);
    this.#known.delete(key);
    this.#speaking.delete(key);
    this.#noted.delete(key);
    this.#dirty.set(key, place);
  }

  #forgetNotes(): void {
    for (const known of this.#noted.values()) this.#notesDue.add(known);
  }

  #forgetAll(): void {
    this.#known.clear();
    this.#speaking.clear();
    this.#noted.clear();
    this.#notesDue.clear();
    this.#dirty.clear();
    this.#ahead = checkedIn(this.#document);
  }
}

/** What may make a difference to any cell: places, names, what columns measure. */
function isWide(effect: Effect): boolean {
  if (effect.kind === 'cells' || effect.kind === 'title' || effect.kind === 'shelf') return false;
  if (effect.kind === 'sheetProperties') return effect.renamed;
  return !('tail' in effect && effect.tail && effect.kind === 'linesInserted');
}

function* checkedIn(document: Document): Generator<Place, undefined> {
  for (const sheet of document.sheets)
    for (const { row, column, cell } of sheet.cells())
      if (isChecked(cell)) yield { sheet: sheet.id, row, column };
}
