import { expect, test } from 'vitest';
import { languageFor } from '../../../src/app/languages.ts';

const known = { de: 'German', pt: 'Portuguese' };

test('the first language asked for that is known is spoken, whatever its country', () => {
  expect(languageFor(['fi', 'pt-BR', 'de'], known)).toEqual({ tag: 'pt', load: 'Portuguese' });
  expect(languageFor(['DE-AT'], known)).toEqual({ tag: 'de', load: 'German' });
});

test('who asks for English first gets it, and so does who asks for nothing known', () => {
  expect(languageFor(['en-GB', 'de'], known)).toBeUndefined();
  expect(languageFor(['fi', 'toString'], known)).toBeUndefined();
  expect(languageFor([], known)).toBeUndefined();
});
