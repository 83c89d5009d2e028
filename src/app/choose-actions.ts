import { addressAt, cellAtSpot, typedText, placeAt } from '../book/look.ts';
import { writeBook } from '../book/form/write.ts';
import { enter } from '../book/make/enter.ts';
import { placeSheet } from '../book/make/sheets.ts';
import type { Means } from '../book/types.ts';
import { renewed, sweepOn } from '../choose/again.ts';
import {
  solvePlan,
  sweepPlan,
  sweptCells,
  type Ground,
  type WrittenSolve,
  type WrittenSweep,
} from '../choose/plans.ts';
import { readPickSheet, writePicked } from '../choose/pick/sheet.ts';
import { answersInWords } from '../choose/said.ts';
import { pickDialog } from '../choose/screen/pick.ts';
import { solveDialog, type SolveState } from '../choose/screen/solve.ts';
import { sweepDialog, type SweepState } from '../choose/screen/sweep.ts';
import { casesOf } from '../choose/sweep.ts';
import { sweepSheet } from '../choose/sweep-sheet.ts';
import type { Done, Task } from '../choose/work.ts';
import { roundedFor, typedFor } from '../choose/written.ts';
import type { Outcome } from '../commands/command.ts';
import { signal } from '../panels/kit/signals.ts';
import { words } from '../words/words.ts';
import type { Action } from './actions.ts';
import type { ChooseAnswer } from './choose.worker.ts';
import type { Desk } from './desk.ts';
import { longWork, type LongWork } from './long-work.ts';

export interface ChooseHands {
  readonly means: Means;
  desk(): Desk | null;
  tell(outcome: Outcome): void;
}

type Choosing = LongWork<Exclude<ChooseAnswer, { kind: 'progress' }>>;

const stopped: Done = { kind: 'refused', reason: words.exchange.stopped };
const failed = { kind: 'refused', reason: words.app.threadBroke } as const;

function apart(task: Task, progress: (share: number) => void): Choosing {
  const worker = new Worker(new URL('./choose.worker.ts', import.meta.url), { type: 'module' });
  return longWork<ChooseAnswer, Done>(worker, task, progress, { stopped, failed });
}

/** Solving for a cell and sweeping cells over values: tried on a copy, off the page. */
export function chooseActions(hands: ChooseHands): readonly Action[] {
  const withDesk = (run: (desk: Desk) => Outcome | Promise<Outcome>) => () => {
    const desk = hands.desk();
    return desk?.context ? run(desk) : { ok: false as const, reason: words.app.openFirst };
  };
  const unavailable = () => (hands.desk() ? undefined : words.app.openFirst);
  return [
    {
      id: 'choose.solve',
      name: words.choose.solve,
      group: 'cells',
      search: ['goal', 'make equal', 'which value', 'find the distance', 'backwards'],
      unavailable,
      run: withDesk((desk) => askSolve(hands, desk)),
    },
    {
      id: 'choose.sweep',
      name: words.choose.sweep,
      group: 'cells',
      search: ['what if', 'table', 'try values', 'vary', 'range', 'cases'],
      unavailable,
      run: withDesk((desk) => askSweep(hands, desk)),
    },
    {
      id: 'choose.again',
      name: words.choose.again,
      group: 'sheets',
      search: ['sweep', 'refresh', 'what if'],
      unavailable,
      run: withDesk((desk) => runAgain(hands, desk)),
    },
    {
      id: 'choose.pick',
      name: words.choose.pick,
      group: 'sheets',
      search: ['cheapest', 'which fixtures', 'inventory', 'optimise', 'hire', 'best set'],
      unavailable,
      run: withDesk((desk) => chooseFixtures(hands, desk)),
    },
  ];
}

function groundOf(hands: ChooseHands, desk: Desk): Ground | undefined {
  const { context } = desk;
  return (
    context && {
      document: desk.book.document,
      engine: context.engine,
      means: hands.means,
      shown: desk.session.state.sheet,
    }
  );
}

/** The cell with the cursor, as the fields begin with it. */
function selected({ book, session }: Desk) {
  const { sheet } = session.state;
  const { row, column } = session.state.selection.focus;
  const spot = { sheet, row, column };
  const place = placeAt(book.document, spot);
  return {
    address: addressAt(spot),
    kind: cellAtSpot(book.document, spot)?.content.kind,
    typed: place ? typedText(book.document, place) : '',
  };
}

