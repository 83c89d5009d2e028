import { isError } from '../../../functions/values.ts';
import { writingSettings } from '../../book/settings.ts';
import { formulaText, layoutOf, placeAt } from '../../book/look.ts';
import { freeSheetName } from '../../book/make/sheets.ts';
import type { Cell, Document, Formula, Sheet } from '../../book/types.ts';
import type { Reference } from '../../formula/types.ts';
import { near } from '../../../functions/near.ts';
import { lookOf } from '../plain/look.ts';
import type { PlainBook, PlainCell, PlainName, PlainSheet, PlainValue } from '../plain/types.ts';
import { plainFormula, type Around, type PlainFormula } from './formula.ts';
import { Helpers } from './helpers.ts';
import type { Values } from './values.ts';
import { words } from '../../words/words.ts';

export interface OutOptions {
  /** Formulas that go on calculating, or only what they come to now. */
  readonly formulas: 'live' | 'values';
  /** Told now and then: the share that is done, 0 to 1. */
  readonly progress?: (share: number) => void;
}

/** Agreement that a formula written out must reach, or its value goes out instead. */
const agreement = 1e-9;

/** A book as other spreadsheet programs can work with it. */
export function plainBook(document: Document, values: Values, options: OutOptions): PlainBook {
  const live = options.formulas === 'live';
  const helpers = new Helpers(freeSheetName(document, words.files.working));
  const around = aroundOf(document, values, helpers);
  const total = document.sheets.reduce((sum, { size }) => sum + size, 1);
  let done = 0;
  const told = () => {
    done += 1;
    if (done % 500 === 0) options.progress?.(done / total);
  };
  const sheets = document.sheets.map((sheet) =>
    plainSheet(sheet, new CellsOut(document, values, around, sheet, live), told),
  );
  const names = live ? plainNames(document, around) : [];
  const helped = helpers.sheet;
  return { title: document.title, sheets: helped ? [...sheets, helped] : sheets, names };
}

function aroundOf(document: Document, values: Values, helpers: Helpers): Around {
  return {
    layout: layoutOf(document),
    helpers,
    settingsOf: (sheet) => values.settingsOf(sheet),
    quantityOf: (spot) => values.quantityOf(spot),
    mayBeBlank(spot) {
      const place = placeAt(document, spot);
      const cell = place && document.sheet(place.sheet)?.cell(place.row, place.column);
      return !cell || cell.content.kind === 'blank' || isUnlocked(cell);
    },
  };
}

/** Readings, choices and answers are for whoever works with the sheet; all else is the sheet’s own. */
const isUnlocked = ({ role }: Cell) => role !== undefined && role !== 'given';

function plainSheet(sheet: Sheet, out: CellsOut, told: () => void): PlainSheet {
  const { properties, columns } = sheet;
  const widths = new Map<number, number>();
  columns.ids.forEach((id, index) => {
    const size = columns.properties(id)?.size;
    if (size !== undefined) widths.set(index, size);
  });
  const cells: PlainCell[] = [];
  let roles = false;
  for (const { row, column, cell } of sheet.cells()) {
    roles ||= cell.role !== undefined;
    cells.push(out.cell(sheet.rows.indexOf(row), columns.indexOf(column), cell));
    told();
  }
  cells.sort((a, b) => a.row - b.row || a.column - b.column);
  const { name, frozenRows, frozenColumns } = properties;
  return { name, widths, frozenRows, frozenColumns, cells, ...(roles && { protected: true }) };
}

function plainNames(document: Document, around: Around): PlainName[] {
  const [home] = document.sheets;
  return document.names.flatMap(({ name, formula }) => {
    const plain = home && plainFormula(absolute(formula), home.id, null, around);
    return plain?.ok ? [{ name, formula: plain.text }] : [];
  });
}

/** Names mean the same cells from everywhere; elsewhere that needs the `$`. */
function absolute(formula: Formula): Formula {
  const fix = <End extends object>(end: End) => ({ ...end, fixed: true });
  const references = formula.references.map((reference): Reference => {
    if (reference.kind === 'name' || reference.kind === 'lost') return reference;
    if (reference.kind === 'cell') {
      const { row, column } = reference.at;
      return { ...reference, at: { row: fix(row), column: fix(column) } };
    }
    if (reference.kind !== 'range')
      return { ...reference, from: fix(reference.from), to: fix(reference.to) };
    const corner = ({ row, column }: typeof reference.from) => ({
      row: fix(row),
      column: fix(column),
    });
    return { ...reference, from: corner(reference.from), to: corner(reference.to) };
  });
  return { ...formula, references };
}

class CellsOut {
  constructor(
    readonly document: Document,
    readonly values: Values,
    readonly around: Around,
    readonly sheet: Sheet,
    readonly live: boolean,
  ) {}

  cell(row: number, column: number, cell: Cell): PlainCell {
    const { content, format, note } = cell;
    const spot = { sheet: this.sheet.id, row, column };
    const raw = this.values.valueOf(spot);
    const number = typeof raw === 'number' ? raw : undefined;
    const look = lookOf({
      quantity: this.values.quantityOf(spot),
      format,
      value: number,
      typed: content.kind !== 'formula',
      writing: writingSettings(this.document.settings),
    });
    const plain = content.kind === 'formula' ? this.#formula(content.formula, raw) : undefined;
    const waits = this.live && content.kind === 'formula' && isError(raw) && raw.waiting === true;
    const notes = [note, plain?.ok === false ? this.#inWords(content, plain.reason) : undefined];
    const said = notes.filter((text) => text !== undefined && text !== '').join('\n\n');
    return {
      row,
      column,
      value: plainValue(raw, waits || plain?.ok === true),
      ...(plain?.ok && { formula: plain.text }),
      // What reads it has to wait as well.
      ...(waits && { formula: plain?.ok ? plain.text : '=NA()', waits: true }),
      ...(look && { look }),
      ...(said !== '' && { note: said }),
      ...(isUnlocked(cell) && { unlocked: true }),
      ...(format?.bold && { bold: true }),
      ...(format?.italic && { italic: true }),
      ...(format?.align && { align: format.align }),
      ...(format?.wrap && { wrap: true }),
    };
  }

  #formula(formula: Formula, value: ReturnType<Values['valueOf']>): PlainFormula | undefined {
    if (!this.live) return undefined;
    const plain = plainFormula(formula, this.sheet.id, this.sheet.id, this.around);
    // What it was written out to must come to the same here; a text or a bare mark may stand for more.
    if (!plain.ok || !plain.ours || isError(value)) return plain;
    const check =
      plain.text.length < 8_000 ? this.values.evaluate(plain.text, this.sheet.id) : undefined;
    return check && !agrees(check.value, value)
      ? { ok: false, reason: words.files.comesToElse }
      : plain;
  }

  #inWords(content: Cell['content'], reason: string): string | undefined {
    if (content.kind !== 'formula') return undefined;
    const text = formulaText(this.document, content.formula, this.sheet.id);
    return words.files.formulaNote(text, reason);
  }
}

function agrees(a: unknown, b: unknown): boolean {
  return typeof a === 'number' && typeof b === 'number' ? near(a, b, agreement) : a === b;
}

function plainValue(value: ReturnType<Values['valueOf']>, live: boolean): PlainValue {
  if (!isError(value)) return value;
  if (live) return { error: value.code === '#CYCLE!' ? '#VALUE!' : value.code };
  return value.waiting ? null : value.code;
}
