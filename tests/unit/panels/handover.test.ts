import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { readEntry } from '../../../functions/quantities/index.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { readAddress } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { describeCells, setTarget } from '../../../src/book/make/properties.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { cellsOf, tablesWith } from '../../../src/panels/handover/cells.ts';
import { handOverOf, sheetsToHandOver } from '../../../src/panels/handover/gather.ts';
import type { HandOver } from '../../../src/panels/handover/handover.ts';
import { missingOf } from '../../../src/panels/handover/missing.ts';
import type { Look } from '../../../src/panels/views/look.ts';

const path = new URL('../../../templates/harbour-hours/book.json', import.meta.url);
const file = readFileSync(path, 'utf8');

let book: Book;
let count = 0;
const means: Means = {
  newId: () => `n${(count += 1)}`,
  isFunction: () => false,
  readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
};

const loft = () => book.document.sheets[0]?.id ?? '';
const spot = (address: string) => readAddress(address) ?? { row: -1, column: -1 };
function make(made: Made | ReturnType<typeof enter>): void {
  if (!made.ok) throw new Error(made.reason);
  book.run(made.transaction);
}
const type = (address: string, text: string) =>
  make(enter(book.document, means, [{ sheet: loft(), ...spot(address), text }]));

let engine: Look['engine'];
const look = (): Look => ({
  document: book.document,
  engine,
  writing: writingSettings(book.document.settings),
  remarksAt: () => [],
});
const told = (): HandOver => {
  const found = handOverOf(look(), loft());
  if (!found) throw new Error('The sheet is gone.');
  return found;
};
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');
const point = (label: string) => told().points.find((one) => one.label === label);
const light = (label: string) => {
  const { captions, rows } = told().rig;
  const row = rows.find(([first]) => first === label) ?? [];
  return Object.fromEntries(captions.map((caption, column) => [caption, plain(row[column])]));
};

beforeEach(() => {
  const read = readBook(file);
  if (!read.ok) throw new Error(read.reason);
  book = createBook(read.document);
  engine = connectEngine(book);
});

