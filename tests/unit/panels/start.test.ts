import { expect, test } from 'vitest';
import type { Shell } from '../../../src/panels/frame.ts';
import { startPage } from '../../../src/panels/start/start.ts';
import type { StartView } from '../../../src/panels/shown.ts';
import type { Workbook } from '../../../src/panels/workbook.ts';
import { words } from '../../../src/words/words.ts';

const sheetSet = { id: 'sun', title: 'Sun', purpose: 'The sun through a day.' };
const kept = { id: 'k', title: 'Harbour Hours, kept', when: 'today', size: '80 kB' };
const empty: StartView = { templates: [sheetSet], sample: true, kept: [], bin: [], busy: false };

/** The words that a template puts in, in the order in which they stand. */
function textsOf(part: unknown): readonly string[] {
  if (typeof part === 'string') return [part];
  if (Array.isArray(part)) return part.flatMap(textsOf);
  if (typeof part === 'object' && part !== null && 'values' in part) return textsOf(part.values);
  return [];
}

function titlesIn(start: StartView): readonly string[] {
  const workbook = { page: { value: 'start' }, start: { value: start } } as unknown as Workbook;
  const titles = [kept.title, 'Harbour Hours', words.start.blank, words.start.open, sheetSet.title];
  return textsOf(startPage(workbook, {} as Shell)).filter((text) => titles.includes(text));
}

test('the sample, a blank book and a file stand before the sheet sets', () => {
  expect(titlesIn(empty)).toEqual(['Harbour Hours', 'Blank book', 'Open a file', 'Sun']);
});

test('books to go on with stand before all that begins', () => {
  expect(titlesIn({ ...empty, kept: [kept] })[0]).toBe('Harbour Hours, kept');
});
