import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { handoutsOf } from '../../../src/book/exercises.ts';
import { writeForPeople } from '../../../functions/quantities/index.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import { checked } from '../../../src/teach/check.ts';
import { alikeNeighbours, handoutsFor, learnersFrom } from '../../../src/teach/handouts.ts';
import { Undeliverable } from '../../../src/teach/undeliverable.ts';
import { feedbackFor } from '../../../src/teach/feedback.ts';
import {
  csvOf,
  filesTable,
  groupsTable,
  marksTable,
  plainMarks,
  wrongGroups,
} from '../../../src/teach/report.ts';
import { exerciseIds } from '../../../src/teach/set/set.ts';
import { isFunction } from '../../../src/engine/index.ts';
import { readForeign } from '../../../src/files/in/read.ts';
import type { PlainCell, PlainValue } from '../../../src/files/plain/types.ts';
import { xlsxOf } from '../../../src/files/xlsx/write.ts';
import { answered, exactly, file, handedOut, marked, names, type HandedClass } from './class.ts';

const stops = handedOut('stops');
const writing = writingSettings(stops.document.settings);

const returned = (handed: HandedClass, answers: (index: number) => readonly string[]) =>
  handed.files.map((one, index) => file(one.name, answered(handed, one, answers(index))));

describe('a class', () => {
  it.each(exerciseIds)('%s: a perfect one has full marks, a blank one none', (id) => {
    const handed = handedOut(id, names.slice(0, 2));
    const perfect = marked(
      handed,
      returned(handed, (index) => exactly(handed.files[index] ?? never())),
    );
    expect(perfect.learners.map(({ points }) => points)).toEqual([perfect.most, perfect.most]);
    expect(perfect.most).toBeGreaterThan(0);
    const blank = marked(
      handed,
      handed.files.map(({ name, text }) => file(name, text)),
    );
    expect(blank.learners.map(({ points }) => points)).toEqual([0, 0]);
    const states = blank.learners.flatMap(({ questions }) => questions.map(({ state }) => state));
    expect(new Set(states)).toEqual(new Set(['blank']));
  });

  it('has its marks whatever the files are called and in whatever order they come', () => {
    const files = stops.files.map((one, index) =>
      file(one.name, answered(stops, one, index % 2 ? exactly(one) : ['1', 'f/4', '3'])),
    );
    const marks = (list: typeof files) =>
      marked(stops, list).learners.map(({ learner, points, questions }) => [
        learner,
        points,
        questions.map(({ state }) => state),
      ]);
    const usual = marks(files);
    expect(usual.some(([, points]) => points !== 0)).toBe(true);
    for (let turn = 1; turn < files.length; turn += 1) {
      const turned = [...files.slice(turn), ...files.slice(0, turn)];
      expect(marks(turned)).toEqual(usual);
      expect(marks(turned.map(({ bytes }, i) => ({ path: `${9 - i}/x`, bytes })))).toEqual(usual);
    }
    const zip = zipSync(Object.fromEntries(files.map(({ path, bytes }) => [path, bytes])));
    expect(marks([file('all.zip', zip)])).toEqual(usual);
  });
});

function never(): never {
  throw new Error('There is none.');
}

describe('an answer', () => {
  const [first = never()] = stops.files;
  const fill = first.variant.answers[1]?.value ?? 0;
  const said = writeForPeople('fNumber', fill, writing);

  const stateOf = (text: string) => {
    const one = file('a', answered(stops, first, ['', text]));
    return marked(stops, [one]).learners[0]?.questions[1]?.state;
  };

  it.each([
    ['as a mark', said],
    ['as a plain number', fill.toFixed(2)],
    ['as a formula', `=${String(fill)}`],
    ['as a formula that reads the givens', '=FNUMBERAT(B3,B4)'],
    ['with a T', said.replace('f/', 'T')],
  ])('counts %s', (_, text) => {
    expect(stateOf(text)).toBe('right');
  });

  it('counts with tenths behind it, as some meters say it', () => {
    const mark = 2 ** (Math.floor(2 * Math.log2(fill)) / 2);
    const tenths = Math.round(20 * Math.log2(fill / mark)) % 10;
    const whole = writeForPeople('fNumber', mark, writing);
    expect(stateOf(`${whole} and 0.${String(tenths)}`)).toBe('right');
  });

  it('is close within four tolerances, and says how far', () => {
    const near = marked(stops, [
      file('a', answered(stops, first, ['', `=${String(fill * 2 ** 0.2)}`])),
    ]);
    const { questions: [, second] = [] } = near.learners[0] ?? {};
    expect(second).toMatchObject({ state: 'close', points: 1 });
    expect(marksTable(near, writing)[1]).toContain('close: 0.4 stop too high');
  });
});

