import type { HyperFormula, RawCellContent, SimpleCellAddress } from 'hyperformula';
import type { CallSettings } from '../../functions/call.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import { cellAt, placeAt, spotOf } from '../book/look.ts';
import type { Cell, Document, Formula, Id, Sheet } from '../book/types.ts';
import { calculator, prepare } from './door.ts';
import { fromWorld } from './helpers.ts';
import { addressFrom, cellMark } from './marks.ts';
import type { CalculatorContext } from './plugin.ts';
import { isWhole } from './placed.ts';
import { Quantities } from './quantities.ts';
import { Resolver } from './resolver.ts';
import { callSettings } from './settings.ts';
import { EngineWriter } from './text.ts';
import type { CellPlace, EngineOptions } from './types.ts';
import { nearestName } from './words.ts';
import { words } from '../words/words.ts';

/** A cell by ids, as one text. */
export type CellKey = string;

export const cellKey = (sheet: Id, row: Id, column: Id): CellKey => `${sheet} ${row} ${column}`;

/** Formulas that belong to no sheet are worked out on this one. */
const scratch: Id = '';

/** A book inside HyperFormula: its cells as HyperFormula reads them, its sheets under their numbers. */
export class Model {
  readonly document: Document;
  readonly resolver: Resolver;
  readonly quantities: Quantities;
  readonly writer: EngineWriter;
  /** Formulas with a reference to a line or a sheet that is gone: HyperFormula cannot follow those. */
  readonly broken = new Set<CellKey>();
  /** The tolerances that sheets had when they were calculated. */
  #tolerances = new Map<Id, number | null>();
  /** What functions were told that cells measure. */
  readonly told = new Map<CellKey, QuantityName | undefined>();
  /** What functions on each sheet fall back on; other settings mean another build. */
  readonly #settings = new Map<Id, CallSettings>();
  readonly #context: CalculatorContext;
  readonly #shelves: Pick<EngineOptions, 'fixtures' | 'spectra'>;
  #calculator: HyperFormula | undefined;
  #numbers = new Map<Id, number>();
  #sheets: readonly Id[] = [];

  constructor(document: Document, { clock, chance, ...shelves }: EngineOptions) {
    this.document = document;
    this.#shelves = shelves;
    this.resolver = new Resolver(document);
    this.quantities = new Quantities(document, this.resolver);
    const known = new Set<string>([...prepare()]);
    if (!clock) for (const name of ['NOW', 'TODAY']) known.delete(name);
    if (!chance) for (const name of ['RAND', 'RANDBETWEEN']) known.delete(name);
    this.writer = new EngineWriter({
      knows: (name) => known.has(name),
      unknown: (name) => unknownFunction(name, known),
      sheetName: (sheet) => sheetName(this.#numbers.get(sheet) ?? 0),
    });
    this.#context = {
      clock,
      chance,
      settingsFor: (sheet) => this.settingsOn(this.sheetId(sheet)),
      addressFor: (cell) => this.#mark(cell),
      quantityAt: (cell) => this.#tell(cell),
    };
    this.build();
  }

