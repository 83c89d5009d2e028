import { lightQuantities, type QuantityName } from '../../functions/quantities/names.ts';

/** The scale on which a reading is held against its target. */
export type OffScale = 'stops' | 'mired' | 'duv';

export interface Off {
  readonly scale: OffScale;
  /** Reading minus wanted: over, warmer and greener are positive. Infinite where there is no light. */
  readonly by: number;
}

type Measure = (reading: number, wanted: number) => Off;

const stops =
  (by: (reading: number, wanted: number) => number): Measure =>
  (reading, wanted) => ({ scale: 'stops', by: by(reading, wanted) });

const difference = (reading: number, wanted: number) => reading - wanted;
const doublings = (reading: number, wanted: number) => Math.log2(reading / wanted);
const million = 1e6;

/** Twice the light is one stop; an f-number goes with the root of the light. */
const measures: Readonly<Partial<Record<QuantityName, Measure>>> = {
  ...Object.fromEntries(lightQuantities.map((light) => [light, stops(doublings)])),
  factor: stops(doublings),
  ratio: stops(doublings),
  fNumber: stops((reading, wanted) => 2 * doublings(reading, wanted)),
  ev: stops(difference),
  stops: stops(difference),
  colourTemperature: (reading, wanted) => ({
    scale: 'mired',
    by: million / reading - million / wanted,
  }),
  mired: (reading, wanted) => ({ scale: 'mired', by: reading - wanted }),
  duv: (reading, wanted) => ({ scale: 'duv', by: reading - wanted }),
};

/** How far a reading is from what it should come to; undefined for what has no such scale. */
export function offBy(
  quantity: QuantityName | undefined,
  reading: number,
  wanted: number,
): Off | undefined {
  const off = quantity && measures[quantity]?.(reading, wanted);
  return off && !Number.isNaN(off.by) ? off : undefined;
}

export function isCompared(quantity: QuantityName | undefined): boolean {
  return quantity !== undefined && measures[quantity] !== undefined;
}
