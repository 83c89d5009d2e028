import type {
  Area,
  AxisName,
  Cell,
  Id,
  LineProperties,
  Sheet,
  SheetContent,
  SheetProperties,
} from '../types.ts';
import { Lines } from './lines.ts';

/** A sheet that steps write into. Cells stand in one map a column: there are few columns, many rows. */
export class DraftSheet implements Sheet {
  readonly id: Id;
  readonly rows: Lines;
  readonly columns: Lines;
  properties: SheetProperties;
  areas: readonly Area[];
  readonly #cells = new Map<Id, Map<Id, Cell>>();

  constructor(content: SheetContent) {
    this.id = content.id;
    this.properties = content.properties;
    this.rows = new Lines(content.rows);
    this.columns = new Lines(content.columns);
    this.areas = content.areas;
    for (const { id, properties } of content.rowProperties) this.rows.setProperties(id, properties);
    for (const { id, properties } of content.columnProperties)
      this.columns.setProperties(id, properties);
    for (const { row, column, cell } of content.cells) this.put(row, column, cell);
  }

  lines(axis: AxisName): Lines {
    return axis === 'rows' ? this.rows : this.columns;
  }

  cell(row: Id, column: Id): Cell | undefined {
    return this.#cells.get(column)?.get(row);
  }

  *cells(): Generator<{ row: Id; column: Id; cell: Cell }> {
    for (const column of this.columns.ids)
      for (const [row, cell] of this.#cells.get(column) ?? [])
        if (!this.rows.isGone(row)) yield { row, column, cell };
  }

  /** Those in deleted lines too. */
  *everyCell(): Generator<{ row: Id; column: Id; cell: Cell }> {
    for (const [column, cells] of this.#cells)
      for (const [row, cell] of cells) yield { row, column, cell };
  }

  get size(): number {
    let size = 0;
    if (this.rows.anyGone) for (const _ of this.cells()) size++;
    else for (const column of this.columns.ids) size += this.#cells.get(column)?.size ?? 0;
    return size;
  }

  put(row: Id, column: Id, cell: Cell | null): void {
    const cells = this.#cells.get(column);
    if (cell) {
      if (cells) cells.set(row, cell);
      else this.#cells.set(column, new Map([[row, cell]]));
    } else if (cells?.delete(row) && cells.size === 0) this.#cells.delete(column);
  }

  /** Whether nothing stands in these lines, gone crossing lines included. */
  isEmpty(axis: AxisName, ids: readonly Id[]): boolean {
    if (axis === 'columns') return !ids.some((id) => this.#cells.has(id));
    const columns = [...this.#cells.values()];
    return !ids.some((row) => columns.some((cells) => cells.has(row)));
  }
}

export function lineProperties(lines: Lines): { id: Id; properties: LineProperties }[] {
  return lines.ids.flatMap((id) => {
    const properties = lines.properties(id);
    return properties ? [{ id, properties }] : [];
  });
}
