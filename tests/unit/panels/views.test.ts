import { beforeAll, describe, expect, test } from 'vitest';
import { readEntry } from '../../../functions/quantities/index.ts';
import { createBook } from '../../../src/book/book.ts';
import { readAddress } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import { createChecker } from '../../../src/check/checker.ts';
import { judgingPlaces } from '../../../src/check/points.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { entryView, tryOut } from '../../../src/panels/views/entry-view.ts';
import { footFacts } from '../../../src/panels/views/foot-view.ts';
import { headView } from '../../../src/panels/views/head-view.ts';
import type { Look } from '../../../src/panels/views/look.ts';
import { pointsOf } from '../../../src/panels/views/points.ts';
import { slipView } from '../../../src/panels/views/slip-view.ts';
import { at, createSession, over } from '../../../src/session/session.ts';

/** A face and a background, with what a meter said and what was wanted. */
const cells: Readonly<Record<string, string>> = {
  A1: 'Point', B1: 'Reading', C1: 'From key', D1: 'Verdict',
  A2: 'Key side', B2: 'f/2.8', C2: '=FSTOPS(B2,B$2)', D2: '=VERDICT(C2)',
  A3: 'Fill side', B3: 'f/1.4 1/3', C3: '=FSTOPS(B3,B$2)', D3: '=VERDICT(C3+2)',
  A4: 'Canvas', B4: 'f/1.4', C4: '=FSTOPS(B4,B$2)', D4: '=VERDICT(C4+1)',
  A5: 'Bench', C5: '=FSTOPS(B5,B$2)', D5: '=VERDICT(C5)',
  A7: 'Here', B7: '100 lx', A8: 'There', B8: '400 lx',
  A9: 'Lamp', B9: '650 W', A10: 'Lamp', B10: '300 W',
  A11: 'Key colour', B11: '3200 K', A12: 'Fill colour', B12: '3400 K',
}; // prettier-ignore

let look: Look;
let book: Book;
let sheet = '';

function means(): Means {
  let count = 0;
  return {
    newId: () => `n${(count += 1)}`,
    isFunction: () => false,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
  };
}

const spot = (address: string) => ({ sheet, ...(readAddress(address) ?? { row: -1, column: -1 }) });
const block = (from: string, to: string) => over({ from: spot(from), to: spot(to) });
const facts = (from: string, to: string) =>
  Object.fromEntries(
    footFacts(look, sheet, block(from, to)).map(({ label, text }) => [label, text]),
  );

beforeAll(() => {
  const own = means();
  book = createBook(newDocument(own));
  sheet = book.document.sheets[0]?.id ?? '';
  const entries = Object.entries(cells).map(([address, text]) => ({ ...spot(address), text }));
  const entered = enter(book.document, own, entries);
  if (!entered.ok) throw new Error(entered.reason);
  book.run(entered.transaction);
  const engine = connectEngine(book);
  const checker = createChecker(book, engine);
  look = {
    document: book.document,
    engine,
    remarksAt: (place) => checker.at(place).map(({ sentence }) => sentence),
    writing: writingSettings(book.document.settings),
  };
});

describe('what a selection amounts to', () => {
  // Sums by hand: f/2.8, f/1.4 1/3 and f/1.4 are 8, 2.52 and 2 parts of light.
  test('f-numbers are combined and averaged in light, not in numbers', () => {
    const found = facts('B2', 'B4');
    // √12.52 is 3.54, 0.65 stop over f/2.8; √(12.52 / 3) is 2.04, 0.06 over f/2.
    expect(found['combined']).toBe('f/2.8 + 0.6');
    expect(found['average in light']).toBe('f/2 + 0.1');
    expect(found['spread']).toBe('2 stops');
    expect(found['numbers']).toBe('3');
  });

  test('light levels: sum, average, spread in stops, lowest over mean', () => {
    expect(facts('B7', 'B8')).toEqual({
      sum: '500 lx',
      'average in light': '250 lx',
      spread: '2 stops',
      'lowest over mean': '0.4:1',
      numbers: '2',
    });
  });

  test('watts have a sum, and the amps of a load that draws no more than its watts', () => {
    expect(facts('B9', 'B10')['sum']).toBe('950 W');
    // 950 W / 230 V.
    expect(facts('B9', 'B10')['at 230 V, power factor 1 (tungsten only)']).toBe('4.13 A');
  });

  test('colour temperatures have none: lowest and highest', () => {
    expect(facts('B11', 'B12')).toEqual({ lowest: '3200 K', highest: '3400 K', numbers: '2' });
  });

  test('lux among f-numbers add up to nothing', () => {
    expect(facts('B4', 'B7')).toEqual({ numbers: '2, of different kinds' });
  });

  test('one cell says nothing', () => {
    expect(facts('B2', 'B2')).toEqual({});
  });
});

