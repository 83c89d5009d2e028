import type { AxisName, Formula, Layout } from '../../formula/types.ts';
import type { Cell, Document, Id, Name, Settings, Shelf, ShelfName } from '../types.ts';
import { maxColumns, maxRows } from '../types.ts';
import type { DraftSheet } from './sheet.ts';
import type { HolderKey } from './uses.ts';
import { UseIndex, referencesOfName } from './uses.ts';

export const limits: Readonly<Record<AxisName, number>> = { rows: maxRows, columns: maxColumns };

/** Names and sheets are told apart without regard to case. */
export const keyOf = (name: string) => name.toLowerCase();

/** The document that steps write into; everyone else sees it as a `Document`. */
export class Draft implements Document, Layout {
  title: string;
  settings: Settings;
  readonly #sheets = new Map<Id, DraftSheet>();
  /** Deleted sheets, kept for undo. */
  readonly #gone = new Map<Id, DraftSheet>();
  #order: readonly DraftSheet[] = [];
  #byName: Map<string, DraftSheet> | undefined;
  readonly #names = new Map<string, Name>();
  readonly #nameIds = new Map<Id, Name>();
  #sortedNames: readonly Name[] | undefined;
  readonly #shelves = new Map<ShelfName, Shelf>();
  readonly uses = new UseIndex(this);

  constructor(title: string, settings: Settings) {
    this.title = title;
    this.settings = settings;
  }

  // Read as a document

  get sheets(): readonly DraftSheet[] {
    return this.#order;
  }

  sheet(id: Id): DraftSheet | undefined {
    return this.#sheets.get(id);
  }

  sheetNamed(name: string): DraftSheet | undefined {
    this.#byName ??= new Map(this.#order.map((sheet) => [keyOf(sheet.properties.name), sheet]));
    return this.#byName.get(keyOf(name));
  }

  get names(): readonly Name[] {
    this.#sortedNames ??= [...this.#names]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([, name]) => name);
    return this.#sortedNames;
  }

  named(name: string): Name | undefined {
    return this.#names.get(keyOf(name));
  }

  nameWithId(id: Id): Name | undefined {
    return this.#nameIds.get(id);
  }

  shelf(name: ShelfName): Shelf {
    return this.#shelves.get(name) ?? { version: 1, items: [] };
  }

  /** The formula a holder stands for; see `HolderKey`. */
  formulaOf(holder: HolderKey): Formula | undefined {
    const [kind, id = '', row = '', column = ''] = holder.split(' ');
    if (kind === 'name') return this.nameWithId(id)?.formula;
    const cell = this.sheet(id)?.cell(row, column);
    if (kind === 'target') return typeof cell?.target === 'object' ? cell.target : undefined;
    return cell?.content.kind === 'formula' ? cell.content.formula : undefined;
  }

  // Read as a layout

  idOfSheet(name: string): Id | undefined {
    return this.sheetNamed(name)?.id;
  }

  nameOfSheet(sheet: Id): string | undefined {
    return this.#sheets.get(sheet)?.properties.name;
  }

  has(_sheet: Id, axis: AxisName, index: number): boolean {
    return index >= 0 && index < limits[axis];
  }

  lineAt(sheet: Id, axis: AxisName, index: number): Id | undefined {
    return this.#sheets.get(sheet)?.lines(axis).idAt(index);
  }

  indexOf(sheet: Id, axis: AxisName, line: Id): number {
    return this.#sheets.get(sheet)?.lines(axis).indexOf(line) ?? -1;
  }

  nearest(sheet: Id, axis: AxisName, line: Id, end: 'from' | 'to'): number {
    return this.#sheets.get(sheet)?.lines(axis).nearest(line, end) ?? -1;
  }

  spellingOf(name: string): string | undefined {
    return this.named(name)?.name;
  }

  // Write: for steps only. Steps have checked what they pass.

  /** Living sheets, then deleted ones. */
  *everySheet(): Generator<DraftSheet> {
    yield* this.#order;
    yield* this.#gone.values();
  }

  goneSheet(id: Id): DraftSheet | undefined {
    return this.#gone.get(id);
  }

  putCell(sheet: DraftSheet, row: Id, column: Id, cell: Cell | null): void {
    this.uses.replaceCell(sheet.id, row, column, sheet.cell(row, column), cell ?? undefined);
    sheet.put(row, column, cell);
  }

  putName(name: Name): void {
    this.takeName(name.id);
    this.#names.set(keyOf(name.name), name);
    this.#nameIds.set(name.id, name);
    this.#sortedNames = undefined;
    this.uses.add(`name ${name.id}`, referencesOfName(name));
  }

  takeName(id: Id): void {
    const name = this.nameWithId(id);
    if (!name) return;
    this.#names.delete(keyOf(name.name));
    this.#nameIds.delete(id);
    this.#sortedNames = undefined;
    this.uses.remove(`name ${id}`, referencesOfName(name));
  }

  putShelf(name: ShelfName, shelf: Shelf): void {
    this.#shelves.set(name, shelf);
  }

  /** Adds a sheet, or brings a deleted one back. */
  placeSheet(sheet: DraftSheet, at: number): void {
    this.#order = this.#order.toSpliced(at, 0, sheet);
    this.#sheets.set(sheet.id, sheet);
    this.#byName = undefined;
    if (this.#gone.get(sheet.id) !== sheet) this.uses.forget();
    this.#gone.delete(sheet.id);
  }

  /** Takes a sheet out of the book and keeps it where undo finds it. */
  takeSheet(sheet: DraftSheet): void {
    this.#order = this.#order.filter((other) => other !== sheet);
    this.#sheets.delete(sheet.id);
    this.#byName = undefined;
    this.#gone.set(sheet.id, sheet);
  }

  moveSheet(sheet: DraftSheet, to: number): void {
    this.#order = this.#order.filter((other) => other !== sheet).toSpliced(to, 0, sheet);
  }

  sheetRenamed(): void {
    this.#byName = undefined;
  }
}
