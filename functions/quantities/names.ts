/**
 * Every kind of thing that a cell, a parameter or a result can measure.
 * The table of units stands in `units.ts`; the number kept is always in the base unit named there.
 * A verdict is words such as `1/3 stop over`, `agrees`; the grid sets a shape before them.
 */
export const quantityNames = [
  'illuminance',
  'luminance',
  'intensity',
  'flux',
  'length',
  'area',
  'angle',
  'time',
  'frameRate',
  'fNumber',
  'iso',
  'ev',
  'stops',
  'ratio',
  'factor',
  'density',
  'greenCorrection',
  'share',
  'colourTemperature',
  'mired',
  'duv',
  'chromaticity',
  'power',
  'apparentPower',
  'voltage',
  'current',
  'energy',
  'charge',
  'conductorArea',
  'frequency',
  'weight',
  'temperature',
  'duration',
  'money',
  'number',
  'text',
  'dateTime',
  'truth',
  'verdict',
] as const;

export type QuantityName = (typeof quantityNames)[number];

/** Quantities that add as light adds, so that a doubling is one stop. */
export const lightQuantities = ['illuminance', 'luminance', 'intensity', 'flux'] as const;

export type LightQuantity = (typeof lightQuantities)[number];
