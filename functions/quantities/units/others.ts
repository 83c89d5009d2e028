import type { QuantityUnits } from '../unit.ts';

/** The international avoirdupois pound in kilograms, exact since 1959. */
const pound = 0.45359237;

export const weight: QuantityUnits = {
  words: 'weight',
  one: 'a weight',
  such: '14 kg or 30 lb',
  base: 'kg',
  units: [
    {
      symbol: 'kg',
      factor: 1,
      spellings: ['kg', 'kilogram', 'kilograms'],
      inside: ['kilo', 'kilos'],
    },
    { symbol: 'g', factor: 1 / 1000, spellings: ['g', 'gram', 'grams'] },
    { symbol: 'lb', factor: pound, spellings: ['lb', 'lbs', 'pound', 'pounds'] },
    { symbol: 'oz', factor: pound / 16, spellings: ['oz', 'ounce', 'ounces'] },
    { symbol: 't', factor: 1000, spellings: ['tonne', 'tonnes'], inside: ['t'] },
  ],
};

export const temperature: QuantityUnits = {
  words: 'temperature',
  one: 'a temperature',
  such: '20 °C or 68 °F',
  base: '°C',
  units: [
    { symbol: '°C', factor: 1, spellings: ['°C', 'ºC', 'deg C', 'celsius'], inside: ['C', '°'] },
    {
      symbol: '°F',
      factor: 5 / 9,
      zero: 32,
      spellings: ['°F', 'ºF', 'deg F', 'fahrenheit'],
      inside: ['F'],
    },
  ],
};

export const duration: QuantityUnits = {
  words: 'length of time',
  one: 'a length of time',
  such: '10 h, 8 h 30 min or 2 d',
  base: 'h',
  fractions: true,
  units: [
    { symbol: 'h', factor: 1, spellings: ['h', 'hr', 'hrs', 'hour', 'hours'] },
    { symbol: 'min', factor: 1 / 60, spellings: ['min', 'mins', 'minute', 'minutes'] },
    { symbol: 'd', factor: 24, spellings: ['day', 'days'], inside: ['d'] },
    { symbol: 's', factor: 1 / 3600, spellings: [], inside: ['s', 'sec', 'second', 'seconds'] },
  ],
};

export const money: QuantityUnits = {
  words: 'sum of money',
  one: 'a sum of money',
  such: '1250.00',
  base: '',
  units: [],
};

export const number: QuantityUnits = {
  words: 'number',
  one: 'a number',
  such: '12 or 0.5',
  base: '',
  fractions: true,
  units: [],
};

export const text: QuantityUnits = {
  words: 'text',
  one: 'a text',
  such: 'Rope bench',
  base: '',
  units: [],
};

export const verdict: QuantityUnits = {
  words: 'verdict',
  one: 'a verdict',
  such: 'agrees or 1/3 stop over',
  base: '',
  units: [],
};

export const dateTime: QuantityUnits = {
  words: 'date or time',
  one: 'a date or a time',
  such: '2026-11-24, 14:06 or 2026-11-24 14:06',
  base: '',
  units: [],
};

export const truth: QuantityUnits = {
  words: 'yes or no',
  one: 'yes or no',
  such: 'yes, no, TRUE or FALSE',
  base: '',
  units: [],
};
