import { units } from '../../../functions/quantities/units.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { Format } from '../../book/types.ts';
import type { NumberLook } from './types.ts';

/** What stands around a number where it is not only the base unit behind it. */
const looks: Partial<Record<QuantityName, NumberLook>> = {
  fNumber: { before: 'f/' },
  iso: { before: 'ISO ' },
  factor: { before: '× ' },
  ratio: { after: ':1' },
  angle: { after: '°' },
  share: { percent: true },
  stops: { signed: true, after: ' stops' },
  dateTime: { moment: 'dateTime' },
  duv: { signed: true, before: 'Duv ' },
};

/** Other programs do not know these from the digits: they are written out. */
const engraved: ReadonlySet<QuantityName> = new Set<QuantityName>(['fNumber', 'time']);

/** Digits that show four figures of a number, as the workbook does. */
function decimalsFor(value: number | undefined): number {
  if (value === undefined || value === 0 || !Number.isFinite(value)) return 2;
  return Math.min(6, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value)))));
}

export interface Looked {
  readonly quantity: QuantityName | undefined;
  readonly format: Format | undefined;
  /** Undefined while there is none. */
  readonly value: number | undefined;
  /** Typed in, and not the result of a formula. */
  readonly typed: boolean;
  readonly writing: WritingSettings;
}

/** How a number is written in another program: in the base unit, which is named behind it. */
export function lookOf({
  quantity,
  format,
  value,
  typed,
  writing,
}: Looked): NumberLook | undefined {
  const decimals =
    format?.decimals ?? (typed ? undefined : decimalsFor(percentOf(quantity, value)));
  const digits = decimals === undefined ? {} : { decimals };
  if (quantity === undefined || quantity === 'number') {
    return decimals === undefined ? undefined : digits;
  }
  if (quantity === 'text' || quantity === 'verdict' || quantity === 'truth') return undefined;
  if (quantity === 'dateTime') return { moment: momentOf(value) };
  if (quantity === 'money') return { decimals: 2, thousands: true, after: ` ${writing.currency}` };
  const { base } = units[quantity];
  const around = looks[quantity] ?? (base === '' ? {} : { after: ` ${base}` });
  const mark = typed && format?.decimals === undefined ? markOf(quantity, value, writing) : {};
  return { ...around, ...digits, ...mark };
}

const percentOf = (quantity: QuantityName | undefined, value: number | undefined) =>
  quantity === 'share' && value !== undefined ? value * 100 : value;

function momentOf(value: number | undefined): 'date' | 'time' | 'dateTime' {
  if (value === undefined) return 'dateTime';
  if (value < 1) return 'time';
  return Number.isInteger(value) ? 'date' : 'dateTime';
}

function markOf(
  quantity: QuantityName,
  value: number | undefined,
  writing: WritingSettings,
): Pick<NumberLook, 'mark'> {
  if (value === undefined || value <= 0 || !engraved.has(quantity)) return {};
  const { text } = writeQuantity(quantity, value, writing);
  return { mark: { value, text } };
}
