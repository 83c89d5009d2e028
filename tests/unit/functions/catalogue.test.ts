import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { call, readArguments } from '../../../functions/call.ts';
import { families, type AnyDefinition } from '../../../functions/define.ts';
import { byName, catalogue } from '../../../functions/index.ts';
import { near } from '../../../functions/near.ts';
import { sources } from '../../../functions/sources.ts';
import { isError, type FunctionError, type Value } from '../../../functions/values.ts';
import { chance, seed } from './support/chance.ts';
import { workOut } from './support/plainFormula.ts';
import { argumentsOf, sampleFor } from './support/samples.ts';
import { settings } from './support/settings.ts';

const folder = join(import.meta.dirname, '../../../functions');
const lawSamples = 200;
const formulaSamples = 25;

type Run = (...handed: unknown[]) => Value | FunctionError;

const byFamily = families
  .map((family) => [family, catalogue.filter((one) => one.family === family)] as const)
  .filter(([, definitions]) => definitions.length > 0);

function eachFunction(test: (definition: AnyDefinition) => void): void {
  for (const definition of catalogue) it(definition.name, () => test(definition));
}

/** The same number to a share of 1e-9, or the same words, or the same truth. */
function same(value: unknown, expected: unknown, share = 1e-9): boolean {
  return typeof value === 'number' && typeof expected === 'number'
    ? near(value, expected, share)
    : value === expected;
}

describe('the catalogue', () => {
  it('holds every function in the folders, each under its file’s name and folder’s family', () => {
    const files = families.flatMap((family) => {
      const inFolder = readdirSync(folder).includes(family)
        ? readdirSync(join(folder, family))
        : [];
      return inFolder
        .filter((file) => /^[A-Z0-9]+\.ts$/.test(file))
        .map((file) => `${family}/${file.replace('.ts', '')}`)
        .sort();
    });
    expect(catalogue.map(({ family, name }) => `${family}/${name}`)).toEqual(files);
    expect(byName.size).toBe(catalogue.length);
  });

  it('cites every source at least once', () => {
    const cited = new Set(
      catalogue.flatMap(({ sources: citations, examples }) => [
        ...citations.map(({ from }) => from),
        ...examples.flatMap(({ source }) => source ?? []),
      ]),
    );
    expect([...cited].sort()).toEqual(Object.keys(sources).sort());
  });

  it('names no function like the address of a cell', () => {
    for (const { name } of catalogue) expect(name).not.toMatch(/^[A-Z]{1,3}\d+$/);
  });
});

