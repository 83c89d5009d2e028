import { local, walk, type Attributes } from '../in/xml.ts';
import type { NumberLook, PlainCell } from '../plain/types.ts';
import { readCode } from './readCode.ts';

/** How cells with a style number look. */
export type CellStyle = Pick<PlainCell, 'look' | 'unlocked' | 'bold' | 'italic' | 'align' | 'wrap'>;

/** Formats that are known by their number alone (ISO/IEC 29500-1, 18.8.30). */
const builtIn: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  14: 'yyyy-mm-dd',
  15: 'yyyy-mm-dd',
  16: 'yyyy-mm-dd',
  17: 'yyyy-mm-dd',
  18: 'hh:mm',
  19: 'hh:mm:ss',
  20: 'hh:mm',
  21: 'hh:mm:ss',
  22: 'yyyy-mm-dd hh:mm',
  45: 'mm:ss',
  46: '[h]:mm:ss',
};

const aligns = { left: 'left', center: 'centre', right: 'right' } as const;
const isOn = (attributes: Attributes, name: string) =>
  attributes[name] === '1' || attributes[name] === 'true';

/** The cell styles of a file, by their number. */
export function readStyles(bytes: Uint8Array): readonly CellStyle[] {
  const codes = new Map<string, string>();
  const fonts: { bold?: true; italic?: true }[] = [];
  const styles: CellStyle[] = [];
  const within: string[] = [];
  walk(bytes, 'styles.xml', local, {
    open(name, attributes) {
      const parent = within.at(-1);
      within.push(name);
      if (name === 'numFmt')
        codes.set(attributes['numFmtId'] ?? '', attributes['formatCode'] ?? '');
      else if (name === 'font' && parent === 'fonts') fonts.push({});
      else if (parent === 'font' && within.at(-3) === 'fonts') fontPart(fonts, name, attributes);
      else if (name === 'xf' && parent === 'cellXfs') {
        const id = attributes['numFmtId'] ?? '0';
        const look = lookOf(codes.get(id) ?? builtIn[Number(id)]);
        styles.push({ ...(look && { look }), ...fonts[Number(attributes['fontId'])] });
      } else if (parent === 'xf' && within.at(-3) === 'cellXfs') {
        styles.push({ ...styles.pop(), ...xfPart(name, attributes) });
      }
    },
    close: () => void within.pop(),
  });
  return styles;
}

const lookOf = (code: string | undefined): NumberLook | undefined =>
  code === undefined ? undefined : readCode(code);

function fontPart(
  fonts: { bold?: true; italic?: true }[],
  name: string,
  attributes: Attributes,
): void {
  const font = fonts.at(-1);
  if (!font || attributes['val'] === '0' || attributes['val'] === 'false') return;
  if (name === 'b') font.bold = true;
  if (name === 'i') font.italic = true;
}

function xfPart(name: string, attributes: Attributes): CellStyle {
  if (name === 'protection')
    return attributes['locked'] !== undefined && !isOn(attributes, 'locked')
      ? { unlocked: true }
      : {};
  if (name !== 'alignment') return {};
  const align = aligns[attributes['horizontal'] as keyof typeof aligns];
  return { ...(align && { align }), ...(isOn(attributes, 'wrapText') && { wrap: true }) };
}
