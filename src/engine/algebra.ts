import type { QuantityName } from '../../functions/quantities/names.ts';

type Table = Readonly<Record<string, QuantityName>>;

/** What two quantities multiply to, in either order. */
export const products: Table = {
  'length length': 'area',
  'power duration': 'energy',
  'voltage current': 'apparentPower',
  'current duration': 'charge',
  'voltage charge': 'energy',
};

/** What one quantity divided by another gives. `any` is a number written in the formula. */
export const quotients: Table = {
  'area length': 'length',
  'intensity area': 'illuminance',
  'energy power': 'duration',
  'energy duration': 'power',
  'power voltage': 'current',
  'apparentPower voltage': 'current',
  'apparentPower current': 'voltage',
  'charge current': 'duration',
  'charge duration': 'current',
  'any frameRate': 'time',
  'any time': 'frequency',
  'any frequency': 'time',
};
