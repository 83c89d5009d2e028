import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writingSettings } from '../../../src/book/settings.ts';
import { typedText, cellAtSpot } from '../../../src/book/look.ts';
import type { Book, Means } from '../../../src/book/types.ts';
import type { AnyCommand, Outcome } from '../../../src/commands/command.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import type { Engine } from '../../../src/engine/types.ts';
import type { Look } from '../../../src/panels/views/look.ts';
import { createSession } from '../../../src/session/session.ts';
import { walkCommands } from '../../../src/walk/commands.ts';
import { meterOf, noteOn } from '../../../src/walk/entries.ts';
import { passesOf, type WalkReading } from '../../../src/walk/order.ts';
import { standingOf, verdictOn } from '../../../src/walk/standing.ts';
import { buildBook, planMeans } from '../../../templates/build.ts';
import { pointsSheet } from '../../../templates/key-fill-background/plan.ts';

let book: Book;
let means: Means;
let engine: Engine;
let look: Look;

beforeEach(() => {
  means = planMeans();
  const planned = pointsSheet({
    name: 'Ice house',
    purpose: '',
    points: [
      { point: 'Key side of face', meter: 'dome' },
      { point: 'Fill side of face', wanted: '-2', meter: 'dome', lamp: ['2 m', '1 m', '50 %'] },
      { point: 'Rope bench', wanted: '-1', meter: 'flat' },
    ],
    spots: [{ point: 'Window gap' }],
    colours: ['Key colour'],
  });
  book = buildBook({ title: 'Walk', sheets: [planned] }, means);
  engine = connectEngine(book);
  const { document } = book;
  look = { document, engine, writing: writingSettings(document.settings), remarksAt: () => [] };
  expect(act('walk.fill', 'Key side of face', { text: 'f/2.8' }).ok).toBe(true);
});

afterEach(() => engine.dispose());

const sheet = () => book.document.sheets[0]?.id ?? '';

function reading(label: string, caption = 'Reading'): WalkReading {
  const all = passesOf(book.document, sheet()).flatMap(({ readings }) => readings);
  const found = all.find((one) => one.label === label && one.caption === caption);
  if (!found) throw new Error(`${label} has no ${caption}.`);
  return found;
}

function act(id: string, label: string, args: object): Outcome {
  const command = walkCommands.find((one: AnyCommand) => one.id === id);
  const context = { book, engine, means, session: createSession(sheet()) };
  const { spot } = reading(label);
  return command?.run(context, { spot, ...args } as never) as Outcome;
}

