import type { Attributes } from '../in/xml.ts';
import type { NumberLook, PlainCell } from '../plain/types.ts';

/** How cells of a style look. */
export type CellStyle = Pick<PlainCell, 'look' | 'unlocked' | 'bold' | 'italic' | 'align' | 'wrap'>;

interface Style {
  parent?: string;
  data?: string;
  width?: number;
  hidden?: true;
  unlocked?: boolean;
  bold?: boolean;
  italic?: boolean;
  align?: 'left' | 'centre' | 'right';
  wrap?: boolean;
}

interface DataStyle {
  kind: string;
  before: string;
  after: string;
  decimals?: number;
  thousands?: true;
  /** A number, a date or a time of day stands in it. */
  number?: true;
  date?: true;
  clock?: true;
  maps: string[];
}

const dataStyles = /^number:(?:number|percentage|currency|date|time|text|boolean)-style$/;
const dates = /^number:(?:year|month|day|era|day-of-week|quarter)$/;
const clocks = /^number:(?:hours|minutes|seconds|am-pm)$/;
const aligns = {
  start: 'left',
  left: 'left',
  center: 'centre',
  end: 'right',
  right: 'right',
} as const;
const inches: Readonly<Record<string, number>> = { in: 1, cm: 1 / 2.54, mm: 1 / 25.4, pt: 1 / 72 };

/** Collects the styles of a document while its parts are walked through. */
export class StylesIn {
  readonly #styles = new Map<string, Style>();
  readonly #data = new Map<string, DataStyle>();
  #style: Style | undefined;
  #number: DataStyle | undefined;
  #inText = false;

  open(name: string, attributes: Attributes): void {
    if (name === 'style:style') this.#begin(attributes);
    else if (dataStyles.test(name)) this.#beginData(name, attributes);
    else if (this.#number) this.#dataPart(this.#number, name, attributes);
    else if (this.#style) stylePart(this.#style, name, attributes);
  }

  text(text: string): void {
    if (!this.#inText || !this.#number) return;
    if (this.#number.number) this.#number.after += text;
    else this.#number.before += text;
  }

  close(name: string): void {
    if (name === 'style:style') this.#style = undefined;
    if (dataStyles.test(name)) this.#number = undefined;
    if (name === 'number:text' || name === 'number:currency-symbol') this.#inText = false;
  }

  width(style: string | undefined): number | undefined {
    return this.#styles.get(`table-column ${style ?? ''}`)?.width;
  }

  hides(style: string | undefined): boolean {
    return this.#styles.get(`table ${style ?? ''}`)?.hidden === true;
  }

  cell(name: string | undefined): CellStyle {
    const style = this.#whole(name, 0);
    const look = this.#look(style.data);
    return {
      ...(look && { look }),
      ...(style.unlocked && { unlocked: true }),
      ...(style.bold && { bold: true }),
      ...(style.italic && { italic: true }),
      ...(style.align && { align: style.align }),
      ...(style.wrap && { wrap: true }),
    };
  }

  /** With what it takes from its parents. */
  #whole(name: string | undefined, depth: number): Style {
    const style = this.#styles.get(`table-cell ${name ?? ''}`);
    if (!style || depth > 20) return {};
    return style.parent === undefined
      ? style
      : { ...this.#whole(style.parent, depth + 1), ...style };
  }

  #look(name: string | undefined): NumberLook | undefined {
    const data = this.#data.get(name ?? '');
    if (!data) return undefined;
    if (data.date || data.clock)
      return { moment: data.date && data.clock ? 'dateTime' : data.date ? 'date' : 'time' };
    if (!data.number) return undefined;
    const signed = data.maps.some((map) => this.#data.get(map)?.before.startsWith('+'));
    const percent = data.kind === 'number:percentage-style' || data.after.includes('%');
    const after = data.after.replaceAll('%', '');
    const { before, decimals, thousands } = data;
    const plain = before === '' && after === '' && !percent && decimals === undefined;
    if (plain && !signed && !thousands) return undefined;
    return {
      ...(decimals !== undefined && { decimals }),
      ...(before !== '' && { before }),
      ...(after !== '' && { after }),
      ...(percent && { percent: true }),
      ...(signed && { signed: true }),
      ...(thousands && { thousands: true }),
    };
  }

  #begin(attributes: Attributes): void {
    const parent = attributes['style:parent-style-name'];
    const data = attributes['style:data-style-name'];
    this.#style = {
      ...(parent !== undefined && { parent }),
      ...(data !== undefined && { data }),
    };
    const key = `${attributes['style:family'] ?? ''} ${attributes['style:name'] ?? ''}`;
    this.#styles.set(key, this.#style);
  }

  #beginData(kind: string, attributes: Attributes): void {
    this.#number = { kind, before: '', after: '', maps: [] };
    this.#data.set(attributes['style:name'] ?? '', this.#number);
  }

  #dataPart(data: DataStyle, name: string, attributes: Attributes): void {
    if (name === 'number:text' || name === 'number:currency-symbol') this.#inText = true;
    else if (dates.test(name)) data.date = true;
    else if (clocks.test(name)) data.clock = true;
    else if (name === 'style:map') data.maps.push(attributes['style:apply-style-name'] ?? '');
    else if (name === 'number:number') {
      data.number = true;
      const places = attributes['number:decimal-places'];
      if (places !== undefined) data.decimals = Math.min(12, Number(places) || 0);
      if (attributes['number:grouping'] === 'true') data.thousands = true;
    }
  }
}

function stylePart(style: Style, name: string, attributes: Attributes): void {
  if (name === 'style:table-column-properties') {
    const [, size, unit] =
      /^([\d.]+)(in|cm|mm|pt)$/.exec(attributes['style:column-width'] ?? '') ?? [];
    if (size !== undefined) style.width = Math.round(Number(size) * 96 * (inches[unit ?? ''] ?? 1));
  } else if (name === 'style:table-properties') {
    if (attributes['table:display'] === 'false') style.hidden = true;
  } else if (name === 'style:table-cell-properties') {
    const protect = attributes['style:cell-protect'];
    if (protect !== undefined) style.unlocked = protect === 'none';
    if (attributes['fo:wrap-option'] !== undefined)
      style.wrap = attributes['fo:wrap-option'] === 'wrap';
  } else if (name === 'style:text-properties') {
    if (attributes['fo:font-weight'] !== undefined)
      style.bold = attributes['fo:font-weight'] === 'bold';
    if (attributes['fo:font-style'] !== undefined)
      style.italic = attributes['fo:font-style'] === 'italic';
  } else if (name === 'style:paragraph-properties') {
    const align = aligns[attributes['fo:text-align'] as keyof typeof aligns];
    if (align) style.align = align;
  }
}
