import { writeDateTime } from './dateTime.ts';
import type { QuantityName } from './names.ts';
import type { WritingSettings } from './settings.ts';
import { fromBase } from './unit.ts';
import type { Unit } from './unit.ts';
import { units } from './units.ts';
import { workbookUnit } from './workbookUnit.ts';
import { writeDensity, writeGreen } from './writing/colour.ts';
import { writeFNumber } from './writing/fNumber.ts';
import { writeFrameRate } from './writing/frameRate.ts';
import { writeFeet } from './writing/length.ts';
import { signed, withThousands, writeNumber } from './writing/number.ts';
import type { Digits } from './writing/number.ts';
import { writeStops } from './writing/stops.ts';
import { writeTime } from './writing/time.ts';
import { written } from './writing/written.ts';
import type { WritingFormat, Written } from './writing/written.ts';

type Writer = (value: number, settings: WritingSettings, format: WritingFormat) => Written;

/** A unit that is converted makes numbers end by accident: 250 lx are 23.22576 fc. */
const converted: Digits = { typed: 6 };

/** Digits of calculated numbers, where they differ from four significant ones. */
const digits: Partial<Record<QuantityName, Digits>> = {
  chromaticity: { decimals: 4 },
  colourTemperature: { decimals: 0 },
  duv: { decimals: 4 },
  ev: { decimals: 2 },
  factor: { significant: 3 },
  mired: { decimals: 1 },
  ratio: { significant: 3 },
};

const writers: Partial<Record<QuantityName, Writer>> = {
  dateTime: (value, settings) => written(writeDateTime(value, settings.clock)),
  density: (value, settings, { decimals }) => writeDensity(value, settings, decimals),
  duv: (value, settings, { decimals }) =>
    written(signed(writeNumber(value, settings, decimals, digits.duv), value)),
  factor: (value, settings, { decimals }) =>
    written(`× ${writeNumber(value, settings, decimals, digits.factor)}`),
  fNumber: (value, settings, { decimals }) => written(writeFNumber(value, settings, decimals)),
  frameRate: (value, settings, { decimals }) => writeFrameRate(value, settings, decimals),
  greenCorrection: (value, settings, { decimals }) => writeGreen(value, settings, decimals),
  iso: (value, settings, { decimals }) => {
    const number = writeNumber(value, settings, decimals);
    return { number, unit: 'ISO', text: `ISO ${number}` };
  },
  length: (value, settings, { decimals }) =>
    settings.length === 'ft'
      ? writeFeet(value, settings, decimals)
      : written(writeNumber(value, settings, decimals, converted), 'm'),
  money: (value, settings, { decimals }) => {
    const number = withThousands(writeNumber(value, settings, decimals ?? 2), settings);
    return written(number, settings.currency);
  },
  share: (value, settings, { decimals }) =>
    written(writeNumber(value * 100, settings, decimals), '%'),
  stops: (value, settings, { decimals }) => writeStops(value, settings, decimals),
  time: writeTime,
  truth: (value) => written(value === 0 ? 'FALSE' : 'TRUE'),
};

/** Writes a value in base units as the workbook shows it. Never throws. */
export function writeQuantity(
  quantity: QuantityName,
  value: number,
  settings: WritingSettings,
  format: WritingFormat = {},
): Written {
  if (!Number.isFinite(value)) return written(String(value));
  const named = units[quantity].units.find((unit) => unit.symbol === format.unit);
  if (named !== undefined) return writeIn(named, quantity, value, settings, format.decimals);
  const writer = writers[quantity];
  if (writer !== undefined) return writer(value, settings, format);
  const unit = workbookUnit(quantity, settings);
  if (unit !== undefined) return writeIn(unit, quantity, value, settings, format.decimals);
  const number = writeNumber(value, settings, format.decimals, digits[quantity]);
  return written(number, units[quantity].base);
}

export function writeIn(
  unit: Unit,
  quantity: QuantityName,
  value: number,
  settings: WritingSettings,
  decimals?: number,
): Written {
  const number = writeNumber(fromBase(unit, value), settings, decimals, {
    ...converted,
    ...digits[quantity],
  });
  return written(number, unit.symbol);
}

const plainCharacters: Readonly<Record<string, string>> = {
  '−': '-',
  '×': 'x',
  '²': '2',
  µ: 'u',
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
};

/** One line for a terminal: no characters that a plain font may lack but for the degree sign. */
export function writeForPeople(
  quantity: QuantityName,
  value: number,
  settings: WritingSettings,
  format: WritingFormat = {},
): string {
  const { text } = writeQuantity(quantity, value, settings, format);
  return text.replace(/[−×²µ½⅓⅔¼¾]/gu, (character) => plainCharacters[character] ?? character);
}
