import { readAddress } from '../../book/look.ts';
import type { SheetIn } from '../in/collected.ts';
import { local, walk, type Attributes } from '../in/xml.ts';
import type { PlainValue } from '../plain/types.ts';
import { bare } from './functions.ts';
import { moved } from './shared.ts';
import { unescaped } from './strings.ts';
import type { CellStyle } from './styles.ts';

export interface AroundSheet {
  readonly strings: readonly string[];
  readonly styles: readonly CellStyle[];
  readonly notes: ReadonlyMap<string, string>;
}

const columnsAtMost = 1_000;
const isOn = (text: string | undefined) => text === '1' || text === 'true';

/** Reads the cells of a worksheet into `sheet`. */
export function readSheet(bytes: Uint8Array, sheet: SheetIn, around: AroundSheet): void {
  const reader = new CellReader(sheet, around);
  let within = '';
  walk(bytes, sheet.name, local, {
    open(name, attributes) {
      within = name;
      if (name === 'row') reader.row(attributes);
      else if (name === 'c') reader.begin(attributes);
      else if (name === 'f') reader.formula(attributes);
      else if (name === 'col') widths(sheet, attributes);
      else if (name === 'pane' && /^frozen/.test(attributes['state'] ?? '')) {
        sheet.frozenRows = Number(attributes['ySplit'] ?? 0) || 0;
        sheet.frozenColumns = Number(attributes['xSplit'] ?? 0) || 0;
      } else if (name === 'sheetProtection') sheet.protected = isOn(attributes['sheet']);
    },
    text: (text) => reader.text(within, text),
    close(name) {
      within = '';
      if (name === 'c') reader.end();
    },
  });
}

function widths(sheet: SheetIn, attributes: Attributes): void {
  const width = Number(attributes['width']);
  const from = Number(attributes['min']) - 1;
  const to = Math.min(Number(attributes['max']), columnsAtMost);
  if (!(width > 0) || !isOn(attributes['customWidth']) || to - from > 200) return;
  for (let column = from; column < to; column += 1)
    sheet.widths.set(column, Math.round(width * 7 + 5));
}

interface Shared {
  readonly formula: string;
  readonly row: number;
  readonly column: number;
}

class CellReader {
  readonly #sheet: SheetIn;
  readonly #around: AroundSheet;
  readonly #shared = new Map<string, Shared>();
  #row = -1;
  #column = -1;
  #cell: Attributes = {};
  #value = '';
  #inline = '';
  #formula: string | undefined;
  #sharing: string | undefined;

  constructor(sheet: SheetIn, around: AroundSheet) {
    this.#sheet = sheet;
    this.#around = around;
  }

  row(attributes: Attributes): void {
    const number = Number(attributes['r']);
    this.#row = number > 0 ? number - 1 : this.#row + 1;
    this.#column = -1;
  }

  begin(attributes: Attributes): void {
    this.#cell = attributes;
    const at = readAddress(attributes['r'] ?? '');
    this.#column = at ? at.column : this.#column + 1;
    if (at) this.#row = at.row;
    this.#value = '';
    this.#inline = '';
    this.#formula = undefined;
    this.#sharing = undefined;
  }

  formula(attributes: Attributes): void {
    this.#formula = '';
    if (attributes['t'] === 'shared') this.#sharing = attributes['si'] ?? '';
  }

  text(within: string, text: string): void {
    if (within === 'v') this.#value += text;
    else if (within === 't') this.#inline += text;
    else if (within === 'f' && this.#formula !== undefined) this.#formula += text;
  }

  end(): void {
    const style = this.#around.styles[Number(this.#cell['s'] ?? -1)];
    const note = this.#around.notes.get(this.#cell['r'] ?? '');
    const formula = this.#finished();
    const value = this.#read();
    if (value === null && formula === undefined && note === undefined && !style?.unlocked) return;
    this.#sheet.put({
      row: this.#row,
      column: this.#column,
      value,
      ...style,
      ...(formula !== undefined && { formula }),
      ...(note !== undefined && note !== '' && { note }),
    });
  }

  #finished(): string | undefined {
    const text = this.#formula;
    if (text === undefined) return undefined;
    const place = { row: this.#row, column: this.#column };
    if (this.#sharing === undefined) return text === '' ? undefined : `=${bare(text)}`;
    if (text !== '') {
      const formula = `=${bare(text)}`;
      this.#shared.set(this.#sharing, { formula, ...place });
      return formula;
    }
    const first = this.#shared.get(this.#sharing);
    return first && moved(first.formula, place.row - first.row, place.column - first.column);
  }

  #read(): PlainValue {
    const text = this.#value;
    switch (this.#cell['t']) {
      case 's':
        return this.#around.strings[Number(text)] ?? null;
      case 'inlineStr':
        return unescaped(this.#inline);
      case 'str':
        return unescaped(text);
      case 'b':
        return isOn(text);
      case 'e':
        return { error: text };
      default:
        return text === '' || !Number.isFinite(Number(text)) ? null : Number(text);
    }
  }
}
