import type { QuantityName } from '../../../functions/quantities/names.ts';
import { units } from '../../../functions/quantities/units.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import { orNull, blank } from '../../book/make/entered.ts';
import { entrySettings, writingSettings } from '../../book/settings.ts';
import type { Cell, Content, Format, Means, Role, Settings } from '../../book/types.ts';
import type { Formula } from '../../formula/types.ts';
import { isPlainError, type PlainCell } from '../plain/types.ts';
import { importedUnder } from './under.ts';
import { kept } from './guess.ts';

export interface Measured {
  readonly quantity: QuantityName;
  readonly unit: string;
}

export interface CellMeans {
  readonly means: Pick<Means, 'readEntry'>;
  readonly settings: Settings;
  /** Locked cells of this sheet refuse typing: what is open was left open on purpose. */
  readonly locks: boolean;
}

/** What a light meter says: an open cell of this kind waits for a reading. */
const metered: ReadonlySet<QuantityName> = new Set<QuantityName>([
  'fNumber',
  'illuminance',
  'luminance',
  'ev',
  'colourTemperature',
  'duv',
]);

/** A cell of a file as a cell of a book. */
export function cellIn(
  cell: PlainCell,
  measured: Measured | undefined,
  formula: Formula | undefined,
  around: CellMeans,
): Cell {
  const settings = { ...around.settings, ...importedUnder };
  const under = entrySettings(settings);
  const quantity = measured?.quantity;
  const content = contentOf(cell, measured, formula);
  const typed = typedText(content, measured, cell, around.means, settings);
  const role = around.locks && cell.unlocked ? roleOf(quantity, content) : undefined;
  const format = formatOf(cell, measured);
  return (
    orNull({
      content,
      ...(typed !== undefined && { typed, under }),
      ...(quantity !== undefined && { quantity }),
      ...(role && { role }),
      ...(format && { format }),
      ...(cell.note !== undefined && { note: cell.note }),
    }) ?? blank
  );
}

function contentOf(
  { value }: PlainCell,
  measured: Measured | undefined,
  formula: Formula | undefined,
): Content {
  if (formula) return { kind: 'formula', formula };
  if (value === null) return { kind: 'blank' };
  if (isPlainError(value)) return { kind: 'text', text: value.error };
  if (typeof value === 'boolean') return { kind: 'truth', value };
  if (typeof value === 'string') return { kind: 'text', text: value };
  return { kind: 'number', value: measured ? kept(measured, value) : value };
}

/** What would have to be typed to get the same. */
function typedText(
  content: Content,
  measured: Measured | undefined,
  { value }: PlainCell,
  means: Pick<Means, 'readEntry'>,
  settings: Settings,
): string | undefined {
  if (content.kind === 'truth') return content.value ? 'TRUE' : 'FALSE';
  if (content.kind === 'text') {
    const read = means.readEntry(content.text, undefined, settings);
    const same =
      !content.text.startsWith('=') &&
      'content' in read &&
      read.content.kind === 'text' &&
      read.content.text === content.text;
    return same ? content.text : `'${content.text}`;
  }
  if (content.kind !== 'number') return undefined;
  const { quantity = undefined, unit = '' } = measured ?? {};
  if (quantity === undefined) return String(content.value);
  const written = [
    writeQuantity(quantity, content.value, writingSettings(settings)).text,
    `${String(value)} ${unit}`.trim(),
    `${String(content.value)} ${units[quantity].base}`.trim(),
  ];
  const exact = written.find((text) => {
    const read = means.readEntry(text, quantity, settings);
    return (
      'content' in read && read.content.kind === 'number' && read.content.value === content.value
    );
  });
  return exact ?? String(content.value);
}

function roleOf(quantity: QuantityName | undefined, content: Content): Role {
  if (content.kind === 'text' || content.kind === 'truth') return 'choice';
  return quantity !== undefined && metered.has(quantity) ? 'reading' : 'choice';
}

function formatOf(
  { look, bold, italic, align, wrap, formula }: PlainCell,
  measured: Measured | undefined,
): Format | undefined {
  // The words above go on naming the unit that the file was written in.
  const unit =
    measured && units[measured.quantity].units.find(({ symbol }) => symbol === measured.unit);
  // Digits of results are what somebody chose; those of entries are what was typed.
  const decimals = look?.moment || formula === undefined ? undefined : look?.decimals;
  const format: Format = {
    ...(decimals !== undefined && { decimals }),
    ...(unit && measured && unit.symbol !== units[measured.quantity].base && { unit: unit.symbol }),
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(align && { align }),
    ...(wrap && { wrap }),
  };
  return Object.keys(format).length > 0 ? format : undefined;
}
