import { describe, expect, it } from 'vitest';
import { catalogue } from '../../functions/index.ts';
import { measure, referencesOf } from '../accuracy/measure.ts';
import { words } from '../accuracy/table.ts';
import { chance, seed } from '../unit/functions/support/chance.ts';

const samples = 40;

describe(`worst error on random samples; npm run accuracy tries more (SEED=${seed})`, () => {
  it('every function is held against another way to its result, or gives words', () => {
    const unheld = catalogue.filter((definition) => referencesOf(definition).length === 0);
    expect(unheld.map(({ name }) => name).sort()).toEqual(Object.keys(words).sort());
  });

  for (const definition of catalogue) {
    for (const reference of referencesOf(definition)) {
      const { against, limit, unit = '' } = reference;
      it(`${definition.name}: at most ${limit} ${unit} against ${against}`, () => {
        const { worst, at } = measure(definition, reference, samples, chance(seed));
        expect(worst, JSON.stringify(at)).toBeLessThanOrEqual(limit);
      });
    }
  }
});
