import type { NewRecord } from '../../book/make/records.ts';
import { words } from '../../words/words.ts';
import { labelled, present, type Reader } from './reader.ts';

/** By these words the parts of a sheet of points are found. */
const settingLabels = {
  meterAt: 'Meter at',
  time: 'Exposure time',
  stop: 'Taking stop',
  exposeKey: 'Expose key',
  dome: 'Dome constant C',
  flat: 'flat C',
  spot: 'spot K',
} as const;
const cameraLabels = {
  white: 'White',
  above: 'Holds above grey',
  below: 'below grey',
  greySits: 'Grey sits at',
} as const;

/** What it was metered for, with all that stands beside it; or which setting is missing. */
export function cameraOf(
  reader: Reader,
  end: number,
): NewRecord['camera'] | { readonly reason: string } {
  const settings: NewRecord['camera']['settings'] = [];
  const numbers = new Map<string, number>();
  for (const { label, row, column } of labelled(reader, end)) {
    const value = reader.number(row, column);
    if (value !== undefined && !numbers.has(label)) numbers.set(label, value);
    const text = reader.cells.said(row, column);
    const quantity = reader.look.engine.quantityOf({ sheet: reader.cells.sheet, row, column });
    if (text !== '' && quantity !== 'ratio')
      settings.push({ label, text, ...present({ value, quantity }) });
  }
  const needed: Record<string, number> = {};
  for (const [key, label] of Object.entries(settingLabels)) {
    const value = numbers.get(label);
    if (value === undefined) return { reason: words.repeat.noCamera(label) };
    needed[key] = value;
  }
  const more = Object.fromEntries(
    Object.entries(cameraLabels).flatMap(([key, label]) => {
      const value = numbers.get(label);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  return { ...(needed as Needed), ...more, settings };
}

type Needed = { readonly [Key in keyof typeof settingLabels]: number };

const isRatio = ({ look, cells: { sheet } }: Reader, row: number, column: number): boolean =>
  look.engine.quantityOf({ sheet, row, column }) === 'ratio';

/** The ratios that the sheet has over its points. */
export function ratiosOf(reader: Reader, end: number): NewRecord['ratios'] {
  return [...labelled(reader, end)].flatMap(({ label, row, column }) => {
    if (!isRatio(reader, row, column)) return [];
    const value = reader.number(row, column);
    return [{ label, text: reader.cells.said(row, column), ...(value !== undefined && { value }) }];
  });
}