describe('a hand-out', () => {
  it('checks on the spot by digests alone', () => {
    const [{ text, variant } = never()] = stops.files;
    const read = readBook(text);
    if (!read.ok) throw new Error(read.reason);
    const [handout = never()] = handoutsOf(read.document);
    const [one, , third] = handout.questions;
    const value = variant.answers[0]?.value ?? 0;
    if (!one?.check) throw new Error('No check.');
    expect(checked(one.check, 'stops', value)).toEqual({ state: 'right' });
    expect(checked(one.check, 'stops', value + 1 / 3)).toEqual({ state: 'close', off: 1 / 3 });
    expect(checked(one.check, 'stops', value - 2)).toEqual({ state: 'notYet' });
    expect(third?.check).toBeUndefined();
  });

  it('is the same whenever it is drawn for the same seed and name, and only then', () => {
    const again = handedOut('stops', ['mira  HOLM', 'Someone Else']);
    const values = ({ files }: HandedClass) => files.map(({ variant }) => variant.values);
    expect(values(again)[0]).toEqual(values(stops)[0]);
    expect(values(handedOut('stops', names, '8'))[0]).not.toEqual(values(stops)[0]);
  });

  const few = (values: readonly number[]) => {
    const givens = stops.exercise.givens.map(({ at }, index) => ({
      at,
      draw: { kind: 'list' as const, values: index === 0 ? [...values] : [index === 1 ? 2 : 1] },
    }));
    const exercise = { ...stops.exercise, givens };
    const learners = Array.from({ length: 24 }, (_, index) => `Learner ${String(index + 1)}`);
    const handed = { ...stops, exercise, klass: { ...stops.klass, learners } };
    return { ...handed, files: [...handoutsFor(stops.document, exercise, handed.klass)] };
  };

  it('differs from that of the neighbour in the list, though there are two to draw only', () => {
    const handed = few([4, 8]);
    const keys = handed.files.map(({ variant }) => variant.values[0]);
    for (const [index, key] of keys.entries()) expect(key).not.toBe(keys[index - 1]);
    expect(alikeNeighbours(handed.files)).toEqual([]);
    expect(few([4, 8]).files.map(({ variant }) => variant.values[0])).toEqual(keys);
    const perfect = handed.files.map((one) => file(one.name, answered(handed, one, exactly(one))));
    const { learners, most } = marked(handed, perfect.toReversed());
    expect(learners.every(({ points }) => points === most)).toBe(true);
  });

  it('is that of the neighbour where there is no other to draw, which is told', () => {
    const { files } = few([4]);
    expect(alikeNeighbours(files)).toHaveLength(files.length - 1);
    expect(alikeNeighbours(files)[0]).toEqual({ one: 'Learner 1', other: 'Learner 2' });
  });

  it('is not made for a name that stands in the list twice', () => {
    expect(() => learnersFrom(['Jun Park', 'jun  park'])).toThrow(Undeliverable);
    expect(() => learnersFrom([' '])).toThrow('The list names nobody.');
    expect(learnersFrom([' Jun  Park ', ''])).toEqual(['Jun Park']);
  });
});