describe('every function says', () => {
  /** Abbreviations that people say as words, and words that no sentence here needed. */
  const spoken = ['ev', 'fps', 'iso', 'f', 'x', 'y', 'z', 'x1', 'y1', 'x2', 'y2', 'n', 'utc'];
  const further = [
    'area',
    'base',
    'class',
    'continuous',
    'diameter',
    'efficiency',
    'incidence',
    'altitude',
    'longitude',
    'offset',
    'parts',
    'reference',
    'volts',
  ];
  const prose = catalogue.flatMap(({ summary, job, limits, search, parameters }) => [
    ...[summary, job, limits, ...search],
    ...parameters.map(({ help }) => help),
  ]);
  const words = new Set(
    prose
      .join(' ')
      .toLowerCase()
      .match(/[a-z]+/g),
  );
  const sentence = /^[“"A-Z0-9].*[.]$/su;

  describe('what it is, in sentences', () => {
    eachFunction(({ summary, job, limits, parameters }) => {
      for (const text of [summary, job, limits]) expect(text).toMatch(sentence);
      for (const { help } of parameters) expect(help).toMatch(/^\S.*[.]$/su);
      expect([summary, job, limits].join()).not.toMatch(/!|\bsorry\b/i);
    });
  });

  describe('what people may type to find it, at least three ways', () => {
    eachFunction(({ search, name }) => {
      expect(new Set(search).size).toBe(search.length);
      expect(search.length).toBeGreaterThanOrEqual(3);
      for (const word of search) expect(word.toLowerCase()).not.toBe(name.toLowerCase());
    });
  });

  describe('which others to look at, and they exist', () => {
    eachFunction(({ alike, name }) => {
      expect(alike.length).toBeGreaterThan(0);
      expect(alike).not.toContain(name);
      expect(alike.filter((other) => !byName.has(other))).toEqual([]);
    });
  });

  describe('where it comes from', () => {
    eachFunction(({ sources: citations }) => expect(citations.length).toBeGreaterThan(0));
  });

  describe('its parameters in whole words, each once, and where samples come from', () => {
    eachFunction(({ parameters, result }) => {
      const names = parameters.map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      for (const word of names.flatMap((name) => name.split('_'))) {
        const known = spoken.includes(word) || further.includes(word) || words.has(word);
        expect(known, `"${word}" is a word`).toBe(true);
      }
      for (const { quantity, domain, name } of parameters) {
        const wordy = ['text', 'truth', 'anything', 'dateTime', 'table'].includes(quantity);
        expect(domain !== undefined || wordy, `${name} has a domain`).toBe(true);
        if (domain) for (const end of domain.samples) expect(domain.allows(end)).toBe(true);
      }
      if (typeof result === 'object') expect(names).toContain(result.as);
    });
  });

  describe('what may be left out after what may not', () => {
    eachFunction(({ parameters }) => {
      const optional = parameters.map(
        (one) => one.optional === true || one.default !== undefined || one.fromBook !== undefined,
      );
      expect(optional).toEqual([...optional].sort());
      const repeating = parameters.findIndex(({ repeats }) => repeats);
      expect([-1, parameters.length - 1]).toContain(repeating);
    });
  });
});

describe('examples give their results', () => {
  for (const definition of catalogue) {
    it(`${definition.name} has at least two, none of them rounded past use`, () => {
      expect(definition.examples.length).toBeGreaterThanOrEqual(2);
      for (const { result, within = 0 } of definition.examples) {
        expect(within).toBeLessThanOrEqual(0.05 * Math.max(1, Math.abs(Number(result) || 0)));
      }
    });
    for (const example of definition.examples) {
      it(`${definition.name}: ${example.why}`, () => {
        const result = call(definition, argumentsOf(example), settings);
        if (typeof result === 'number' && typeof example.result === 'number') {
          const allowed = example.within ?? 1e-12 * Math.max(1, Math.abs(example.result));
          expect(Math.abs(result - example.result)).toBeLessThanOrEqual(allowed);
        } else {
          expect(result).toEqual(example.result);
        }
      });
    }
  }
});

describe(`laws hold on ${lawSamples} random samples (SEED=${seed})`, () => {
  for (const definition of catalogue) {
    for (const [law, holds] of Object.entries(definition.laws ?? {})) {
      it(`${definition.name}: ${law}`, () => {
        const next = chance(seed);
        for (let trial = 0; trial < lawSamples; trial += 1) {
          const handed = sampleFor(definition, next);
          expect((holds as (...all: unknown[]) => boolean)(...handed), JSON.stringify(handed)).toBe(
            true,
          );
        }
      });
    }
  }
});

describe(`plain formulas give the same in a spreadsheet without our functions (SEED=${seed})`, () => {
  for (const [family, definitions] of byFamily) {
    describe(family, () => {
      for (const definition of definitions) {
        const { formula, parameters, name } = definition;
        if (typeof formula !== 'string') {
          it(`${name} says why it has none`, () => expect(formula.none).toMatch(/^[A-Z].*\.$/su));
          continue;
        }
        const names = parameters.map((parameter) => parameter.name);
        it(`${name} on its examples`, () => {
          for (const example of definition.examples) {
            const handed = readArguments(definition, argumentsOf(example), settings);
            if (isError(handed)) throw new Error(handed.message);
            const expected = (definition.run as Run)(...handed);
            const result = workOut(formula, names, handed);
            expect(same(result, expected), `${result} for ${expected}: ${example.why}`).toBe(true);
          }
        });
        it(`${name} on random samples`, () => {
          const next = chance(seed);
          let compared = 0;
          for (let trial = 0; trial < formulaSamples; trial += 1) {
            const handed = sampleFor(definition, next);
            const expected = (definition.run as Run)(...handed);
            if (isError(expected)) continue;
            compared += 1;
            const result = workOut(formula, names, handed);
            expect(
              same(result, expected),
              `${result} for ${expected}: ${JSON.stringify(handed)}`,
            ).toBe(true);
          }
          expect(compared).toBeGreaterThan(0);
        });
      }
    });
  }
});
