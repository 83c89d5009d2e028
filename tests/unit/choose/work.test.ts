import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import { placeSheet } from '../../../src/book/make/sheets.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { isLive, renewed, sweepOn } from '../../../src/choose/again.ts';
import { solvePlan, sweepPlan, sweptCells, type WrittenSweep } from '../../../src/choose/plans.ts';
import { sweepFigures } from '../../../src/choose/sweep-figures.ts';
import { sweepSheet } from '../../../src/choose/sweep-sheet.ts';
import { figuresOn } from '../../../src/book/figures.ts';
import { roundedFor, typedFor } from '../../../src/choose/written.ts';
import { work, type Done, type Task } from '../../../src/choose/work.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { buildBook, planMeans, run } from '../../../templates/build.ts';

/** 800 lx at 2 m, moved; seen through so many stops; f at ISO 800 and 1/50 s. */
function lamp() {
  const book = buildBook({
    title: 'Lamp',
    sheets: [
      {
        name: 'Sail loft',
        title: 'Sail loft',
        purpose: '',
        phase: 'plan',
        template: '',
        widths: [],
        cells: {
          A1: { typed: 'Distance' },
          B1: { typed: '3 m', quantity: 'length' },
          A2: { typed: 'Diffusion' },
          B2: { typed: '1', quantity: 'stops' },
          A3: { typed: 'Light' },
          B3: { typed: '=LEVELAT(INVERSESQUARE(800,2,B1),-B2)' },
          A4: { typed: 'Stop' },
          B4: { typed: '=INCIDENTF(B3,800,1/50)' },
          A5: { typed: 'Said' },
          B5: { typed: '=IF(B3>100,"bright","dim")' },
        },
      },
    ],
  });
  let minted = 0;
  const means = { ...planMeans(), newId: () => `n${minted++}` };
  const engine = connectEngine(book);
  const ground = () => ({
    document: book.document,
    engine,
    means,
    shown: book.document.sheets[0]?.id ?? '',
  });
  return { book, engine, means, ground };
}

function finished(task: Task): Done {
  const doing = work(task, {}, { each: 20_000, second: 20_000, now: () => 0 });
  for (;;) {
    const step = doing.next();
    if (step.done) return step.value;
  }
}

const noSecond = { cell: '', list: '', first: '', last: '', count: '' };
const overDistance: WrittenSweep = {
  down: { cell: 'B1', list: '2 m; 3 m; 4 m', first: '', last: '', count: '' },
  across: noSecond,
  read: 'B3:B5',
};

describe('solve for a cell', () => {
  const ask = (more: Partial<Parameters<typeof solvePlan>[1]>) => {
    const { ground, book, engine } = lamp();
    const written = { result: 'B3', wanted: '200 lx', changing: 'B1', from: '1 m', to: '10 m' };
    const plan = solvePlan(ground(), { ...written, ...more });
    return { plan, book, engine };
  };

  it('200 lx through one stop from 800 lx at 2 m: stand at 2.83 m', () => {
    const { plan, book } = ask({});
    if (!plan.ok) throw new Error(plan.reason);
    const done = finished({ kind: 'solve', book: writeBook(book.document), ...plan });
    if (done.kind !== 'solved') throw new Error(done.kind);
    expect(done.answers.answers).toHaveLength(1);
    expect(done.answers.answers[0]?.at).toBeCloseTo(2 * Math.SQRT2, 9);
  });

  it('what is typed for the answer brings the result within the ninth figure', () => {
    const { plan, book, engine } = ask({});
    if (!plan.ok) throw new Error(plan.reason);
    const { changed } = plan;
    const text = typedFor(roundedFor(2 * Math.SQRT2), changed);
    expect(text).toBe('2.82842712 m');
    const entered = enter(book.document, { ...planMeans() }, [{ ...plan.changing, text }]);
    if (!entered.ok) throw new Error(entered.reason);
    run(book, entered);
    expect(engine.valueOf(plan.result)).toBeCloseTo(200, 5);
  });

  it.each([
    [{ result: 'B1' }, 'B1 is no formula, so nothing can make it come out otherwise.'],
    [{ changing: 'B3' }, 'B3 is a formula; choose a cell in which something is typed.'],
    [{ changing: 'A1' }, 'A1 holds no typed number to be changed.'],
    [{ changing: 'D9' }, 'There is nothing in that cell to be replaced.'],
    [{ from: '2 m', to: '200 cm' }, 'The bounds must be two different numbers.'],
    [{ result: '' }, 'Say which cell: Make this cell.'],
  ])('%j: %s', (more, reason) => {
    const { plan } = ask(more);
    expect(plan).toEqual({ ok: false, reason });
  });

  it('a bound in another kind of unit is refused in the words of the cell', () => {
    const { plan } = ask({ from: '100 lx' });
    expect(plan.ok).toBe(false);
    expect(plan.ok || plan.reason).toMatch(/lx/);
  });
});

