import { describe, expect, it } from 'vitest';
import { exercisesOf } from '../../src/book/exercises.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import { judge } from '../../src/teach/judge.ts';
import { bookOf } from '../../src/teach/set/set.ts';
import type { SetGiven } from '../../src/teach/set/sheet.ts';
import { variantOf } from '../../src/teach/variant.ts';
import { workingsOf } from '../../src/teach/workings.ts';
import { countingMeans } from '../unit/engine/support/openBook.ts';

interface Published {
  /** Where the exercise or the worked example is printed; from memory where `read` does not say where. */
  readonly source: string;
  /** The page on which its text and its answer were read, 29 November 2026. */
  readonly read?: string;
  readonly givens: readonly (readonly [name: string, quantity: QuantityName, typed: string])[];
  readonly asks: string;
  readonly quantity: QuantityName;
  readonly formula: string;
  /** As printed, in the base unit, and half of its last printed digit. */
  readonly answer: number;
  readonly rounded: number;
}

const published: readonly Published[] = [
  {
    source:
      'Precalculus, 2nd edition, chapter 5, problem 70: a lamp of 90 cd over a book, its light 25° off the upright, 18 lm/ft² wanted; how far away?',
    read: 'vaia.com/en-us/textbooks/math/precalculus-2-edition/chapter-5',
    givens: [
      ['candela', 'number', '90'],
      ['angle', 'number', '25'],
      ['wanted', 'number', '18'],
    ],
    asks: 'How many feet?',
    quantity: 'number',
    formula: '=SQRT($candela*COS(RADIANS($angle))/$wanted)',
    answer: 2.13,
    rounded: 0.005,
  },
  {
    source:
      'Lighting for Electricians (A. Lee, an open textbook), chapter 10, example 2: 100 lux one metre away, three metres away',
    read: 'pressbooks.bccampus.ca/lightingforelectricians',
    givens: [
      ['lux', 'illuminance', '100 lx'],
      ['near', 'length', '1 m'],
      ['far', 'length', '3 m'],
    ],
    asks: 'How many lux are left?',
    quantity: 'illuminance',
    formula: '=INVERSESQUARE($lux,$near,$far)',
    answer: 11.1,
    rounded: 0.05,
  },
  {
    source:
      'An algebra textbook (the page leaves its title out), problem 63: the density of a photographic material that transmits 90 %',
    read: 'studyquestionhub.com, problem 63 on photographic quality assurance',
    givens: [['passes', 'share', '90 %']],
    asks: 'What is its density?',
    quantity: 'density',
    formula: '=TRANSMISSIONDENSITY($passes)',
    answer: 0.04576,
    rounded: 0.000_005,
  },
  {
    source: 'A technical lexicon, micro reciprocal degree: 3,600 K are 278 mired',
    read: 'itwissen.info/en/micro-reciprocal-degree-mrd.html',
    givens: [['kelvin', 'colourTemperature', '3600 K']],
    asks: 'How many mired?',
    quantity: 'mired',
    formula: '=MIRED($kelvin)',
    answer: 278,
    rounded: 0.5,
  },
  {
    source:
      'ANSI PH3.49, worked example of a reflected-light meter: B = 3200 cd/m², S = 125, t = 1/125',
    givens: [
      ['level', 'luminance', '3200 cd/m2'],
      ['iso', 'iso', 'ISO 125'],
      ['time', 'time', '1/125 s'],
    ],
    asks: 'What f-number does the meter give?',
    quantity: 'fNumber',
    formula: '=SPOTF($level,$iso,$time)',
    answer: 16,
    rounded: 0.05,
  },
  {
    source: 'Table of exposure values, incident light, C = 250: EV 12 at ISO 100',
    givens: [['value', 'ev', '12']],
    asks: 'What illuminance is that?',
    quantity: 'illuminance',
    formula: '=EVLUX($value)',
    answer: 10_240,
    rounded: 5,
  },
  {
    source: 'Printed table of mired shifts for photographic filters: from 3400 K to 5500 K',
    givens: [
      ['from', 'colourTemperature', '3400 K'],
      ['to', 'colourTemperature', '5500 K'],
    ],
    asks: 'What shift does the filter make?',
    quantity: 'mired',
    formula: '=MIREDSHIFT($from,$to)',
    answer: -112,
    rounded: 0.5,
  },
  {
    source:
      'IES Lighting Handbook, inverse square law: 1000 cd seen square on from 5 ft give 40 fc',
    givens: [
      ['candela', 'number', '1000'],
      ['feet', 'number', '5'],
    ],
    asks: 'How many footcandles?',
    quantity: 'number',
    formula: '=$candela/$feet^2',
    answer: 40,
    rounded: 0.05,
  },
  {
    source: 'NIST SP 811, conversion factors: one footcandle is 10.76391 lx',
    givens: [['fc', 'number', '50']],
    asks: 'How many lux are 50 footcandles?',
    quantity: 'number',
    formula: '=LUX($fc)',
    answer: 538.1955,
    rounded: 0.0005,
  },
  {
    source: 'Printed neutral density tables: ND 1.2 wants four stops',
    givens: [['filter', 'density', 'ND 1.2']],
    asks: 'How many stops?',
    quantity: 'stops',
    formula: '=DENSITYSTOPS($filter)',
    answer: 4,
    rounded: 0.005,
  },
];

describe('a published exercise as a sheet gives the published answer', () => {
  it.each(published)('$source', (one) => {
    const { givens, asks, quantity, formula, answer, rounded } = one;
    const document = bookOf(
      {
        ...{ id: 'published', title: 'Published', purpose: one.source, level: 1, onTheSpot: false },
        givens: givens.map(([name, measured, typed]): SetGiven => ({
          ...{ name, label: name, quantity: measured, typed, draw: typed },
        })),
        conditions: [],
        questions: [
          {
            ...{ text: asks, quantity, tolerance: '1 %', points: 1, hint: '', solution: '' },
            ...{ expected: formula, mistakes: [] },
          },
        ],
      },
      countingMeans(),
    );
    const [exercise] = exercisesOf(document);
    if (!exercise) throw new Error('There is no exercise.');
    const workings = workingsOf(document, exercise);
    const drawn = variantOf(exercise, workings, '1', 'Anyone');
    workings.close();
    if (!drawn.ok) throw new Error(drawn.reason);
    const [came] = drawn.answers;
    expect(Math.abs((came?.value ?? Number.NaN) - answer)).toBeLessThanOrEqual(rounded);
    const [question] = exercise.questions;
    if (!question || !came) throw new Error('There is no question.');
    expect(judge(question, came, answer).state).toBe('right');
  });
});
