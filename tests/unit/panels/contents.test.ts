import { describe, expect, test } from 'vitest';
import { letGo, neighbour } from '../../../src/panels/contents/order.ts';
import { countOf } from '../../../src/panels/views/points.ts';
import type { Point, Shape, SheetEntry } from '../../../src/panels/shown.ts';

const sheet = (id: string, phase: SheetEntry['phase']): SheetEntry => ({
  id,
  phase,
  title: id,
  shown: false,
});
const point = (shape: Shape): Point => ({
  shape,
  label: '',
  words: '',
  target: { sheet: '', from: { row: 0, column: 0 } },
});

describe('a sheet moves among those of its phase, as the contents show them', () => {
  const sheets = [sheet('loft', 'plan'), sheet('walk', 'meter'), sheet('shed', 'plan')];

  test('down goes past sheets of other phases', () => {
    expect(neighbour(sheets, 'loft', 1)).toBe(2);
    expect(neighbour(sheets, 'shed', -1)).toBe(0);
  });

  test('the ends of a phase are ends', () => {
    expect(neighbour(sheets, 'loft', -1)).toBeUndefined();
    expect(neighbour(sheets, 'shed', 1)).toBeUndefined();
    expect(neighbour(sheets, 'walk', 1)).toBeUndefined();
  });
});

describe('a sheet that is let go between others', () => {
  const sheets = [
    sheet('loft', 'plan'),
    sheet('walk', 'meter'),
    sheet('shed', 'plan'),
    sheet('ice', 'meter'),
  ];

  test('stands before or after what it was let go beside', () => {
    expect(letGo(sheets, 'shed', { beside: 'loft', after: false })).toEqual({
      to: 0,
      phase: 'plan',
    });
    expect(letGo(sheets, 'loft', { beside: 'shed', after: true })).toEqual({
      to: 2,
      phase: 'plan',
    });
  });

  test('becomes one of the phase it was let go in', () => {
    expect(letGo(sheets, 'loft', { beside: 'walk', after: false })).toEqual({
      to: 0,
      phase: 'meter',
    });
    expect(letGo(sheets, 'walk', { beside: 'shed', after: true })).toEqual({
      to: 2,
      phase: 'plan',
    });
  });

  test.each([
    ['loft', 'loft', true],
    ['loft', 'shed', false],
    ['shed', 'loft', true],
    ['walk', 'ice', false],
  ])('%s beside %s stays where it is', (id, beside, after) => {
    expect(letGo(sheets, id, { beside, after })).toBeUndefined();
  });
});

describe('the count beside a sheet', () => {
  test.each<[string | undefined, Shape[]]>([
    [undefined, []],
    [undefined, ['agrees', 'agrees']],
    ['3 off', ['agrees', 'over', 'under', 'clips', 'waits']],
    ['1 waits', ['agrees', 'waits']],
    ['2 wait', ['waits', 'waits']],
  ])('%s', (count, shapes) => {
    expect(countOf(shapes.map(point))).toBe(count);
  });
});
