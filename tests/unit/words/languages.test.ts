import { expect, test } from 'vitest';
import { languageFor } from '../../../src/words/languages.ts';

const known = { de: 'German', pt: 'Portuguese' };

test('the first language asked for that is known is spoken, whatever its country', () => {
  expect(languageFor(['fi', 'pt-BR', 'de'], known)).toEqual({ tag: 'pt', load: 'Portuguese' });
  expect(languageFor(['DE-AT'], known)).toEqual({ tag: 'de', load: 'German' });
  // As POSIX writes it in LANG.
  expect(languageFor(['pt_BR.UTF-8'], known)).toEqual({ tag: 'pt', load: 'Portuguese' });
});

test('who asks for English first gets it, and so does who asks for nothing known', () => {
  expect(languageFor(['en-GB', 'de'], known)).toBeUndefined();
  expect(languageFor(['fi', 'toString', 'C'], known)).toBeUndefined();
  expect(languageFor([], known)).toBeUndefined();
});
