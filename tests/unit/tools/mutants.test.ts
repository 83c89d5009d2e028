import { expect, test } from 'vitest';
import { folderOf, joined, open, pageOf, sums } from '../../../src/tools/mutation/record.mjs';

const one = (commit: string, mutants: number, survivors: readonly string[] = [], share = 1) => ({
  ...{ commit, seed: 7, share, mutants, killed: mutants - survivors.length, survivors },
});
const earlier = {
  'functions/near.ts': one('aaa', 8),
  'functions/stops/STOPS.ts': one('aaa', 10, ['a → b', 'c | d → e']),
  'functions/stops/WITHOUT.ts': one('aaa', 20, ['f → g'], 0.25),
};
const now = { files: Object.keys(earlier), changed: new Set<string>() };

test('what a later run tried takes the place of what was known, and the rest stays', () => {
  const later = joined(earlier, { 'functions/stops/STOPS.ts': one('bbb', 11) });
  expect(Object.keys(later)).toEqual(Object.keys(earlier));
  expect(later['functions/stops/STOPS.ts']?.commit).toBe('bbb');
  expect(later['functions/stops/WITHOUT.ts']).toBe(earlier['functions/stops/WITHOUT.ts']);
  expect(sums(Object.values(later))).toEqual({ mutants: 39, killed: 38 });
});

test('files in no folder of their own count together', () => {
  expect(folderOf('functions/near.ts')).toBe('functions');
  expect(folderOf('functions/quantities/writing/time.ts')).toBe('quantities');
});

test('the page says of each folder by which runs its figures came, and how much was tried', () => {
  const page = pageOf(earlier, [], now);
  expect(page).toContain('35 of 38 killed: **92.1 %**.');
  expect(page).toContain('| functions | 8 | 8 | 100.0 % | aaa, seed 7, all (1 file) |');
  expect(page).toContain(
    '| stops | 30 | 27 | 90.0 % | aaa, seed 7, all (1 file); aaa, seed 7, 25 % (1 file) |',
  );
});

test('of a folder the sums stand until one of its files is tried anew', () => {
  const folder = { 'functions/stops': one('ccc and ddd', 40, ['STOPS.ts: a → b: c']) };
  const files = ['functions/stops/STOPS.ts', 'functions/stops/WITHOUT.ts'];
  const file = 'functions/stops/STOPS.ts';
  const reasons = [{ file, change: 'a → b: c', reason: 'The same.' }];
  const page = pageOf(folder, reasons, { files, changed: new Set([file]) });
  expect(page).toContain('| stops | 40 | 39 | 97.5 % | ccc and ddd, seed 7, all (the folder) |');
  expect(page).toContain(`| ${file} | ${'`a → b: c`'} | The same. |`);
  expect(page).toContain(`Changed since they were tried: ${file}.`);
  expect(page).not.toContain('Not tried');
  const later = joined(folder, { [file]: one('eee', 10) });
  expect(Object.keys(later)).toEqual([file]);
  expect(Object.keys(joined(folder, { 'functions/near.ts': one('eee', 1) }))).toHaveLength(2);
});

test('the page names what is not as it was when it was tried, and what never was', () => {
  const page = pageOf(earlier, [], {
    files: [...now.files, 'functions/stops/STOPFACTOR.ts'],
    changed: new Set(['functions/near.ts']),
  });
  expect(page).toContain('Changed since they were tried: functions/near.ts.');
  expect(page).toContain('Not tried: functions/stops/STOPFACTOR.ts.');
  expect(pageOf(earlier, [], now)).not.toMatch(/Changed since|Not tried/);
});

test('a survivor stands on the page with its reason, or says that it was not looked at', () => {
  const file = 'functions/stops/STOPS.ts';
  const reasons = [
    { file, change: 'c | d → e', reason: 'The same number.' },
    { file, change: 'gone → away', reason: 'Killed by now.' },
    { file: 'functions/untried.ts', change: 'x → y', reason: 'Not known yet.' },
  ];
  const page = pageOf(earlier, reasons, now);
  expect(page).toContain(String.raw`| ${file} | ${'`c \\| d → e`'} | The same number. |`);
  expect(page).toContain(`| ${file} | ${'`a → b`'} | not looked at yet |`);
  const { unexplained, unneeded } = open(earlier, reasons);
  expect(unexplained.map(({ change }) => change)).toEqual(['a → b', 'f → g']);
  expect(unneeded.map(({ change }) => change)).toEqual(['gone → away']);
});
