import { maxColumns, maxRows } from '../../book/types.ts';
import { SheetIn, type Counter } from '../in/collected.ts';
import { most, Refused } from '../in/refused.ts';
import type { Attributes } from '../in/xml.ts';
import type { PlainCell, PlainName } from '../plain/types.ts';
import { formulaIn, referenceIn } from './readFormula.ts';
import type { StylesIn } from './readStyles.ts';
import { valueIn } from './value.ts';
import { words } from '../../words/words.ts';

/** A column style that reaches over more columns than this is the rest of the sheet. */
const restOfSheet = 200;

const repeats = (attributes: Attributes, axis: 'rows' | 'columns') =>
  Math.max(1, Math.min(2_000_000, Number(attributes[`table:number-${axis}-repeated`] ?? 1) || 1));

/** Reads the tables of a document, cell by cell. */
export class TableReader {
  readonly sheets: SheetIn[] = [];
  readonly names: PlainName[] = [];
  readonly leftOut: string[] = [];
  sheet: SheetIn | undefined;
  readonly #styles: StylesIn;
  readonly #counter: Counter;
  readonly #within: string[] = [];
  #row = 0;
  #rowRepeats = 1;
  #inRow: PlainCell[] = [];
  #column = 0;
  #columns: { style: string | undefined; until: number }[] = [];
  #cell: Attributes = {};
  #text = '';
  #note: string | undefined;

  constructor(styles: StylesIn, counter: Counter) {
    this.#styles = styles;
    this.#counter = counter;
  }

  /** Whether the element is one of the tables or names. */
  begin(name: string, attributes: Attributes): boolean {
    if (name === 'table:named-range') {
      const at = referenceIn(attributes['table:cell-range-address'] ?? '');
      this.#name(attributes, `=${at}`);
    } else if (name === 'table:named-expression') {
      const formula = formulaIn(attributes['table:expression'] ?? '');
      if (formula !== undefined) this.#name(attributes, formula);
    } else if (name === 'table:table') {
      if (this.sheets.length >= most.sheets) throw new Refused(words.files.sheets200);
      this.sheet = new SheetIn(attributes['table:name'] ?? '', this.#counter);
      this.sheet.hidden = this.#styles.hides(attributes['table:style-name']);
      this.sheet.protected = attributes['table:protected'] === 'true';
      this.sheets.push(this.sheet);
      this.#row = 0;
      this.#columns = [];
      this.#within.length = 0;
    } else return false;
    return true;
  }

  open(name: string, attributes: Attributes): void {
    this.#within.push(name);
    if (name === 'table:table-column') this.#columnsIn(attributes);
    else if (name === 'table:table-row') {
      this.#rowRepeats = repeats(attributes, 'rows');
      this.#inRow = [];
      this.#column = 0;
    } else if (name === 'table:table-cell' || name === 'table:covered-table-cell') {
      this.#cell = attributes;
      this.#text = '';
      this.#note = undefined;
    } else if (name === 'office:annotation') this.#note = '';
    else if (name === 'text:s')
      this.text(' '.repeat(Math.min(1000, Number(attributes['text:c'] ?? 1) || 1)));
    else if (name === 'text:tab') this.text('\t');
    else if (name === 'text:line-break') this.text('\n');
    else if (name === 'text:p') this.#paragraph();
  }

  text(text: string): void {
    if (!this.#within.includes('text:p')) return;
    if (this.#within.includes('office:annotation')) this.#note = (this.#note ?? '') + text;
    else if (this.#within.some((name) => name.endsWith('table-cell'))) this.#text += text;
  }

  close(name: string): void {
    this.#within.pop();
    if (name === 'table:table-cell' || name === 'table:covered-table-cell') this.#end();
    else if (name === 'table:table-row') this.#endRow();
    else if (name === 'table:table' && !this.#within.includes('table:table')) {
      this.sheet = undefined;
    }
  }

  /** Each paragraph after the first is a line of its own. */
  #paragraph(): void {
    if (this.#within.includes('office:annotation')) {
      if (this.#note) this.#note += '\n';
    } else if (this.#text !== '') this.#text += '\n';
  }

  #name(attributes: Attributes, formula: string): void {
    const name = attributes['table:name'];
    if (name !== undefined && name !== '') this.names.push({ name, formula });
  }

  #columnsIn(attributes: Attributes): void {
    const from = this.#columns.at(-1)?.until ?? 0;
    const count = repeats(attributes, 'columns');
    this.#columns.push({
      style: attributes['table:default-cell-style-name'],
      until: from + count,
    });
    const width = this.#styles.width(attributes['table:style-name']);
    if (width === undefined || count > restOfSheet) return;
    for (let column = from; column < Math.min(from + count, maxColumns); column += 1)
      this.sheet?.widths.set(column, width);
  }

  #end(): void {
    const count = repeats(this.#cell, 'columns');
    const column = this.#column;
    this.#column += count;
    const cell = this.#read(column);
    if (!cell) return;
    for (let index = 0; index < Math.min(count, maxColumns); index += 1)
      this.#inRow.push({ ...cell, column: column + index });
  }

  #read(column: number): PlainCell | undefined {
    const stored = this.#cell['table:formula'];
    const formula = stored === undefined ? undefined : formulaIn(stored);
    if (stored !== undefined && formula === undefined)
      this.leftOut.push(words.files.formulaLanguage(this.sheet?.name ?? ''));
    const value = valueIn(this.#cell, this.#text);
    const named =
      this.#cell['table:style-name'] ?? this.#columns.find(({ until }) => column < until)?.style;
    const style = this.#styles.cell(named);
    if (value === null && formula === undefined && !this.#note && !style.unlocked) return undefined;
    return {
      row: this.#row,
      column,
      value,
      ...style,
      ...(formula !== undefined && { formula }),
      ...(this.#note && { note: this.#note }),
    };
  }

  #endRow(): void {
    const filled = this.#inRow.some(
      ({ value, formula, note }) => value !== null || formula !== undefined || note !== undefined,
    );
    // Rows that are only unlocked reach to the end of many a sheet.
    const rows = filled ? Math.min(this.#rowRepeats, maxRows) : Math.min(this.#rowRepeats, 1);
    for (let index = 0; index < rows; index += 1)
      for (const cell of this.#inRow) this.sheet?.put({ ...cell, row: this.#row + index });
    this.#row += this.#rowRepeats;
  }
}
