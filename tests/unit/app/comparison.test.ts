import { expect, test } from 'vitest';
import { changesInShort, compare } from '../../../src/app/comparison.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { stage } from '../book/stage.ts';

const loft = () => stage({ Loft: { A1: 'Key side', B1: '2.0', A2: 'Fill side', B2: '=B1' } });

test('a changed cell is told by its row, its address, what was and what is typed', () => {
  const scene = loft();
  const before = writeBook(scene.document);
  scene.type({ 'Loft!B1': '2.8', 'Loft!B2': '=B1*2', 'Loft!A3': 'Back light' });
  const found = compare(before, writeBook(scene.document));
  expect(found).toMatchObject({
    book: [],
    sheets: [
      {
        title: 'Loft',
        notes: ['1 row added'],
        cells: [
          { what: 'Key side', address: 'B1', before: '2.0', after: '2.8' },
          { what: 'Fill side', address: 'B2', before: '=B1', after: '=B1*2' },
          { address: 'A3', before: '', after: 'Back light' },
        ],
      },
    ],
  });
  expect(changesInShort(before, writeBook(scene.document))).toBe('3 cells in Loft');
});

test('settings, names, titles and sheets are told by what they are called', () => {
  const scene = loft();
  const before = writeBook(scene.document);
  const sheet = scene.sheet('Loft');
  scene.book.run({
    label: 'x',
    steps: [
      { kind: 'setTitle', title: 'Ice house' },
      { kind: 'setSettings', settings: { illuminance: 'fc' } },
      { kind: 'setSheet', sheet, properties: { name: 'Sail loft', frozenRows: 1 } },
    ],
  });
  const after = writeBook(scene.document);
  expect(compare(before, after)).toMatchObject({
    book: [
      { what: 'Title', before: 'Harbour Hours', after: 'Ice house' },
      { what: 'Illuminance in', before: 'lx', after: 'fc' },
    ],
    sheets: [
      {
        title: 'Sail loft',
        notes: ['name: Loft → Sail loft', 'rows kept in view: 0 → 1'],
        cells: [],
      },
    ],
  });
  expect(changesInShort(before, after)).toBe('Sail loft, title, settings');
  expect(changesInShort(after, after)).toBe('Nothing changed');
  expect(changesInShort(undefined, after)).toBe('');
});

test('a file that cannot be read is a sentence and not a comparison', () => {
  expect(compare('{', writeBook(loft().document))).toMatchObject({ reason: expect.any(String) });
});