describe('every file that comes back', () => {
  const [one = never(), two = never(), three = never()] = stops.files;
  const good = answered(stops, one, exactly(one));
  const worse = answered(stops, one, ['1']);

  it('is accounted for', () => {
    const forged = good.replaceAll('Mira Holm', 'Jun Park');
    const files = [
      file('in/Mira Holm.halfstop', good),
      file('in/Mira Holm (1).halfstop', good),
      file('in/Mira old.halfstop', worse),
      file('in/homework.halfstop', two.text),
      file('in/cut.halfstop', three.text.slice(0, 900)),
      file('in/forged.halfstop', forged),
      file('in/photo.jpg', new Uint8Array([0xff, 0xd8, 0xff, 0xe0])),
      file('in/notes.txt', 'Stops double the light.'),
      file('in/other.halfstop', handedOut('stops', names, '8').files[0]?.text ?? ''),
      file('in/broken.zip', new Uint8Array([0x50, 0x4b, 3, 4, 1, 2, 3])),
    ];
    const result = marked(stops, files);
    const fate = Object.fromEntries(result.files.map(({ path, kind }) => [path, kind]));
    expect(fate).toEqual({
      'in/Mira Holm.halfstop': 'same',
      'in/Mira Holm (1).halfstop': 'counted',
      'in/Mira old.halfstop': 'other',
      'in/homework.halfstop': 'renamed',
      'in/cut.halfstop': 'damaged',
      'in/forged.halfstop': 'altered',
      'in/photo.jpg': 'foreign',
      'in/notes.txt': 'foreign',
      'in/other.halfstop': 'foreign',
      'in/broken.zip': 'damaged',
    });
    expect(result.learners.map(({ points }) => points)).toEqual([result.most, 0, 0, 0, 0]);
    expect(filesTable(result)).toHaveLength(files.length + 1);
    const [, , , jun] = result.learners;
    expect(jun?.path).toBeUndefined();
    expect(marksTable(result, writing)[4]?.at(-1)).toBe('Nothing came back.');
  });

  it('counts as the one with more answers where several are as good', () => {
    const [blank, wrong] = [file('a', one.text), file('b', worse)];
    for (const files of [
      [blank, wrong],
      [wrong, blank],
    ]) {
      const [learner] = marked(stops, files).learners;
      expect([learner?.path, learner?.points]).toEqual(['b', 0]);
    }
  });

  it('is marked with the givens handed out, whatever was done to those in it', () => {
    const read = readBook(one.text);
    if (!read.ok) throw new Error(read.reason);
    const given = one.variant.values[0] ?? 0;
    const changed = answered(stops, one, ['=FSTOPS(B2,B3)']).replace(
      `"number":${String(given)}`,
      '"number":64',
    );
    const [learner] = marked(stops, [file('a', changed)]).learners;
    expect(learner?.questions[0]?.state).toBe('right');
    expect(learner?.notes).toEqual([
      'The givens were changed in the file. It was marked with those handed out.',
    ]);
  });
});

/** The values of cells by row and column; null where there is none. */
function tableOf(cells: readonly PlainCell[]): PlainValue[][] {
  const last = (of: (cell: PlainCell) => number) => Math.max(...cells.map(of));
  const table = Array.from({ length: last(({ row }) => row) + 1 }, () =>
    Array.from({ length: last(({ column }) => column) + 1 }, (): PlainValue => null),
  );
  for (const { row, column, value } of cells) table[row]![column] = value === '' ? null : value;
  return table;
}

describe('the report', () => {
  const files = stops.files.map((one, index) => {
    const wrong = one.variant.answers[0]?.mistakes[0]?.value ?? 0;
    return file(one.name, answered(stops, one, index < 3 ? [`=${String(wrong)}`] : exactly(one)));
  });
  const result = marked(stops, files);

  it('groups the wrong answers with the likely mistake', () => {
    expect(wrongGroups(result)).toMatchObject([
      { question: 0, mistake: 'has the sign the wrong way', learners: names.slice(0, 3) },
    ]);
  });

  it('goes out as CSV, safe to open, and as xlsx', async () => {
    const csv = csvOf(marksTable(result, writing));
    expect(csv.split('\n')[0]).toMatch(/^Learner,Points,Of,1 points,1 answer,1 verdict,/);
    expect(csv).toContain("'=-");
    const told = stops.files.map(({ name, text }) =>
      file(
        name,
        text.replace('"tries":{}', `"tries":{"${stops.exercise.questions[0]?.id ?? ''}":3}`),
      ),
    );
    expect(marksTable(marked(stops, told), writing)[1]?.slice(5, 7)).toEqual(['blank', 3]);
    const xlsx = await xlsxOf(plainMarks('Marks', result, writing));
    const read = readForeign(xlsx, 'Marks.xlsx', { isFunction });
    if (!read.ok) throw new Error(read.reason);
    const tables = read.imported.book.sheets.map(({ name, cells }) => [name, tableOf(cells)]);
    const filled = (rows: readonly (readonly (string | number)[])[]) =>
      rows.map((row) => row.map((cell) => (cell === '' ? null : cell)));
    expect(tables).toEqual([
      ['Marks', filled(marksTable(result, writing))],
      ['Wrong answers', filled(groupsTable(result))],
      ['Files', filled(filesTable(result))],
    ]);
  });

  it('tells each learner what was right, what went wrong and how it is done', () => {
    const [learner = never()] = result.learners;
    const [first = never(), second = never()] = feedbackFor(stops.exercise, learner, writing);
    expect(first.verdict).toBe('not yet: has the sign the wrong way');
    expect(first.points).toBe('0 of 2 points');
    expect(first.solution).toContain(first.expected);
    expect(second.verdict).toBe('blank');
  });
});