describe('how a reading stands', () => {
  it('names what is wanted before there is a reading', () => {
    const { wanted, value } = standingOf(look, reading('Fill side of face'));
    expect(wanted).toEqual(['f/1.4', '−2 stops from key']);
    expect(value.text).toBe('');
  });

  it('says how far off it is and what closes the gap', () => {
    act('walk.fill', 'Fill side of face', { text: 'f/1.4 1/3' });
    act('walk.fill', 'Fill side of face', { text: 'f/2' });
    const { verdict, off, closes } = standingOf(look, reading('Fill side of face'));
    expect(verdict).toEqual({ words: '1 stop over', shape: 'over' });
    expect(off).toBeCloseTo(1, 12);
    // Half the light: 2 m · √2 = 2.83 m, 50 % / 2.
    expect(closes.replaceAll('\u00a0', ' ')).toBe(
      'Down 1 stop: × 0.5 its light, or 2 m → 2.83 m, or 50 % → 25 %.',
    );
  });

  it('asks nothing of a reading that agrees', () => {
    act('walk.fill', 'Fill side of face', { text: 'f/1.4' });
    const { verdict, closes } = standingOf(look, reading('Fill side of face'));
    expect(verdict).toEqual({ words: 'agrees', shape: 'agrees' });
    expect(closes).toBe('');
  });

  it('names the wanted light where the meter says lux', () => {
    act('walk.fill', 'Rope bench', { text: '85 lx' });
    // Flat C = 250: f/2.8 is 125 lx at ISO 800 and 1/50 s, one stop less 62.5 lx.
    expect(standingOf(look, reading('Rope bench')).wanted[0]).toBe('62.5 lx');
  });

  it('says whether the camera holds a spot reading', () => {
    act('walk.fill', 'Window gap', { text: '1200 cd/m2' });
    expect(verdictOn(look, reading('Window gap'))).toEqual({
      words: 'clips by 1.1 stops',
      shape: 'clips',
    });
  });

  it.each([
    // 10⁶ / 3000 − 10⁶ / 3200 = 20.8 mired.
    ['3000 K', 'Duv +0.0068', '21 mired too warm, green by 0.007', 'over'],
    ['6900 K', 'Duv +0.0030', '168 mired too blue, green by 0.003', 'under'],
    ['3200 K', 'Duv -0.0040', 'as the camera’s white, magenta by 0.004', 'under'],
    ['3200 K', 'Duv +0.0040', 'as the camera’s white, green by 0.004', 'over'],
    ['3200 K', 'Duv +0.0004', 'as the camera’s white', 'agrees'],
  ])('%s with a tint of %s is %s', (kelvin, tint, words, shape) => {
    act('walk.fill', 'Key colour', { text: kelvin });
    act('walk.fill', 'Key colour', { text: tint, spot: reading('Key colour', 'Tint').spot });
    expect(verdictOn(look, reading('Key colour'))).toEqual({ words, shape });
  });

  it('says the side that a colour is off to, and leaves the tint beside it alone', () => {
    act('walk.fill', 'Key colour', { text: '3000 K' });
    expect(verdictOn(look, reading('Key colour'))?.shape).toBe('over');
    expect(verdictOn(look, reading('Key colour', 'Tint'))).toBeUndefined();
  });
});

describe('what Walk changes', () => {
  const last = () => book.history.done.at(-1)?.label;
  const typed = (label: string) => typedText(book.document, reading(label).place);

  it('is undone by the name of the point', () => {
    act('walk.fill', 'Fill side of face', { text: 'f/2' });
    expect(last()).toBe('Walk: Fill side of face');
    book.undo();
    expect(typed('Fill side of face')).toBe('');
  });

  it('refuses what no meter says, and keeps what was there', () => {
    act('walk.fill', 'Fill side of face', { text: 'f/2' });
    const outcome = act('walk.fill', 'Fill side of face', { text: '3 m' });
    expect(outcome).toMatchObject({ ok: false, reason: expect.stringContaining('3 m') });
    expect(typed('Fill side of face')).toBe('f/2');
  });

  it('writes a note into the row, as words whatever it begins with', () => {
    act('walk.note', 'Rope bench', { text: '=low, by the door' });
    expect(noteOn(book.document, reading('Rope bench').spot)).toBe('=low, by the door');
    expect(last()).toBe('Walk: note on Rope bench');
  });

  it('takes the reading of a point that cannot be read, and says so in its note, as one gesture', () => {
    act('walk.fill', 'Rope bench', { text: '85 lx' });
    act('walk.note', 'Rope bench', { text: 'by the door' });
    const before = book.history.done.length;
    act('walk.notReadable', 'Rope bench', {});
    expect(typed('Rope bench')).toBe('');
    expect(noteOn(book.document, reading('Rope bench').spot)).toBe('by the door, not readable');
    expect(book.history.done).toHaveLength(before + 1);
    act('walk.notReadable', 'Rope bench', {});
    expect(noteOn(book.document, reading('Rope bench').spot)).toBe('by the door, not readable');
  });

  it('turns dome to flat in the row, and the reading is counted anew', () => {
    const { spot } = reading('Key side of face');
    act('walk.meter', 'Key side of face', { receptor: 'flat', isFirstRound: true });
    expect(meterOf(book.document, spot, true)).toMatchObject({ says: 'flat', chosen: true });
    expect(last()).toBe('Walk: flat at Key side of face');
  });

  it('adds a point to the table of the one at hand', () => {
    act('walk.addNamed', 'Window gap', { name: 'Lantern' });
    const added = reading('Lantern');
    expect(added.spot.row).toBe(reading('Window gap').spot.row + 1);
    expect(cellAtSpot(book.document, added.spot)?.quantity).toBe('luminance');
  });
});