  get calculator(): HyperFormula {
    if (!this.#calculator) throw new Error(words.engine.closed);
    return this.#calculator;
  }

  /** Reads the whole book anew. */
  build(): void {
    this.close();
    this.broken.clear();
    this.told.clear();
    this.quantities.forget();
    this.#settings.clear();
    this.#tolerances = new Map(
      this.document.sheets.map(({ id, properties }) => [id, properties.tolerance]),
    );
    this.#sheets = [...this.document.sheets.map(({ id }) => id), scratch];
    this.#numbers = new Map(this.#sheets.map((id, number) => [id, number]));
    const contents = this.#sheets.map((id, number) => {
      const sheet = this.document.sheet(id);
      return [sheetName(number), sheet ? this.#contents(sheet) : []] as const;
    });
    this.#calculator = calculator(Object.fromEntries(contents), this.#context);
  }

  close(): void {
    this.#calculator?.destroy();
    this.#calculator = undefined;
  }

  settingsOn(sheet: Id): CallSettings {
    const known = this.#settings.get(sheet);
    if (known) return known;
    const { document } = this;
    const fixtures = this.#shelves.fixtures?.(document);
    const spectra = this.#shelves.spectra?.(document);
    const settings = callSettings(document.settings, document.sheet(sheet), fixtures, spectra);
    this.#settings.set(sheet, settings);
    return settings;
  }

  /** The shelf of fixtures or of spectra is another: what functions were handed no longer holds. */
  forgetSettings(): void {
    this.#settings.clear();
  }

  /** Whether functions on a sheet would be handed another tolerance now. */
  hasOtherTolerance(sheet: Id): boolean {
    return this.#tolerances.get(sheet) !== this.document.sheet(sheet)?.properties.tolerance;
  }

  number(sheet: Id): number | undefined {
    return this.#numbers.get(sheet);
  }

  sheetId(number: number): Id {
    return this.#sheets[number] ?? scratch;
  }

  /** The sheet that a formula outside the cells is seen from. */
  home(sheet: Id | undefined): Id {
    return sheet ?? this.document.sheets[0]?.id ?? scratch;
  }

  address({ sheet, row, column }: CellPlace): SimpleCellAddress | undefined {
    const number = this.#numbers.get(sheet);
    return number === undefined ? undefined : { sheet: number, row, col: column };
  }

  text(formula: Formula, sheet: Id): string {
    return this.writer.write(formula.shape.tree, this.resolver.references(formula), sheet);
  }

  isBroken(formula: Formula): boolean {
    return !formula.references.every((reference) => isWhole(reference, this.resolver.layout));
  }

  /** A cell as HyperFormula reads it. The quote keeps it from making times and dates of texts. */
  content(cell: Cell | undefined, sheet: Id): RawCellContent {
    const content = cell?.content;
    if (!content || content.kind === 'blank') return null;
    if (content.kind === 'formula') return this.text(content.formula, sheet);
    return content.kind === 'text' ? `'${content.text}` : content.value;
  }

  /** Puts what a cell holds now into the calculator. */
  put(sheet: Id, row: Id, column: Id): void {
    const key = cellKey(sheet, row, column);
    this.broken.delete(key);
    const spot = spotOf(this.document, { sheet, row, column });
    const address = spot && this.address(spot);
    if (!address) return;
    const cell = cellAt(this.document, { sheet, row, column });
    if (cell?.content.kind === 'formula' && this.isBroken(cell.content.formula))
      this.broken.add(key);
    this.calculator.setCellContents(address, this.content(cell, sheet));
  }

  #contents(sheet: Sheet): RawCellContent[][] {
    const rows: RawCellContent[][] = [];
    for (const { row, column, cell } of sheet.cells()) {
      const index = sheet.rows.indexOf(row);
      while (rows.length <= index) rows.push([]);
      const { content } = cell;
      if (content.kind === 'formula' && this.isBroken(content.formula))
        this.broken.add(cellKey(sheet.id, row, column));
      const line = rows[index];
      if (line) line[sheet.columns.indexOf(column)] = this.content(cell, sheet.id);
    }
    return rows;
  }

  #mark({ sheet: number, row, col }: SimpleCellAddress): string {
    const spot = { sheet: this.sheetId(number), row, column: col };
    const place = placeAt(this.document, spot);
    return place ? cellMark(place) : addressFrom(this.document, spot, spot.sheet);
  }

  #tell({ sheet: number, row, col }: SimpleCellAddress): QuantityName | undefined {
    const spot = { sheet: this.sheetId(number), row, column: col };
    const quantity = this.quantities.of(spot);
    const place = placeAt(this.document, spot);
    if (place) this.told.set(cellKey(place.sheet, place.row, place.column), quantity);
    return quantity;
  }
}

function sheetName(number: number): string {
  return `Sheet_${number}`;
}

function unknownFunction(name: string, known: ReadonlySet<string>): string {
  if ((fromWorld as readonly string[]).includes(name)) return words.engine.changesByItself(name);
  const nearest = nearestName(name, known);
  return nearest === undefined
    ? words.engine.noFunction(name)
    : words.engine.noFunctionNear(name, nearest);
}