function askSolve(hands: ChooseHands, desk: Desk): Outcome {
  const { address, kind } = selected(desk);
  const state = signal<SolveState>({ kind: 'asking' });
  const used = signal(false);
  const written = signal<WrittenSolve>({
    result: kind === 'formula' ? address : '',
    wanted: '',
    changing: kind === 'number' ? address : '',
    from: '',
    to: '',
  });
  let choosing: Choosing | undefined;
  const find = async (asked: WrittenSolve) => {
    written.value = asked;
    const ground = groundOf(hands, desk);
    if (!ground) return;
    const plan = solvePlan(ground, asked);
    if (!plan.ok) {
      state.value = { kind: 'asking', refused: plan.reason };
      return;
    }
    state.value = { kind: 'working', share: 0 };
    const { changing, result, search, changed } = plan;
    const task: Task = {
      kind: 'solve',
      book: writeBook(ground.document),
      changing,
      result,
      search,
    };
    choosing = apart(task, (share) => (state.value = { kind: 'working', share }));
    const done = await choosing.result;
    if (done.kind !== 'solved') {
      state.value = { kind: 'asking', ...(done.kind === 'refused' && { refused: done.reason }) };
      return;
    }
    const { answers, says } = answersInWords(plan, done.answers);
    const use = (at: number) => {
      const text = typedFor(roundedFor(at), changed);
      const entry = { ...changing, text };
      const label = words.choose.solved(addressAt(result));
      const entered = enter(desk.book.document, hands.means, [entry], { label });
      const ran = entered.ok ? desk.book.run(entered.transaction) : entered;
      hands.tell(ran.ok ? { ok: true } : ran);
      used.value = true;
    };
    state.value = {
      kind: 'done',
      says,
      answers: answers.map(({ at, sentence }) => ({ sentence, use: () => use(at) })),
    };
  };
  solveDialog({
    state,
    written,
    used,
    find: (asked) => void find(asked),
    cancel: () => choosing?.cancel(),
  });
  return { ok: true };
}

function askSweep(hands: ChooseHands, desk: Desk): Outcome {
  const { address, kind, typed } = selected(desk);
  const state = signal<SweepState>({ kind: 'asking' });
  const empty = { cell: '', list: '', first: '', last: '', count: '' };
  const written = signal<WrittenSweep>({
    down: kind === 'number' ? { ...empty, cell: address, first: typed } : empty,
    across: empty,
    read: kind === 'formula' ? address : '',
  });
  let choosing: Choosing | undefined;
  const run = async (asked: WrittenSweep) => {
    written.value = asked;
    const ground = groundOf(hands, desk);
    if (!ground) return;
    const made = sweepPlan(ground, asked);
    if (!made.ok) {
      state.value = { kind: 'asking', refused: made.reason };
      return;
    }
    state.value = { kind: 'working', share: 0 };
    const { plan, cells } = made;
    const task: Task = { kind: 'sweep', book: writeBook(ground.document), plan };
    choosing = apart(task, (share) => (state.value = { kind: 'working', share }));
    const done = await choosing.result;
    if (done.kind !== 'swept') {
      state.value = { kind: 'asking', ...(done.kind === 'refused' && { refused: done.reason }) };
      return;
    }
    const content = sweepSheet(desk.book.document, hands.means, plan, cells, done.swept);
    const placed = placeSheet(desk.book.document, content, undefined, words.choose.sweep);
    const ran = placed.ok ? desk.book.run(placed.transaction) : placed;
    if (ran.ok) desk.session.show(content.id);
    hands.tell(ran.ok ? { ok: true, say: words.choose.swept(casesOf(plan)) } : ran);
    state.value = { kind: 'done' };
  };
  sweepDialog({
    state,
    written,
    run: (asked) => void run(asked),
    cancel: () => choosing?.cancel(),
  });
  return { ok: true };
}

async function runAgain(hands: ChooseHands, desk: Desk): Promise<Outcome> {
  const ground = groundOf(hands, desk);
  const plan = ground && sweepOn(ground.document, ground.shown);
  if (!ground || !plan) return { ok: false, reason: words.choose.noSweep };
  const cells = sweptCells(ground, plan);
  const task: Task = { kind: 'sweep', book: writeBook(ground.document), plan };
  const done = await apart(task, () => undefined).result;
  if (done.kind !== 'swept')
    return { ok: false, reason: done.kind === 'refused' ? done.reason : words.app.threadBroke };
  const made = renewed(desk.book.document, hands.means, ground.shown, {
    plan,
    cells,
    swept: done.swept,
  });
  const ran = made.ok ? desk.book.run(made.transaction) : made;
  return ran.ok ? { ok: true, say: words.choose.swept(casesOf(plan)) } : ran;
}

/** The cheapest set of the table of options on this sheet, written beside them. */
function chooseFixtures(hands: ChooseHands, desk: Desk): Outcome {
  const { context, session } = desk;
  if (!context) return { ok: false, reason: words.app.openFirst };
  const { sheet } = session.state;
  const read = readPickSheet({ document: desk.book.document, engine: context.engine, sheet });
  if (!read.ok) return read;
  const share = signal<number | null>(0);
  const choosing = apart({ kind: 'pick', problem: read.problem }, (done) => (share.value = done));
  pickDialog({ share, cancel: () => choosing.cancel() });
  void choosing.result.then((done) => {
    share.value = null;
    if (done.kind !== 'picked') {
      hands.tell({ ok: false, reason: done.kind === 'refused' ? done.reason : failed.reason });
      return;
    }
    const made = writePicked(desk.book.document, hands.means, sheet, read, done.picked);
    const ran = made.ok ? desk.book.run(made.transaction) : made;
    hands.tell(ran.ok ? { ok: true } : ran);
  });
  return { ok: true };
}
