import { gaugeName, gaugeOfArea } from './gauge.ts';
import type { QuantityName } from './names.ts';
import type { ReadingContext } from './parsed.ts';
import type { WritingSettings } from './settings.ts';
import { fromBase } from './unit.ts';
import type { Unit } from './unit.ts';
import { units } from './units.ts';
import { writeIn, writeQuantity } from './write.ts';
import { writeFeetAndInches } from './writing/length.ts';
import { writeDecimalStops } from './writing/stops.ts';
import { written } from './writing/written.ts';
import type { Written } from './writing/written.ts';

type Lister = (
  value: number,
  settings: WritingSettings,
  context: ReadingContext,
) => readonly Written[];

/** Ways to say a quantity beyond the units of its table. */
const others: Partial<Record<QuantityName, Lister>> = {
  angle: (value, settings, { fps = 0 }) =>
    fps > 0 && value > 0 ? [writeQuantity('time', value / 360 / fps, settings)] : [],
  colourTemperature: (value, settings) =>
    value > 0 ? [writeQuantity('mired', 1e6 / value, settings)] : [],
  conductorArea: (value) => (value > 0 ? nearestGauge(value) : []),
  density: (value, settings) => [
    writeQuantity('stops', -value / Math.log10(2), settings),
    writeQuantity('share', 10 ** -value, settings),
  ],
  factor: (value, settings) => stopsOf(value, settings),
  fNumber: (value, settings) =>
    (['thirds', 'halves', 'tenths', 'decimals'] as const).map((fNumbers) =>
      writeQuantity('fNumber', value, { ...settings, fNumbers }),
    ),
  length: (value) => [writeFeetAndInches(value)],
  ratio: (value, settings) => stopsOf(value, settings),
  share: (value, settings) => [
    written(writeQuantity('number', value, settings).number),
    ...stopsOf(value, settings),
  ],
  stops: (value, settings) => [
    writeDecimalStops(value, settings),
    writeQuantity('factor', 2 ** value, settings),
  ],
  time: (value, settings, { fps = Infinity }) =>
    value * fps <= 1
      ? [writeQuantity('time', value, { ...settings, shutter: 'angle' }, { fps })]
      : [],
};

/** The value in every unit that people use for its quantity, the workbook's own first. */
export function inEveryUnit(
  quantity: QuantityName,
  value: number,
  settings: WritingSettings,
  context: ReadingContext = {},
): readonly Written[] {
  if (!Number.isFinite(value)) return [];
  const first = writeQuantity(quantity, value, settings, context);
  const table = units[quantity].units;
  const handy = table
    .filter((unit) => table.length > 1 && isHandy(unit, fromBase(unit, value)))
    .map((unit) => writeIn(unit, quantity, value, settings));
  const all = [first, ...handy, ...(others[quantity]?.(value, settings, context) ?? [])];
  return all.filter(({ text }, at) => all.findIndex((each) => each.text === text) === at);
}

/** Numbers that people can hold in their heads; 0.0032 km helps nobody. */
function isHandy(unit: Unit, number: number): boolean {
  return unit.factor === 1 || (Math.abs(number) >= 0.1 && Math.abs(number) < 20_000);
}

function stopsOf(factor: number, settings: WritingSettings): readonly Written[] {
  return factor > 0 ? [writeQuantity('stops', Math.log2(factor), settings)] : [];
}

function nearestGauge(area: number): readonly Written[] {
  const gauge = Math.round(gaugeOfArea(area));
  if (gauge < -3 || gauge > 40) return [];
  const exact = Math.abs(gaugeOfArea(area) - gauge) < 1e-6;
  return [written(exact ? gaugeName(gauge) : `about ${gaugeName(gauge)}`)];
}
