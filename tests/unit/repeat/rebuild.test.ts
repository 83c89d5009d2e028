import { describe, expect, it } from 'vitest';
import { isError } from '../../../functions/values.ts';
import { addSheet } from '../../../src/book/make/sheets.ts';
import { readRebuild } from '../../../src/repeat/sheet/readRebuild.ts';
import { setOut } from '../../../src/repeat/sheet/setOut.ts';
import { words } from '../../../src/words/words.ts';
import { run } from '../../../templates/build.ts';
import { columns } from '../../../src/repeat/sheet/columns.ts';
import { harbour, walk } from './place.ts';

// The walks and the rig are in tests/support/walks. Loft: ISO 800 at 1/50 s, key f/2.8 at a taking
// stop of f/2.8. Shed: ISO 1250 at 1/50 s, taking stop f/2.8. Constants 340 (dome) and 250 (flat),
// as ISO 2720 recommends; E = C · N² / (S · t). Marks are exact: f/3.2 is 2^(5/3), f/1.8 2^(5/6).
const place = harbour();
place.takeRig(walk('rig'));
const sheet = place.rebuild(place.record('Sail loft'));
place.takeWalk(sheet, walk('shed'));
const at = (column: Parameters<typeof columns.letterOf>[0], row: number) =>
  place.valueOf(sheet, `${columns.letterOf(column)}${row}`);
const [key, fill, back, left, right, bench] = [12, 13, 14, 15, 16, 17];

describe('the loft rebuilt in the shed', () => {
  it('the camera of today was taken in with the walk', () => {
    expect(place.valueOf(sheet, 'B2')).toBe(1250);
    expect(at('should', key)).toBeCloseTo(2 ** 1.5, 9);
  });

  it.each([
    ['the key: 2 · (5/3 − 3/2) = 1/3', key, 2 ** (3 / 2), '1/3 stop over'],
    [
      'the fill: then −5/3 from the key, so 2^(2/3); 2 · (1 − 2/3) = 2/3',
      fill,
      2 ** (2 / 3),
      '2/3 stop over',
    ],
    [
      'the back light: then f/4; f/3.6 is f/2.8 and 0.7 on a meter in tenths',
      back,
      4,
      '0.3 stop under',
    ],
    ['canvas left: then f/1.4; 2 · (5/6 − 1/2) = 2/3', left, Math.SQRT2, '2/3 stop over'],
    ['canvas right: then f/1.4 and 0.4; now f/1.4', right, 2 ** (0.5 + 0.2), '0.4 stop under'],
  ])('%s', (_, row, should, verdict) => {
    expect(at('should', row)).toBeCloseTo(should, 6);
    expect(at('verdict', row)).toBe(verdict);
  });

  it('what was not metered waits', () => {
    const verdict = at('verdict', bench);
    expect(isError(verdict) && verdict.waiting).toBe(true);
  });

  it('the ratio is apart from the level: the fill sits −4/3 from the key, and sat −5/3', () => {
    expect(at('fromKey', fill)).toBeCloseTo(-4 / 3, 9);
    expect(at('ratio', fill)).toBe('1/3 stop over');
  });

  it('the key goes down by its own share alone', () => {
    // Here 340 · 2^(10/3) / 25 = 137.08 lx, wanted 340 · 8 / 25 = 108.8; alone 104 − 4 = 100 lx.
    // 1 + (108.8 − 137.0798) / 100 = 0.7172; 3.2 m / √0.7172 = 3.7786 m.
    expect(at('light', key)).toBeCloseTo(0.717202, 5);
    expect(at('newDistance', key)).toBeCloseTo(3.7786, 3);
    expect(at('newOutput', key)).toBeCloseTo(0.7172, 3);
    // 340 · 4 / 25 = 54.4, wanted 340 · 2^(4/3) / 25 = 34.26985, own 41.5 − 4 = 37.5: × 0.4632.
    expect(at('light', fill)).toBeCloseTo(0.463196, 5);
  });

  it('the colour is held against the camera’s white of today', () => {
    // Then 3390 K under 3200 K: 294.985 − 312.5 = −17.515 mired; today 1e6 / 5600 = 178.571 less
    // that is 161.056 mired, 6209 K. Read 5230 K, 191.205 mired: 30.1 warmer.
    const row = 26;
    expect(place.valueOf(sheet, `A${row}`)).toBe('Fill colour');
    expect(at('should', row)).toBeCloseTo(1e6 / (1e6 / 5600 + 1e6 / 3390 - 1e6 / 3200), 6);
    expect(at('ratio', row)).toBe('30 mired warmer');
  });

  it('says what to set, the key first, and what the canvas lamp cannot do', () => {
    const made = setOut(place.look, place.means, place.idOf(sheet));
    run(place.book, made);
    // 0.48 stop: a single (1/2) leaves log2((37.08 + 100 / √2) / 108.8) = −0.01.
    expect(at('set', key)).toBe(
      'Down with the key by 0.5 stop: output from 100 % to 71.7 %; or back from 3.2 m to 3.78 m; or single in.',
    );
    // Left 2/3 over and right 0.4 under on one lamp: (2/3 + 0.4) / 2 = 0.53 is left either way.
    expect(at('set', left)).toMatch(/^Down with the canvas by 0.1 stop: .* at best 0.5 stop/);
    expect(at('set', right)).toBe(words.repeat.withLamp('canvas'));
    expect('says' in made && made.says).toBe(
      words.repeat.cannot('Canvas left 0.5 stop over, Canvas right 0.5 stop under'),
    );
    place.book.undo();
    expect(at('set', key)).toBeNull();
  });
});

