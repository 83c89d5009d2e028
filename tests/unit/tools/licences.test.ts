import { expect, test } from 'vitest';
import { dependencies } from '../../../src/tools/dependencies.mjs';
import { isOpenSource, licenceFaults } from '../../../src/tools/licences.mjs';
import { noticesText } from '../../../src/tools/notices.mjs';

const one = { name: 'x', version: '1.0.0', licence: 'MIT', folder: '', shipped: true };
const pinned = [
  { ...one, name: 'handsontable', version: '6.2.2' },
  { ...one, name: 'hyperformula', version: '3.5.0', licence: 'GPL-3.0-only' },
];

test.each([
  ['MIT', true],
  ['(0BSD OR MIT)', true],
  ['GPL-3.0-only', true],
  ['(Proprietary OR MIT)', true],
  ['MIT AND Proprietary', false],
  ['SEE LICENSE IN LICENSE.txt', false],
  ['UNLICENSED', false],
  ['CC-BY-NC-4.0', false],
  ['', false],
])('"%s" leaves an open source licence: %s', (expression, expected) => {
  expect(isOpenSource(expression)).toBe(expected);
});

test('a package without an open source licence is named', () => {
  expect(licenceFaults([...pinned, { ...one, licence: 'UNLICENSED' }])).toEqual([
    'x 1.0.0: "UNLICENSED" is not on the list.',
  ]);
});

test('a later grid, which is not open source, is refused whatever it says of itself', () => {
  const later = [{ ...one, name: 'handsontable', version: '7.0.0' }, ...pinned.slice(1)];
  expect(licenceFaults(later)).toEqual(['handsontable must be 6.2.2; found "7.0.0".']);
});

test('every package of this project passes, those for building and testing too', () => {
  expect(licenceFaults()).toEqual([]);
  const names = dependencies().map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(['hyperformula', 'vite', 'vitest']));
});

test('a package needed only by one that we ship is shipped, a tool is not', () => {
  const shipped = dependencies().flatMap(({ name, shipped: goesOut }) => (goesOut ? [name] : []));
  // hyperformula parses with chevrotain.
  expect(shipped).toEqual(expect.arrayContaining(['hyperformula', 'chevrotain', 'handsontable']));
  expect(shipped).not.toContain('vite');
  expect(shipped).not.toContain('moment');
});

test('the notices hold the licence text of each shipped package', () => {
  const text = noticesText();
  for (const { name, version, licence, shipped } of dependencies()) {
    if (shipped) expect(text).toContain(`\n${name} ${version} (${licence})\n`);
  }
  expect(text).toContain('Handsoncode'); // The grid's copyright line
  expect(text).toContain('SIL OPEN FONT LICENSE');
  expect(text).toContain('Don Cross'); // The ephemeris has its licence in its code
});
