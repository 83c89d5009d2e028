import type { AxisName, Layout } from '../../formula/types.ts';
import { limits } from '../inside/draft.ts';
import { draftOf } from '../inside/opened.ts';
import { layoutOf } from '../look.ts';
import type { Block, Document, Id, InsertLinesStep, Means } from '../types.ts';
import { words } from '../../words/words.ts';

/** A rectangle of positions on a sheet, in or beyond the lines in use. Indices from 0. */
export interface Region {
  readonly sheet: Id;
  readonly top: number;
  readonly left: number;
  readonly height: number;
  readonly width: number;
}

/**
 * The book as it will be once the lines that a transaction needs have come into use. Lines are minted
 * up to the farthest one asked for; `steps` are what the transaction has to begin with.
 */
export class Growing implements Layout {
  readonly #layout: Layout;
  readonly #document: Document;
  readonly #means: Pick<Means, 'newId'>;
  readonly #minted = new Map<string, { step: InsertLinesStep; ids: Id[]; from: number }>();
  readonly #indices = new Map<string, number>();

  constructor(document: Document, means: Pick<Means, 'newId'>) {
    this.#document = document;
    this.#layout = layoutOf(document);
    this.#means = means;
  }

  get steps(): readonly InsertLinesStep[] {
    return [...this.#minted.values()].map(({ step }) => step);
  }

  /** The lines of a region, minted where they are not in use yet; `undefined` beyond the sheet. */
  block({ sheet, top, left, height, width }: Region): Block | undefined {
    const line = (axis: AxisName, from: number, count: number) =>
      Array.from({ length: count }, (_, i) => this.lineAt(sheet, axis, from + i));
    // The farthest line first: all before it are minted in one go.
    if (this.lineAt(sheet, 'rows', top + height - 1) === undefined) return undefined;
    if (this.lineAt(sheet, 'columns', left + width - 1) === undefined) return undefined;
    const known = (id: Id | undefined) => id !== undefined;
    return {
      sheet,
      rows: line('rows', top, height).filter(known),
      columns: line('columns', left, width).filter(known),
    };
  }

  lineAt(sheet: Id, axis: AxisName, index: number): Id | undefined {
    if (!this.#document.sheet(sheet) || !this.has(sheet, axis, index)) return undefined;
    return this.#layout.lineAt(sheet, axis, index) ?? this.#mint(sheet, axis, index);
  }

  #mint(sheet: Id, axis: AxisName, index: number): Id | undefined {
    const key = `${sheet} ${axis}`;
    const lines = this.#document.sheet(sheet)?.[axis];
    const from = lines?.length ?? 0;
    let minted = this.#minted.get(key);
    if (!minted) {
      const ids: Id[] = [];
      const after = lastLine(this.#document, sheet, axis);
      minted = { ids, from, step: { kind: 'insertLines', sheet, axis, ids, after } };
      this.#minted.set(key, minted);
    }
    while (from + minted.ids.length <= index) {
      const id = this.#means.newId();
      this.#indices.set(`${key} ${id}`, from + minted.ids.length);
      minted.ids.push(id);
    }
    return minted.ids[index - from];
  }

  indexOf(sheet: Id, axis: AxisName, line: Id): number {
    const index = this.#layout.indexOf(sheet, axis, line);
    return index >= 0 ? index : (this.#indices.get(`${sheet} ${axis} ${line}`) ?? -1);
  }

  nearest(sheet: Id, axis: AxisName, line: Id, end: 'from' | 'to'): number {
    const minted = this.#indices.get(`${sheet} ${axis} ${line}`);
    return minted ?? this.#layout.nearest(sheet, axis, line, end);
  }

  has(sheet: Id, axis: AxisName, index: number): boolean {
    return this.#layout.has(sheet, axis, index);
  }

  idOfSheet(name: string): Id | undefined {
    return this.#layout.idOfSheet(name);
  }

  nameOfSheet(sheet: Id): string | undefined {
    return this.#layout.nameOfSheet(sheet);
  }

  spellingOf(name: string): string | undefined {
    return this.#layout.spellingOf(name);
  }
}

function lastLine(document: Document, sheet: Id, axis: AxisName): Id | null {
  return draftOf(document).sheet(sheet)?.lines(axis).last ?? null;
}

/** The sentence for a region that does not fit on a sheet. */
export const beyondSheet = words.book.beyondSheet(limits.rows);
