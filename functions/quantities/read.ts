import { readAmount } from './amount.ts';
import { readDateTime } from './dateTime.ts';
import { readDensity, readNdLabel } from './density.ts';
import { readDuration } from './duration.ts';
import { readFeetAndInches } from './feetAndInches.ts';
import { readFNumber, readWrittenFNumber } from './fNumber.ts';
import { readFrameRate } from './frameRate.ts';
import { readGauge } from './gauge.ts';
import { readGreen, readWrittenGreen } from './green.ts';
import { readKelvin } from './kelvin.ts';
import { unitAnywhere, unitBefore } from './lookUp.ts';
import { readMoney, readWrittenMoney } from './money.ts';
import { lightQuantities } from './names.ts';
import type { QuantityName } from './names.ts';
import { localised } from './parsed.ts';
import type { Parsed, Reader, ReadingContext } from './parsed.ts';
import { readRatio } from './ratio.ts';
import type { Reading } from './reading.ts';
import type { WritingSettings } from './settings.ts';
import { readShare } from './share.ts';
import { readAngle, readTime } from './shutter.ts';
import { readIso } from './speed.ts';
import { readStops } from './stops.ts';
import { longestEntry, shown, tidy } from './text.ts';
import { readTruth } from './truth.ts';
import { units } from './units.ts';
import { readWithUnits } from './withUnits.ts';

/** Quantities that people write in ways a table of units does not hold. */
const readers: Partial<Record<QuantityName, Reader>> = {
  angle: readAngle,
  colourTemperature: readKelvin,
  conductorArea: (text, settings, context) =>
    readGauge(text, settings, context) ?? readWithUnits('conductorArea', text, settings),
  dateTime: readDateTime,
  density: readDensity,
  duration: readDuration,
  fNumber: readFNumber,
  frameRate: readFrameRate,
  greenCorrection: readGreen,
  iso: readIso,
  length: (text, settings, context) =>
    readFeetAndInches(text, settings, context) ?? readWithUnits('length', text, settings),
  money: readMoney,
  ratio: readRatio,
  share: readShare,
  stops: readStops,
  text: () => undefined,
  time: readTime,
  truth: readTruth,
  verdict: () => undefined,
};

/** Writings that name their quantity wherever they stand. */
const written: readonly (readonly [QuantityName, Reader])[] = [
  ['fNumber', readWrittenFNumber],
  ['density', readNdLabel],
  ['greenCorrection', readWrittenGreen],
  ['conductorArea', readGauge],
  ['length', readFeetAndInches],
  ['money', readWrittenMoney],
];

/**
 * Reads text where the quantity is known: a cell that has one, or an argument whose parameter names one.
 * The value comes out in the base unit; a bare number is in the workbook's unit.
 */
export function readAs(
  quantity: QuantityName,
  text: string,
  settings: WritingSettings,
  context: ReadingContext = {},
): Reading {
  if (text.length > longestEntry) return refused(quantity, text, settings);
  const parsed = readInside(quantity, tidy(text), settings, context);
  if (parsed === undefined) return refused(quantity, text, settings);
  if ('reason' in parsed) {
    const reason = localised(parsed.reason, settings);
    const { wrongKind } = parsed;
    return wrongKind === undefined ? { ok: false, reason } : { ok: false, reason, wrongKind };
  }
  return { ok: true, value: parsed.value, quantity, unitWritten: parsed.unitWritten };
}

/** Reads text by the unit written in it, where nothing else says what is measured. */
export function readAny(text: string, settings: WritingSettings): Reading {
  const nothing = `Expected a number with a unit, such as 250 lx, f/5.6 or 3.2 m; “${shown(text)}” is not one.`;
  const found = text.length > longestEntry ? undefined : findAny(tidy(text), settings);
  if (found === undefined) return { ok: false, reason: localised(nothing, settings) };
  const { quantity, parsed } = found;
  if ('reason' in parsed) {
    return { ok: false, reason: localised(parsed.reason, settings), wrongKind: quantity };
  }
  return { ok: true, value: parsed.value, quantity, unitWritten: true };
}

/** Reads a level of light: any of lux, candela per square metre, candela or lumens, or a bare number. */
export function readLevel(text: string, settings: WritingSettings): Reading {
  const bare = text.length > longestEntry ? undefined : readAmount(tidy(text), settings);
  if (bare?.rest === '' && !bare.fraction) {
    return { ok: true, value: bare.value, quantity: 'number', unitWritten: false };
  }
  const reading = readAny(text, settings);
  const isLight = (quantity: QuantityName): boolean =>
    lightQuantities.some((light) => light === quantity);
  if (reading.ok && isLight(reading.quantity)) return reading;
  const expected = 'Expected a level of light such as 250 lx, 25 fc or 80 cd/m2';
  return wrong(expected, text, settings, reading);
}

function refused(quantity: QuantityName, text: string, settings: WritingSettings): Reading {
  const { one, such } = units[quantity];
  const other = readAny(text, settings);
  return wrong(`Expected ${one} such as ${such}`, text, settings, other, quantity);
}

function wrong(
  expected: string,
  text: string,
  settings: WritingSettings,
  other: Reading,
  wanted?: QuantityName,
): Reading {
  const sentence = localised(expected, settings);
  if (other.ok && other.quantity !== wanted) {
    const kind = units[other.quantity].one;
    return {
      ok: false,
      reason: `${sentence}; ${shown(text)} is ${kind}.`,
      wrongKind: other.quantity,
    };
  }
  return { ok: false, reason: `${sentence}; “${shown(text)}” is not one.` };
}

interface Found {
  readonly quantity: QuantityName;
  readonly parsed: NonNullable<Parsed>;
}

function findAny(text: string, settings: WritingSettings): Found | undefined {
  for (const [quantity, reader] of written) {
    const parsed = reader(text, settings, {});
    if (parsed !== undefined) return { quantity, parsed };
  }
  const front = unitBefore(text);
  if (front !== undefined && /\w/u.test(front.unit.symbol)) {
    const parsed = readWithUnits(front.quantity, text, settings);
    if (parsed !== undefined) return { quantity: front.quantity, parsed };
  }
  const unit = readAmount(text, settings)?.rest;
  const named = unit === undefined || unit === '' ? undefined : unitAnywhere(unit);
  if (named === undefined) return undefined;
  const parsed = readInside(named.quantity, text, settings, {});
  return parsed === undefined ? undefined : { quantity: named.quantity, parsed };
}

function readInside(
  quantity: QuantityName,
  text: string,
  settings: WritingSettings,
  context: ReadingContext,
): Parsed {
  const reader = readers[quantity];
  const parsed =
    reader === undefined
      ? readWithUnits(quantity, text, settings)
      : reader(text, settings, context);
  const endless = parsed !== undefined && 'value' in parsed && !Number.isFinite(parsed.value);
  return endless ? undefined : parsed;
}
