import { maxColumns, maxRows, type Id, type Means } from '../../book/types.ts';
import type { AxisName, Layout } from '../../formula/types.ts';

/** A sheet that is on its way into a book. */
export interface SheetLines {
  readonly id: Id;
  readonly name: string;
  readonly rows: Id[];
  readonly columns: Id[];
}

/** Binds the formulas of a file to lines that come into use as they are referred to. */
export class ImportLayout implements Layout {
  readonly #byName: ReadonlyMap<string, SheetLines>;
  readonly #byId: ReadonlyMap<Id, SheetLines>;
  readonly #means: Pick<Means, 'newId'>;

  /** Sheets by the names they have in the file, in small letters. */
  constructor(sheets: ReadonlyMap<string, SheetLines>, means: Pick<Means, 'newId'>) {
    this.#byName = sheets;
    this.#byId = new Map([...sheets.values()].map((lines) => [lines.id, lines]));
    this.#means = means;
  }

  linesOf(sheet: Id): { readonly rows: readonly Id[]; readonly columns: readonly Id[] } {
    const { rows = [], columns = [] } = this.#byId.get(sheet) ?? {};
    return { rows, columns };
  }

  idOfSheet(name: string): Id | undefined {
    return this.#byName.get(name.toLowerCase())?.id;
  }

  nameOfSheet(sheet: Id): string | undefined {
    return this.#byId.get(sheet)?.name;
  }

  has(_sheet: Id, axis: AxisName, index: number): boolean {
    return index >= 0 && index < (axis === 'rows' ? maxRows : maxColumns);
  }

  lineAt(sheet: Id, axis: AxisName, index: number): Id | undefined {
    const lines = this.#byId.get(sheet)?.[axis];
    if (!lines || !this.has(sheet, axis, index)) return undefined;
    while (lines.length <= index) lines.push(this.#means.newId());
    return lines[index];
  }

  indexOf(sheet: Id, axis: AxisName, line: Id): number {
    return this.#byId.get(sheet)?.[axis].indexOf(line) ?? -1;
  }

  nearest(sheet: Id, axis: AxisName, line: Id): number {
    return this.indexOf(sheet, axis, line);
  }

  spellingOf(): undefined {
    return undefined;
  }
}
