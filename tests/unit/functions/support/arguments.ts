import fc from 'fast-check';
import { quantityNames } from '../../../../functions/quantities/names.ts';
import { blank, type Argument, type FunctionError } from '../../../../functions/values.ts';

const extremes = [
  0,
  -0,
  1,
  -1,
  2,
  3,
  0.5,
  1.4,
  5.6,
  24,
  180,
  360,
  1e-320,
  5e-324,
  1e-12,
  1e12,
  1e100,
  -1e100,
  Number.MAX_VALUE,
  Number.MIN_VALUE,
  Number.MAX_SAFE_INTEGER,
  NaN,
  Infinity,
  -Infinity,
];

const texts = [
  '',
  ' ',
  'dome',
  'flat',
  'spot',
  'none',
  '250 fc',
  '2.5 klx',
  'f/5.6',
  'f/2.8 1/3',
  'f/0',
  '1/50 s',
  '1/0',
  '172.8°',
  '10 ft',
  '10\'6"',
  '4:1',
  '0:1',
  'ND 0.6',
  'ND 8',
  '8x',
  '50 %',
  '5600 K',
  '178 mired',
  '1.2 kW',
  '16 A',
  '230 V',
  '50 Hz',
  '12 AWG',
  '2 d',
  '-1/3',
  '1e999',
  '-0',
  'NaN',
  'Infinity',
  '#N/A',
  '12,5',
  '=1',
  '９',
  'constructor',
  '__proto__',
  '½',
];

const failed: readonly FunctionError[] = [
  { code: '#N/A', message: 'waiting for key', waiting: true },
  { code: '#NUM!', message: 'no light at key', quiet: true },
  { code: '#VALUE!', message: 'That is no number.' },
];

const value = fc.oneof(
  { weight: 4, arbitrary: fc.double() },
  { weight: 3, arbitrary: fc.double({ min: 0.001, max: 10_000, noNaN: true }) },
  { weight: 3, arbitrary: fc.constantFrom(...extremes) },
  { weight: 3, arbitrary: fc.constantFrom(...texts) },
  fc.string({ unit: 'grapheme' }),
  fc.boolean(),
);

const measured = fc.record({
  measured: fc.constantFrom(...quantityNames),
  value: fc.oneof(fc.double(), fc.constantFrom(...extremes)),
});

const nothing = fc.constantFrom(blank, { blank: true, at: 'Z9' } as const);

const cell = fc.record(
  {
    value: fc.oneof(
      { weight: 8, arbitrary: value },
      nothing,
      { weight: 2, arbitrary: measured },
      fc.constantFrom(...failed),
    ),
    at: fc.constantFrom('A1', 'Walk!B2'),
  },
  { requiredKeys: ['value'] },
);

const range = fc.record(
  { cells: fc.array(cell, { maxLength: 12 }), width: fc.integer({ min: 1, max: 4 }) },
  { requiredKeys: ['cells'] },
);

/** Whatever a formula can hand over, sensible or not. */
export const anyArgument: fc.Arbitrary<Argument> = fc.oneof(
  { weight: 10, arbitrary: value },
  { weight: 2, arbitrary: range },
  measured,
  nothing,
  fc.constant(undefined),
  fc.constantFrom(...failed),
);
