import type { QuantityUnits } from '../unit.ts';

export const time: QuantityUnits = {
  words: 'exposure time',
  one: 'an exposure time',
  such: '1/50, 1/50 s or 20 ms',
  base: 's',
  least: 'more than zero',
  fractions: true,
  units: [
    {
      symbol: 's',
      factor: 1,
      spellings: ['s', 'sec', 'secs', 'second', 'seconds'],
      inside: ['"', 'th', 'th s', 'th sec', 'th of a second'],
    },
    {
      symbol: 'ms',
      factor: 1 / 1000,
      spellings: ['ms', 'msec', 'millisecond', 'milliseconds'],
    },
    {
      symbol: 'µs',
      factor: 1 / 1_000_000,
      spellings: ['µs', 'us', 'microsecond', 'microseconds'],
    },
    { symbol: 'min', factor: 60, spellings: [], inside: ['min', 'mins', 'minute', 'minutes'] },
    { symbol: 'h', factor: 3600, spellings: [], inside: ['h', 'hr', 'hour', 'hours'] },
  ],
};

export const frameRate: QuantityUnits = {
  words: 'frame rate',
  one: 'a frame rate',
  such: '24, 23.976 or 25 fps',
  base: 'fps',
  least: 'more than zero',
  small: true,
  fractions: true,
  units: [
    {
      symbol: 'fps',
      factor: 1,
      spellings: ['fps', 'frames/s', 'frames per second', 'f/s'],
      inside: ['p', 'hz', 'frames'],
    },
  ],
};

export const fNumber: QuantityUnits = {
  words: 'f-number',
  one: 'an f-number',
  such: 'f/2.8, f/2.8 1/3, f/2.8+0.3 or T2.8',
  base: '',
  least: 'more than zero',
  small: true,
  units: [],
};

export const iso: QuantityUnits = {
  words: 'speed',
  one: 'a speed',
  such: 'ISO 800 or EI 800',
  base: 'ISO',
  least: 'more than zero',
  units: [
    { symbol: 'ISO', factor: 1, spellings: ['ISO'], before: ['ISO'] },
    { symbol: 'EI', factor: 1, spellings: ['EI'], before: ['EI'] },
  ],
};

export const ev: QuantityUnits = {
  words: 'exposure value',
  one: 'an exposure value',
  such: '11.3 EV or EV 11 1/3',
  base: 'EV',
  small: true,
  fractions: true,
  units: [{ symbol: 'EV', factor: 1, spellings: ['EV'], before: ['EV'] }],
};

export const stops: QuantityUnits = {
  words: 'number of stops',
  one: 'a number of stops',
  such: '+1, -2/3 or 1 1/3 stops',
  base: 'stops',
  small: true,
  fractions: true,
  units: [{ symbol: 'stops', factor: 1, spellings: ['stop', 'stops', 'f-stop', 'f-stops'] }],
};

export const ratio: QuantityUnits = {
  words: 'ratio',
  one: 'a ratio',
  such: '4:1 or 4',
  base: ':1',
  least: 'more than zero',
  fractions: true,
  units: [],
};

export const factor: QuantityUnits = {
  words: 'factor',
  one: 'a factor',
  such: '8x or 8',
  base: '×',
  least: 'more than zero',
  fractions: true,
  units: [
    {
      symbol: '×',
      factor: 1,
      spellings: [],
      inside: ['x', '×', 'times'],
      before: ['×', 'x'],
    },
  ],
};
