import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import { define, type AnyDefinition, type Parameter } from '../../../../functions/define.ts';
import {
  EVLUX,
  FACTORSTOPS,
  FCOMBINE,
  READINGF,
  SPREAD,
  STOPS,
} from '../../../../functions/index.ts';
import type { Argument, RangeCell } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

const broken = { code: '#REF!', message: 'The cell is gone.' } as const;
const given = (definition: AnyDefinition, ...args: readonly Argument[]) =>
  call(definition, args, settings);
const wrong = (message: string) => ({ code: '#VALUE!', message });
const outside = (message: string) => ({ code: '#NUM!', message });

/** A function that hands back its first argument, to see what became of it. */
const handsBack = (...parameters: readonly Parameter[]): AnyDefinition =>
  define({
    name: 'TRIED',
    family: 'stops',
    summary: 'Its first argument.',
    job: 'You want to see what a function gets.',
    search: [],
    parameters,
    result: 'number',
    alike: [],
    limits: '',
    sources: [],
    examples: [],
    formula: { none: '' },
    run: (first: unknown) => first as number,
  });

describe('yes or no', () => {
  const asked = handsBack({ name: 'asked', quantity: 'truth', help: '' });

  it('is taken as it is', () => {
    expect(given(asked, true)).toBe(true);
    expect(given(asked, false)).toBe(false);
  });

  it('is nothing else', () => {
    expect(given(asked, 'yes')).toEqual(wrong('TRIED: asked must be TRUE or FALSE, not "yes".'));
    expect(given(asked, 1)).toEqual(wrong('TRIED: asked must be TRUE or FALSE, not 1.'));
  });

  it('is no number where a number is wanted', () => {
    expect(given(STOPS, true, 1)).toEqual(wrong('STOPS: level must be a number, not true.'));
    expect(given(READINGF, false, 'dome', 100, 1)).toEqual(
      wrong(
        'READINGF: reading must be f-number or illuminance or luminance or exposure value, not false.',
      ),
    );
  });
});

describe('anything at all', () => {
  const anything = handsBack({ name: 'thing', quantity: 'anything', help: '' });

  it.each([true, false, 'red', '250 fc', 5.6, 0])('%s stays as it stands', (thing) => {
    expect(given(anything, thing)).toBe(thing);
  });
});

describe('a table', () => {
  const table = handsBack({ name: 'rows', quantity: 'table', range: true, help: '' });
  const shown = (cells: readonly RangeCell[], width: number) => {
    let seen: readonly (readonly { readonly value: unknown }[])[] = [];
    const run = (rows: typeof seen) => {
      seen = rows;
      return 0;
    };
    given({ ...table, run } as AnyDefinition, { kind: 'range', cells, width } as Argument);
    return seen.map((row) => row.map(({ value }) => value));
  };

  it('comes row by row; a formula’s empty text is as good as an empty cell, a space is none', () => {
    expect(shown([{ value: 'Key' }, { value: '' }, { value: ' ' }, { value: 0 }], 2)).toEqual([
      ['Key', undefined],
      [' ', 0],
    ]);
  });
});

describe('how many', () => {
  it('none, one and more are counted in words', () => {
    const alone = handsBack();
    expect(given(alone, 1)).toEqual(wrong('TRIED takes no arguments, not 1.'));
    expect(given(FACTORSTOPS, 1, 2)).toEqual(wrong('FACTORSTOPS takes 1 argument, not 2.'));
    expect(given(STOPS, 1, 2, 3)).toEqual(wrong('STOPS takes at most 2 arguments, not 3.'));
  });

  it('matters less than an error that was handed in', () => {
    expect(given(STOPS, broken, 1, 2)).toBe(broken);
  });

  it('one in a row may be a text or a blank cell as well', () => {
    expect(given(FCOMBINE, 'f/4')).toBe(4);
    expect(given(FCOMBINE, { blank: true, at: 'B2' })).toMatchObject({ waiting: true });
  });
});

describe('a number that is none', () => {
  it.each([NaN, Infinity, -Infinity])('%d is refused as the argument that it is', (number) => {
    expect(given(STOPS, number, 1)).toEqual(outside('STOPS: level is not a number.'));
    expect(given(STOPS, 1, number)).toEqual(outside('STOPS: reference is not a number.'));
  });
});

describe('a receptor', () => {
  it('is read whatever blanks stand around it', () => {
    // E = 2^EV · C / 100 with C = 340 for a dome.
    expect(given(EVLUX, 0, ' Dome ')).toBeCloseTo(3.4, 12);
    expect(given(EVLUX, 0, 'spot')).toEqual(
      wrong('EVLUX: receptor must be "dome", "flat" or a constant such as 340, not "spot".'),
    );
    for (const name of ['constructor', '__proto__', 'toString'])
      expect(given(EVLUX, 0, name)).toMatchObject({ code: '#VALUE!' });
  });
});

describe('levels of one kind', () => {
  it('a text without a unit is of any kind', () => {
    expect(given(STOPS, '320', '80 cd/m2')).toBe(2);
    expect(given(STOPS, '320 cd/m2', '80')).toBe(2);
  });

  it('are asked for in a row and in a range', () => {
    const message = 'SPREAD: levels must be illuminance like levels, not luminance.';
    expect(given(SPREAD, '250 lx', '125 lx', '80 cd/m2')).toEqual(wrong(message));
    expect(given(SPREAD, '250 lx', '125 lx')).toBe(1);
    const cells: RangeCell[] = [{ value: '250 lx' }, { value: '80 cd/m2' }];
    expect(given(SPREAD, { cells })).toEqual(wrong(message));
  });
});

describe('a reading with its unit', () => {
  it('of a kind that no meter shows is refused by name', () => {
    expect(given(READINGF, '3 m', 'dome', 100, 1)).toEqual(
      wrong(
        'READINGF: reading must be f-number or illuminance or luminance or exposure value, not distance.',
      ),
    );
  });

  it('may be below zero in EV only', () => {
    // At ISO 100 and one second, EV −2 is f/0.5: N² = 2^EV · t.
    expect(given(READINGF, '-2 EV', 'dome', 100, 1)).toBeCloseTo(0.5, 12);
    expect(given(READINGF, '0 EV', 'dome', 100, 1)).toBe(1);
    expect(given(READINGF, '-2 lx', 'dome', 100, 1)).toMatchObject({ code: '#NUM!' });
    expect(given(READINGF, '0 lx', 'dome', 100, 1)).toMatchObject({ quiet: true });
  });
});

describe('a place in a range', () => {
  it('is added to the sentence, whose decimals stay', () => {
    const cells: RangeCell[] = [
      { value: 100, at: 'B1' },
      { value: -0.5, at: 'B2' },
    ];
    expect(given(SPREAD, { cells })).toEqual(
      outside('SPREAD: levels must be more than zero, not -0.5 (B2).'),
    );
  });

  it('is that of the first blank cell, wherever that is noted', () => {
    const waiting = (at: string) => ({
      code: '#N/A',
      message: `waiting for levels${at}`,
      waiting: true,
    });
    const blank = { blank: true } as const;
    expect(given(SPREAD, { cells: [{ value: { blank: true, at: 'C1' } }] })).toEqual(
      waiting(' (C1)'),
    );
    expect(given(SPREAD, { cells: [{ value: blank }] })).toEqual(waiting(''));
    expect(given(SPREAD, { cells: [] })).toEqual(waiting(''));
  });
});
