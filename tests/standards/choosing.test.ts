import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import { enter } from '../../src/book/make/enter.ts';
import { readAddress } from '../../src/book/look.ts';
import { pick } from '../../src/choose/pick/pick.ts';
import { readPickSheet, writePicked } from '../../src/choose/pick/sheet.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { planMeans, run } from '../../templates/build.ts';
import { expected } from '../../templates/choosing/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

const sheet = openFilled('choosing');

/** The template with some cells typed over, and what choosing makes of it. */
function chosen(typed: Readonly<Record<string, string>> = {}) {
  const text = readFileSync(new URL('../../templates/choosing/book.json', import.meta.url), 'utf8');
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const engine = connectEngine(book);
  const first = book.document.sheets[0]?.id ?? '';
  let minted = 0;
  const means = { ...planMeans(), newId: () => `c${minted++}` };
  const spot = (cell: string) => {
    const at = readAddress(cell);
    if (!at) throw new Error(cell);
    return { sheet: first, ...at };
  };
  for (const [cell, written] of Object.entries(typed)) {
    const made = enter(book.document, means, [{ ...spot(cell), text: written }]);
    if (!made.ok) throw new Error(made.reason);
    run(book, made);
  }
  const found = readPickSheet({ document: book.document, engine, sheet: first });
  const choose = () => {
    if (!found.ok) throw new Error(found.reason);
    const work = pick(found.problem, { each: 60_000, second: 60_000, now: () => 0 });
    let step = work.next();
    while (!step.done) step = work.next();
    run(book, writePicked(book.document, means, first, found, step.value));
  };
  return { found, choose, book, valueOf: (cell: string) => engine.valueOf(spot(cell)) };
}

describe('what could stand where', () => {
  comesToWhatItSays(sheet, expected);
});

describe('choose the fixtures', () => {
  it('takes the cheapest set, says so, and hangs whole fixtures on the circuits', () => {
    const { choose, valueOf } = chosen();
    choose();
    // Key side: one fresnel is 255 lx, 0.41 stop short; two are 108 for it against 138 for a panel.
    // Fill side: bounce at 60 against a panel at 138. Canvas: a fresnel at 54 against two tubes at 120.
    expect(['B11', 'B12', 'B13', 'B14', 'B15', 'B16'].map(valueOf)).toEqual([0, 2, 0, 1, 1, 0]);
    expect(valueOf('B5')).toBe(2 * 54 + 60 + 54);
    expect(valueOf('B4')).toBe('222.00 EUR, surely the cheapest. The next costs 30.00 EUR more.');
    for (const cell of ['L10', 'M10', 'N10'])
      expect(Math.abs(Number(valueOf(cell)))).toBeLessThanOrEqual(1 / 3 + 0.002);
    const hung = [valueOf('C25'), valueOf('C26')].join(', ');
    const frames = [...hung.matchAll(/(\d+) × Fresnel through a frame/g)];
    expect(frames.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(2);
    expect(hung).toContain('1 × Bounce on the fill side');
  });

  it('is one step, which undo takes back', () => {
    const { choose, valueOf, book } = chosen();
    choose();
    book.undo();
    expect(valueOf('B12')).toBeNull();
    expect(valueOf('B4')).toBeNull();
  });

  it.each([
    [{ B25: '1 A', B26: '1 A' }, 'The circuits cannot carry any set that reaches the light.'],
    [
      { F11: '0', F13: '0', F12: '1', F15: '1' },
      /^Not enough: 1 more (Fresnel 650|Soft panel) would do\.$/,
    ],
    [
      { L11: '0', L12: '0', L13: '0', L14: '0' },
      'Nothing here comes within 1/3 stop: Key side gets no light.',
    ],
  ])('%j: says what stands in the way', (typed, says) => {
    const { choose, valueOf } = chosen(typed);
    choose();
    expect(valueOf('B4')).toMatch(says);
    expect(valueOf('B12')).toBeNull();
  });

  it('a power factor that is missing stops it with the words of the cell', () => {
    const { found } = chosen({ I12: '' });
    expect(found).toMatchObject({ ok: false });
    expect(found.ok || found.reason).toMatch(/^J12: waiting for power_factor/);
  });

  it('a sheet of another kind is refused with what it lacks', () => {
    const { found } = chosen({ A7: 'Something else' });
    expect(found.ok || found.reason).toMatch(/no table of options/);
  });
});