describe('the hand-over of the sail loft', () => {
  test('names the book, the place and what it is for', () => {
    const { book: title, place, purpose } = told();
    expect(title).toBe('Harbour Hours');
    expect(place).toBe('Sail loft');
    expect(purpose).toMatch(/^How far each reading is/);
  });

  test('has the camera as set, and the ratios from where the first one stands', () => {
    const { camera, ratios } = told();
    const pairs = [...camera, ...ratios].map(({ label, text }) => [label, plain(text)]);
    const said = Object.fromEntries(pairs) as Record<string, string>;
    // As templates/harbour-hours/expected.ts works them out by hand.
    expect(said).toMatchObject({
      Speed: 'ISO 800',
      'Exposure time': '1/50 s',
      'Taking stop': 'f/2.8',
      White: '3200 K',
    });
    expect(ratios[0]?.label).toBe('Contrast by sides');
    expect(camera.map(({ quantity }) => quantity)).not.toContain('ratio');
  });

  test('has each point with what was wanted, what was read and how far off it is', () => {
    expect(told().points.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['Key side of face', 'Fill side of face', 'Window gap']),
    );
    const fill = point('Fill side of face');
    expect(fill).toMatchObject({
      meter: 'dome',
      verdicts: [{ words: '1/3 stop over', shape: 'over' }],
    });
    expect(plain(fill?.wanted)).toBe('−2 stops, f/1.4');
    expect(fill?.reading).toBe('f/1.4 1/3');
  });

  test('says what a reading is to come to where it has a target, and what was noted', () => {
    const { row, column } = spot('C13');
    const region = { sheet: loft(), top: row, left: column, height: 1, width: 1 };
    make(setTarget(book.document, means, { sheet: loft(), row, column }, 'f/2'));
    make(describeCells(book.document, means, [region], { note: 'half a scrim in' }));
    const fill = point('Fill side of face');
    expect(plain(fill?.wanted)).toBe('−2 stops, f/2');
    expect(fill?.note).toContain('half a scrim in');
  });

  test('writes a distance typed in feet as the book measures: to the millimetre or in feet', () => {
    type('N13', `11'6"`);
    expect(light('Fill side of face')['Stands at']).toBe('3.505 m');
    book.run({ label: 'Feet', steps: [{ kind: 'setSettings', settings: { length: 'ft' } }] });
    expect(light('Fill side of face')['Stands at']).toBe(`11'6"`);
  });

  test('has the cautions of the sheet itself', () => {
    expect(told().cautions[0]).toMatch(/^Lamps, clamps and scrims get hot/);
  });

  test('has the readings of colour with where they lie from white', () => {
    const { captions, rows } = told().colour;
    expect(captions.slice(0, 2)).toEqual(['Source', 'Reading']);
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.map(([, reading]) => plain(reading))).toContain('3390 K');
  });

  test('has the lights of the set plan once each, with where they stand and what is before them', () => {
    const { captions, rows } = told().set;
    const row = (label: string) => {
      const found = rows.find(([first]) => first === label) ?? [];
      return Object.fromEntries(captions.map((caption, column) => [caption, plain(found[column])]));
    };
    expect(rows.map(([label]) => label)).toEqual([
      ...['Key', 'Fill', 'Back', 'Canvas left', 'Canvas right', 'Bench'],
    ]);
    expect(row('Key')).toMatchObject({
      Fixture: 'Fresnel 650 at flood',
      'Stands at': 'x −2.85 m, y −1.04 m, z 2.22 m',
      'Aimed at': 'x 0 m, y 0 m, z 1.2 m',
      'Frame or board': '1.2 m × 1.2 m, 1 m before the lamp, loses 1/4 stop',
      Circuit: 'red',
      Channel: '1',
    });
    expect(row('Back')).toMatchObject({ Output: '80 %', Diffusion: '2 stops', Gel: '2/3 stop' });
    expect(told().missing.join()).not.toContain('fixtures');
  });

  test('a rig that names another place of the book is not listed', () => {
    const shed = handOverOf(look(), book.document.sheets[1]?.id ?? '');
    expect(shed?.set.rows).toEqual([]);
    expect(shed?.missing).toContain('fixtures and diffusion of the lights');
  });

  test('a rig sheet is handed over with its own lights', () => {
    const rig = handOverOf(look(), book.document.sheetNamed('Set plan')?.id ?? '');
    expect(rig?.set.rows).toHaveLength(6);
    expect(rig?.camera).toEqual([]);
    expect(rig?.missing).toEqual([]);
  });

  test('Match is handed over with its order of work and each source’s own words', () => {
    const match = handOverOf(look(), book.document.sheetNamed('Match')?.id ?? '');
    const order = match?.camera.find(({ label }) => label === 'Order of work');
    expect(order?.text).toMatch(/^Leave Key, Oil lamp\./);
    expect(match?.points.map((one) => [one.label, plain(one.reading)])).toEqual([
      ['Window', '6900 K'],
      ['Key', '3230 K'],
      ['Fill', '3390 K'],
      ['Bench tube', ''],
    ]);
    expect(match?.colour.rows[0]?.[4]).toMatch(/168 mired too blue; full orange/);
    expect(match?.rig.rows).toEqual([]);
    expect(match?.missing).toEqual([]);
  });

  test('asks for what is not there: a reading that waits by the name of its point', () => {
    expect(told().missing.join()).not.toContain('Canvas left');
    type('C15', '');
    expect(told().missing).toContainEqual(expect.stringMatching(/^readings: .*Canvas left/));
    expect(point('Canvas left')?.reading).toBe('');
  });

  test('of a sheet that is gone is nothing', () => {
    expect(handOverOf(look(), 'gone')).toBeUndefined();
  });
});

test('only sheets with points or compared options can be handed over, in the order of the contents', () => {
  expect(sheetsToHandOver(look()).map(({ title }) => title)).toEqual(
    book.document.sheets
      .map(({ properties }) => properties.title)
      .filter((title) =>
        ['Sail loft', 'Boat shed', 'Reflected survey', 'Match', 'Compare'].includes(title),
      ),
  );
});

test('a set-up with nothing in it lacks everything a crew asks for', () => {
  const listed = { captions: [], rows: [] };
  const lost = missingOf({
    book: '', place: '', purpose: '', camera: [], ratios: [], points: [],
    rig: listed, set: listed, colour: listed, cautions: [],
  }); // prettier-ignore
  expect(lost).toEqual([
    'the speed of the camera',
    'the exposure time',
    'the taking stop',
    'the white the camera is set to',
    'ratios',
    'where the lights stand and how far they are up',
    'fixtures and diffusion of the lights',
    'readings of colour',
  ]);
});

test('a table is a row of captions and the rows below it down to one without words', () => {
  const cells = cellsOf(look(), loft());
  const [first] = tablesWith(cells, ['reading']);
  expect(first?.head).toBe(10);
  expect(first?.columns.get('verdict')).toBe(5);
  expect(first?.rows[0]).toBe(11);
  expect(cells.label(first?.rows.at(-1) ?? -1, 0)).not.toBe('');
  expect(cells.label((first?.rows.at(-1) ?? -2) + 1, 0)).toBe('');
  expect(tablesWith(cells, ['no such caption'])).toEqual([]);
});