describe('sweep', () => {
  it('equals typing each value in by hand, for numbers and words', () => {
    const { ground, book, engine, means } = lamp();
    const plan = sweepPlan(ground(), overDistance);
    if (!plan.ok) throw new Error(plan.reason);
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan: plan.plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const byHand = ['2 m', '3 m', '4 m'].map((text) => {
      const made = enter(book.document, means, [{ ...plan.plan.down.spot, text }]);
      if (!made.ok) throw new Error(made.reason);
      run(book, made);
      return [plan.plan.read.map((spot) => engine.valueOf(spot))];
    });
    expect(done.swept).toEqual(byHand);
    // 800, 800 · 4/9, 200 lx, half of each behind a stop
    expect(done.swept[2]?.[0]?.[0]).toBeCloseTo(100, 9);
    expect(done.swept.map((line) => line[0]?.[2])).toEqual(['bright', 'bright', 'dim']);
  });

  it('two cells make a table for each cell read', () => {
    const { ground, book } = lamp();
    const plan = sweepPlan(ground(), {
      down: { cell: 'B1', list: '', first: '2 m', last: '4 m', count: '3' },
      across: { cell: 'B2', list: '0; 1; 2', first: '', last: '', count: '' },
      read: 'B3',
    });
    if (!plan.ok) throw new Error(plan.reason);
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan: plan.plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const lux = done.swept.map((line) => line.map(([value]) => Number(value)));
    for (const [row, distance] of [2, 3, 4].entries())
      for (const [column, loss] of [0, 1, 2].entries())
        expect(lux[row]?.[column]).toBeCloseTo((800 * 4) / distance ** 2 / 2 ** loss, 9);
  });

  it('a case that is an error or waits stays a case', () => {
    const { ground, book } = lamp();
    const plan = sweepPlan(ground(), {
      ...overDistance,
      read: 'B3',
      down: { ...overDistance.down, list: '0 m; 2 m' },
    });
    if (!plan.ok) throw new Error(plan.reason);
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan: plan.plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    expect(done.swept[0]?.[0]?.[0]).toMatchObject({ code: '#NUM!' });
    expect(done.swept[1]?.[0]?.[0]).toBeCloseTo(400, 9);
  });

  it('f-numbers between two ends step evenly in stops', () => {
    const { ground, book, means } = lamp();
    const made = enter(book.document, means, [
      { ...ground(), sheet: ground().shown, row: 5, column: 1, text: 'f/2' },
    ]);
    if (!made.ok) throw new Error(made.reason);
    run(book, made);
    const plan = sweepPlan(ground(), {
      down: { cell: 'B6', list: '', first: 'f/2', last: 'f/8', count: '5' },
      across: noSecond,
      read: 'B3',
    });
    if (!plan.ok) throw new Error(plan.reason);
    const values = plan.plan.down.values.map((content) => 'value' in content && content.value);
    expect(values.map((value) => Math.log2(Number(value)) * 2)).toEqual([
      expect.closeTo(2, 9),
      expect.closeTo(3, 9),
      expect.closeTo(4, 9),
      expect.closeTo(5, 9),
      expect.closeTo(6, 9),
    ]);
  });

  it.each([
    [{ read: '' }, 'Say which cell: Read.'],
    [{ read: 'B1:CZ300' }, 'A sweep reads up to 50 cells.'],
    [{ down: { ...overDistance.down, list: '2 m; 3 lx' } }, /lx/],
    [
      { down: { ...overDistance.down, list: '', first: '1 m', last: '2 m', count: '1' } },
      /from 2 on/,
    ],
  ])('%j is refused with a sentence', (more, reason) => {
    const plan = sweepPlan(lamp().ground(), { ...overDistance, ...more });
    expect(plan.ok).toBe(false);
    expect(plan.ok || plan.reason).toMatch(reason);
  });
});