describe('a lamp that was not metered alone', () => {
  it('is corrected by its share on a set plan of the book; a metered one by its own reading', () => {
    const planned = harbour();
    planned.takeRig(walk('rig'));
    const again = planned.rebuild(planned.record('Sail loft'));
    planned.takeWalk(again, walk('shed'));
    run(
      planned.book,
      addSheet(planned.document, planned.means, { name: 'Set plan', phase: 'rig' }),
    );
    const cells = [
      ['A1', 'Point'],
      ['B1', 'Canvas'],
      ['C1', 'ambient'],
      ['A2', 'Canvas left'],
      ['B2', '60 %'],
      ['C2', '40 %'],
      ['A3', 'Key side of face'],
      ['B3', '10 %'],
      ['C3', '90 %'],
    ] as const;
    for (const [cell, text] of cells) planned.type('Set plan', cell, text);
    const read = readRebuild(planned.look, planned.idOf(again));
    if (!read.ok) throw new Error(read.reason);
    const point = (name: string) => read.set.points.find((one) => one.name === name);
    // Flat, f/1.8 is 2^(5/6): E = 250 · 2^(5/3) / 25 = 31.75 lx, of which 60 % are 19.05.
    const canvas = point('Canvas left');
    expect(canvas?.gives[canvas.light]).toBeCloseTo(6 * 2 ** (5 / 3), 6);
    expect(canvas?.rest).toBeCloseTo(4 * 2 ** (5 / 3), 6);
    const face = point('Key side of face');
    expect(face?.gives[face.light]).toBeCloseTo(100, 9);
  });
});

describe('the loft rebuilt in the loft', () => {
  it('agrees everywhere and asks for nothing', () => {
    const same = harbour();
    const again = same.rebuild(same.record('Sail loft'));
    same.takeWalk(again, walk('loft'));
    for (const row of [key, fill, back, left, right, bench])
      expect(same.valueOf(again, `${columns.letterOf('verdict')}${row}`)).toBe('agrees');
    const made = setOut(same.look, same.means, same.idOf(again));
    expect('says' in made && made.says).toBe(words.repeat.nothingToDo('1/4 stop'));
  });

  it('a uniform change of speed changes no ratio', () => {
    const same = harbour();
    const again = same.rebuild(same.record('Sail loft'));
    // In lux, so that the camera has its say: 170, 53.5, 250, 62.5, 82.5 and 85 lx.
    for (const [index, lux] of [170, 53.5, 250, 62.5, 82.5, 85].entries())
      same.type(again, `${columns.letterOf('reading')}${key + index}`, `${lux} lx`);
    const ratios = () =>
      [fill, back, left, right, bench].map((row) =>
        Number(same.valueOf(again, `${columns.letterOf('fromKey')}${row}`)),
      );
    const before = ratios();
    for (const speed of ['100', '3200']) {
      same.type(again, 'B2', speed);
      for (const [index, ratio] of ratios().entries())
        expect(ratio).toBeCloseTo(before[index] ?? NaN, 9);
    }
  });

  it('a sheet that is no rebuild, or has no reading yet, says so', () => {
    const same = harbour();
    expect(setOut(same.look, same.means, same.idOf('Sail loft'))).toMatchObject({
      reason: words.repeat.noRebuild,
    });
    const again = same.rebuild(same.record('Sail loft'));
    expect(setOut(same.look, same.means, same.idOf(again))).toMatchObject({
      reason: words.repeat.notMetered,
    });
  });
});
