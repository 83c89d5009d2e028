import type { QuantityUnits } from '../unit.ts';

export const power: QuantityUnits = {
  words: 'power',
  one: 'a power',
  such: '650 W or 2.4 kW',
  base: 'W',
  units: [
    { symbol: 'W', factor: 1, spellings: ['W', 'watt', 'watts'] },
    { symbol: 'kW', factor: 1000, spellings: ['kW', 'kilowatt', 'kilowatts'] },
  ],
};

export const apparentPower: QuantityUnits = {
  words: 'apparent power',
  one: 'an apparent power',
  such: '800 VA or 3 kVA',
  base: 'VA',
  units: [
    { symbol: 'VA', factor: 1, spellings: ['VA', 'volt-amps', 'volt-amperes'] },
    { symbol: 'kVA', factor: 1000, spellings: ['kVA'] },
  ],
};

export const voltage: QuantityUnits = {
  words: 'voltage',
  one: 'a voltage',
  such: '230 V',
  base: 'V',
  units: [
    { symbol: 'V', factor: 1, spellings: ['V', 'volt', 'volts'] },
    { symbol: 'mV', factor: 1 / 1000, spellings: ['mV'] },
    { symbol: 'kV', factor: 1000, spellings: ['kV'] },
  ],
};

export const current: QuantityUnits = {
  words: 'current',
  one: 'a current',
  such: '16 A or 30 mA',
  base: 'A',
  units: [
    { symbol: 'A', factor: 1, spellings: ['A', 'amp', 'amps', 'ampere', 'amperes'] },
    { symbol: 'mA', factor: 1 / 1000, spellings: ['mA', 'milliamp', 'milliamps'] },
  ],
};

export const energy: QuantityUnits = {
  words: 'energy',
  one: 'an energy',
  such: '98 Wh or 1.2 kWh',
  base: 'Wh',
  units: [
    { symbol: 'Wh', factor: 1, spellings: ['Wh', 'watt-hour', 'watt-hours'] },
    { symbol: 'kWh', factor: 1000, spellings: ['kWh', 'kilowatt-hour', 'kilowatt-hours'] },
  ],
};

export const charge: QuantityUnits = {
  words: 'charge',
  one: 'a charge',
  such: '14 Ah',
  base: 'Ah',
  units: [
    { symbol: 'Ah', factor: 1, spellings: ['Ah', 'amp-hour', 'amp-hours'] },
    { symbol: 'mAh', factor: 1 / 1000, spellings: ['mAh'] },
  ],
};

export const conductorArea: QuantityUnits = {
  words: 'conductor area',
  one: 'a conductor area',
  such: '2.5 mm2 or 12 AWG',
  base: 'mm²',
  least: 'more than zero',
  small: true,
  // Wire gauges go by a formula: gauge.ts.
  units: [{ symbol: 'mm²', factor: 1, spellings: ['mm²', 'mm2', 'mm^2', 'sq mm', 'sqmm'] }],
};

export const frequency: QuantityUnits = {
  words: 'frequency',
  one: 'a frequency',
  such: '50 Hz',
  base: 'Hz',
  least: 'zero',
  units: [
    { symbol: 'Hz', factor: 1, spellings: ['Hz', 'hertz'] },
    { symbol: 'kHz', factor: 1000, spellings: ['kHz'] },
  ],
};