describe('the verdicts of a sheet', () => {
  test('stand in the order of the sheet, with the point, its words and its shape', () => {
    const found = book.document.sheet(sheet);
    if (!found) throw new Error('The sheet is gone.');
    const points = pointsOf(look, judgingPlaces(found));
    expect(points.map(({ label, words, shape }) => [label, words, shape])).toEqual([
      ['Key side', 'agrees', 'agrees'],
      ['Fill side', 'agrees', 'agrees'],
      ['Canvas', '1 stop under', 'under'],
      ['Bench', expect.stringMatching(/^waiting for /), 'waits'],
    ]);
  });

  test('the tolerance in force is the book’s until the sheet has its own', () => {
    expect(headView(book.document, sheet, () => [], true, '')).toMatchObject({
      tolerance: 1 / 3,
      ownTolerance: false,
      isHeld: true,
    });
  });
});

describe('the slip', () => {
  test('explains a number: the formula with this cell’s numbers, where they come from', () => {
    const view = slipView(look, spot('C3'));
    expect(view).toMatchObject({
      address: 'C3',
      role: 'result',
      title: 'Fill side',
      caption: 'From key',
      value: { text: '−1 ⅔', unit: 'stops' },
    });
    expect(view.why?.function).toBe('FSTOPS');
    expect(view.why?.worked.map(({ text }) => text).join('')).toBe(
      '2 × log2(1.587 / 2.828) = −1.667',
    );
    expect(view.comesFrom.links.map(({ label }) => label)).toEqual(['B3 Reading', 'B2 Reading']);
    expect(view.goesTo.links.map(({ label }) => label)).toEqual(['D3 Verdict']);
  });

  test('says what a cell is: words are no result', () => {
    const roles = ['A1', 'C3', 'B5'].map((address) => slipView(look, spot(address)).role);
    expect(roles).toEqual(['words', 'result', 'blank']);
  });

  test('shows the rest of the row under its captions', () => {
    const { row } = slipView(look, spot('B4'));
    expect(row.map(({ label, text, shape }) => [label, text, shape])).toEqual([
      ['From key', '−2 stops', undefined],
      ['Verdict', '1 stop under', 'under'],
    ]);
  });

  test('a result that waits says for what', () => {
    const { value } = slipView(look, spot('C5'));
    expect(value.text).toMatch(/^waiting for /);
    expect(value.tone).toBe('quiet');
  });

  test('a blank cell is a blank', () => {
    expect(slipView(look, spot('F20'))).toMatchObject({ role: 'blank', value: { text: '' } });
  });
});

describe('the entry line', () => {
  test('says what a cell is about by its captions', () => {
    const session = createSession(sheet);
    session.select(at(2, 1));
    expect(entryView(look, session.state)).toMatchObject({
      address: 'B3',
      label: 'Reading, Fill side',
      text: 'f/1.4 1/3',
      typing: false,
    });
  });

  test('works a formula out while it is typed, and does not complain of half of one', () => {
    expect(tryOut(look, sheet, '=INVERSESQUARE(800,2,4)', undefined)).toMatchObject({
      text: '200',
      unit: 'lx',
    });
    expect(tryOut(look, sheet, '=INVERSESQUARE(800,', undefined)).toEqual({ text: '' });
  });

  test('shows a unit in the book’s own', () => {
    expect(tryOut(look, sheet, '10 ft', undefined)).toEqual({ text: '3.048', unit: 'm' });
  });
});
