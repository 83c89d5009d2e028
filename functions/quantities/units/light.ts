import type { QuantityUnits } from '../unit.ts';
import { foot } from './space.ts';

/** Footcandle: a lumen on a square foot, in lux. */
export const footcandle = 1 / foot ** 2;

/** Footlambert: one over π candela per square foot, in candela per square metre. */
export const footlambert = 1 / (Math.PI * foot ** 2);

export const illuminance: QuantityUnits = {
  words: 'illuminance',
  one: 'an illuminance',
  such: '250 lx, 25 fc or 2.5 klx',
  base: 'lx',
  least: 'zero',
  units: [
    { symbol: 'lx', factor: 1, spellings: ['lx', 'lux', 'lm/m²', 'lm/m2'] },
    {
      symbol: 'fc',
      factor: footcandle,
      spellings: [
        'fc',
        'ftc',
        'ft-c',
        'footcandle',
        'footcandles',
        'foot-candle',
        'foot-candles',
        'foot candle',
        'foot candles',
      ],
    },
    { symbol: 'klx', factor: 1000, spellings: ['klx', 'klux', 'kilolux'] },
  ],
};

export const luminance: QuantityUnits = {
  words: 'luminance',
  one: 'a luminance',
  such: '80 cd/m2, 80 nits or 23 fL',
  base: 'cd/m²',
  least: 'zero',
  units: [
    {
      symbol: 'cd/m²',
      factor: 1,
      spellings: ['cd/m²', 'cd/m2', 'cd/m^2', 'cd/sqm', 'nit', 'nits', 'nt'],
    },
    {
      symbol: 'fL',
      factor: footlambert,
      spellings: [
        'fL',
        'ftL',
        'ft-L',
        'footlambert',
        'footlamberts',
        'foot-lambert',
        'foot-lamberts',
        'foot lambert',
        'foot lamberts',
      ],
    },
    { symbol: 'kcd/m²', factor: 1000, spellings: ['kcd/m²', 'kcd/m2', 'kcd/m^2', 'knit', 'knits'] },
  ],
};

export const intensity: QuantityUnits = {
  words: 'luminous intensity',
  one: 'a luminous intensity',
  such: '12000 cd or 12 kcd',
  base: 'cd',
  least: 'zero',
  units: [
    { symbol: 'cd', factor: 1, spellings: ['cd', 'candela', 'candelas'] },
    { symbol: 'kcd', factor: 1000, spellings: ['kcd', 'kilocandela'] },
  ],
};

export const flux: QuantityUnits = {
  words: 'luminous flux',
  one: 'a luminous flux',
  such: '4000 lm or 4 klm',
  base: 'lm',
  least: 'zero',
  units: [
    { symbol: 'lm', factor: 1, spellings: ['lm', 'lumen', 'lumens'] },
    { symbol: 'klm', factor: 1000, spellings: ['klm', 'kilolumen', 'kilolumens'] },
  ],
};