describe('the sheet of a sweep', () => {
  function swept(written: WrittenSweep) {
    const all = lamp();
    const { ground, book, means } = all;
    const plan = sweepPlan(ground(), written);
    if (!plan.ok) throw new Error(plan.reason);
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan: plan.plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const content = sweepSheet(book.document, means, plan.plan, plan.cells, done.swept);
    const figures = sweepFigures(means, content.id, content, plan.plan, plan.cells);
    const placed = placeSheet(book.document, content, undefined, undefined, figures);
    if (!placed.ok) throw new Error(placed.reason);
    run(book, placed);
    const sheet = content.id;
    const at = (row: number, column: number) => all.engine.valueOf({ sheet, row, column });
    return { ...all, sheet, at, plan: plan.plan };
  }

  it('shows the cells as they stand now, live, and a row for each case', () => {
    const { at, book, means, ground, sheet } = swept(overDistance);
    expect([at(0, 1), at(0, 2), at(0, 3)]).toEqual(['Distance', 'Light', 'Stop']);
    expect(at(1, 2)).toBeCloseTo(1600 / 9, 9);
    expect(at(5, 1)).toBe(4);
    expect(at(5, 2)).toBeCloseTo(100, 9);
    const made = enter(book.document, means, [
      { sheet: ground().shown, row: 0, column: 1, text: '2 m' },
    ]);
    if (!made.ok) throw new Error(made.reason);
    run(book, made);
    expect(at(1, 2)).toBeCloseTo(400, 9);
    expect(book.document.sheet(sheet)?.properties.title).toBe('Sweep of Distance');
  });

  it.each([overDistance, { ...overDistance, across: { ...noSecond, cell: 'B2', list: '0; 1' } }])(
    'is read again as the sweep that it is',
    (written) => {
      const { book, sheet, plan } = swept(written);
      expect(sweepOn(book.document, sheet)).toEqual(plan);
    },
  );

  it('run again after a value was typed over: new results, in one step that undo takes back', () => {
    const { book, sheet, means, engine, at, ground } = swept(overDistance);
    const type = (row: number, column: number, text: string) => {
      const made = enter(book.document, means, [{ sheet, row, column, text }]);
      if (!made.ok) throw new Error(made.reason);
      run(book, made);
    };
    type(5, 1, '8 m');
    type(6, 1, '1 m');
    const plan = sweepOn(book.document, sheet);
    if (!plan) throw new Error('no sweep');
    expect(plan.down.values).toHaveLength(4);
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const cells = sweptCells(ground(), plan);
    run(book, renewed(book.document, means, sheet, { plan, cells, swept: done.swept }));
    expect(at(5, 2)).toBeCloseTo(25, 9);
    expect(at(6, 2)).toBeCloseTo(1600, 9);
    book.undo();
    expect(engine.valueOf({ sheet, row: 5, column: 2 })).toBeCloseTo(100, 9);
    expect(at(6, 2)).toBeNull();
  });

  it('nothing is written again where nothing came out otherwise', () => {
    const { book, sheet, means, ground } = swept(overDistance);
    const plan = sweepOn(book.document, sheet);
    if (!plan) throw new Error('no sweep');
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const made = renewed(book.document, means, sheet, {
      plan,
      cells: sweptCells(ground(), plan),
      swept: done.swept,
    });
    expect(made.ok && made.transaction.steps).toEqual([]);
  });

  it('says in its first cell whether it is live or frozen, and is what is typed there', () => {
    const { book, sheet, means, at } = swept(overDistance);
    expect(at(0, 0)).toBe('frozen');
    expect(isLive(book.document, sheet)).toBe(false);
    const made = enter(book.document, means, [{ sheet, row: 0, column: 0, text: 'Live' }]);
    if (!made.ok) throw new Error(made.reason);
    run(book, made);
    expect(isLive(book.document, sheet)).toBe(true);
  });

  it('its figure reaches as far as its rows, before and after a value is added', () => {
    const { book, sheet, means, engine, ground } = swept(overDistance);
    const drawn = () => {
      const [figure] = figuresOn(book.document, sheet);
      const range = figure?.ranges['results'];
      if (range?.kind !== 'range') throw new Error('no range');
      const { rows, columns } = book.document.sheet(sheet) ?? { rows: null, columns: null };
      return [
        rows?.indexOf(range.from.row.id),
        rows?.indexOf(range.to.row.id),
        columns?.indexOf(range.to.column.id),
      ];
    };
    expect(drawn()).toEqual([3, 5, 4]);
    const made = enter(book.document, means, [{ sheet, row: 6, column: 1, text: '1 m' }]);
    if (!made.ok) throw new Error(made.reason);
    run(book, made);
    const plan = sweepOn(book.document, sheet);
    if (!plan) throw new Error('no sweep');
    const done = finished({ kind: 'sweep', book: writeBook(book.document), plan });
    if (done.kind !== 'swept') throw new Error(done.kind);
    const cells = sweptCells(ground(), plan);
    run(book, renewed(book.document, means, sheet, { plan, cells, swept: done.swept }));
    expect(drawn()).toEqual([3, 6, 4]);
    expect(engine.valueOf({ sheet, row: 6, column: 2 })).toBeCloseTo(1600, 9);
  });

  it('two cells make a figure for each cell read, up to four', () => {
    const { book, sheet } = swept({
      ...overDistance,
      across: { ...noSecond, cell: 'B2', list: '0; 1' },
    });
    expect(figuresOn(book.document, sheet).map(({ title }) => title)).toEqual([
      'Light over Distance, by Diffusion',
      'Stop over Distance, by Diffusion',
      'Said over Distance, by Diffusion',
    ]);
  });

  it('a sheet of another kind is no sweep', () => {
    const { book, ground } = lamp();
    expect(sweepOn(book.document, ground().shown)).toBeUndefined();
  });
});
