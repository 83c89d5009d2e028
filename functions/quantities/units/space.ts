import type { QuantityUnits } from '../unit.ts';

/** The international foot in metres, exact since 1959. */
export const foot = 0.3048;

export const length: QuantityUnits = {
  words: 'distance',
  one: 'a distance',
  such: '3.2 m or 10\'6"',
  base: 'm',
  fractions: true,
  units: [
    {
      symbol: 'm',
      factor: 1,
      spellings: ['m', 'metre', 'metres', 'meter', 'meters'],
      inside: ['mtr', 'mtrs'],
    },
    { symbol: 'ft', factor: foot, spellings: ['ft', 'foot', 'feet', "'"] },
    { symbol: 'in', factor: foot / 12, spellings: ['in', 'inch', 'inches', '"', "''"] },
    {
      symbol: 'cm',
      factor: 1 / 100,
      spellings: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
    },
    {
      symbol: 'mm',
      factor: 1 / 1000,
      spellings: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
    },
    {
      symbol: 'km',
      factor: 1000,
      spellings: ['km', 'kilometre', 'kilometres', 'kilometer', 'kilometers'],
    },
    { symbol: 'yd', factor: 3 * foot, spellings: ['yd', 'yard', 'yards'] },
  ],
};

export const area: QuantityUnits = {
  words: 'area',
  one: 'an area',
  such: '1.5 m2 or 16 sq ft',
  base: 'm²',
  least: 'zero',
  units: [
    { symbol: 'm²', factor: 1, spellings: ['m²', 'm2', 'm^2', 'sqm', 'sq m'] },
    { symbol: 'ft²', factor: foot ** 2, spellings: ['ft²', 'ft2', 'ft^2', 'sqft', 'sq ft'] },
    { symbol: 'cm²', factor: 1 / 100 ** 2, spellings: ['cm²', 'cm2', 'cm^2', 'sq cm'] },
  ],
};

export const angle: QuantityUnits = {
  words: 'angle',
  one: 'an angle',
  such: '172.8°',
  base: '°',
  small: true,
  units: [{ symbol: '°', factor: 1, spellings: ['°', 'º', 'deg', 'degree', 'degrees'] }],
};
