import type { QuantityUnits } from '../unit.ts';

export const density: QuantityUnits = {
  words: 'density',
  one: 'a density',
  such: '0.6 or ND 0.6',
  base: '',
  least: 'zero',
  small: true,
  units: [],
};

export const greenCorrection: QuantityUnits = {
  words: 'green correction',
  one: 'a green correction',
  such: '30M, CC 7 G or half minus green',
  base: 'CC',
  small: true,
  units: [],
};

export const share: QuantityUnits = {
  words: 'share',
  one: 'a share',
  such: '50 % or 0.5',
  base: '',
  least: 'zero',
  small: true,
  fractions: true,
  units: [{ symbol: '%', factor: 1 / 100, spellings: ['%', 'percent', 'per cent'] }],
};

export const colourTemperature: QuantityUnits = {
  words: 'colour temperature',
  one: 'a colour temperature',
  such: '5600 K',
  base: 'K',
  least: 'more than zero',
  units: [{ symbol: 'K', factor: 1, spellings: ['K', 'kelvin', 'kelvins'], inside: ['°K'] }],
};

export const mired: QuantityUnits = {
  words: 'mired value',
  one: 'a mired value',
  such: '178 mired',
  base: 'mired',
  units: [{ symbol: 'mired', factor: 1, spellings: ['mired', 'mireds', 'MK⁻¹', 'MK-1'] }],
};

export const duv: QuantityUnits = {
  words: 'Duv',
  one: 'a Duv',
  such: '+0.0040 or Duv -0.0012',
  base: '',
  small: true,
  units: [{ symbol: 'Duv', factor: 1, spellings: ['Duv'], before: ['Duv'] }],
};

export const chromaticity: QuantityUnits = {
  words: 'chromaticity coordinate',
  one: 'a chromaticity coordinate',
  such: '0.3457',
  base: '',
  least: 'zero',
  small: true,
  units: [],
};
