import { writeBook } from '../book/form/write.ts';
import { enter } from '../book/make/enter.ts';
import { placeSheet } from '../book/make/sheets.ts';
import { isLive, renewed, sweepOn } from '../choose/again.ts';
import { sweepPlan, sweptCells, type WrittenSweep } from '../choose/plans.ts';
import { sweepDialog, type SweepState } from '../choose/screen/sweep.ts';
import { casesOf } from '../choose/sweep.ts';
import { sweepFigures } from '../choose/sweep-figures.ts';
import { followingAt, sweepSheet } from '../choose/sweep-sheet.ts';
import type { Task } from '../choose/work.ts';
import type { Outcome } from '../commands/command.ts';
import { signal } from '../panels/kit/signals.ts';
import { words } from '../words/words.ts';
import { apart, groundOf, type ChooseHands, type Choosing } from './choose-hands.ts';
import { selected } from './choose-selected.ts';
import type { Desk } from './desk.ts';

/** Asks which cells to vary and to read, tries all of it, and makes a sheet of what came out. */
export function askSweep(hands: ChooseHands, desk: Desk): Outcome {
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
    const ground = groundOf(hands.means, desk);
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
    const { document } = desk.book;
    const content = sweepSheet(document, hands.means, plan, cells, done.swept, asked.live);
    const figures = sweepFigures(hands.means, content.id, content, plan, cells);
    const placed = placeSheet(document, content, undefined, words.choose.sweep, figures);
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

export async function runAgain(hands: ChooseHands, desk: Desk): Promise<Outcome> {
  const ground = groundOf(hands.means, desk);
  const plan = sweepOn(ground.document, ground.shown);
  if (!plan) return { ok: false, reason: words.choose.noSweep };
  const cells = sweptCells(ground, plan);
  const task: Task = { kind: 'sweep', book: writeBook(ground.document), plan };
  const done = await apart(task, () => undefined).result;
  if (done.kind !== 'swept')
    return { ok: false, reason: done.kind === 'refused' ? done.reason : words.app.threadBroke };
  const { swept } = done;
  const made = renewed(desk.book.document, hands.means, ground.shown, { plan, cells, swept });
  const ran = made.ok ? desk.book.run(made.transaction) : made;
  return ran.ok ? { ok: true, say: words.choose.swept(casesOf(plan)) } : ran;
}

/** The sweep in view follows the book from now on, or stays as it is: typed into its first cell. */
export function turnLive({ means }: ChooseHands, { book, session }: Desk): Outcome {
  const { sheet } = session.state;
  if (!sweepOn(book.document, sheet)) return { ok: false, reason: words.choose.noSweep };
  const live = !isLive(book.document, sheet);
  const entry = { sheet, ...followingAt, text: live ? words.choose.live : words.choose.frozen };
  const made = enter(book.document, means, [entry], { label: words.choose.follow });
  const ran = made.ok ? book.run(made.transaction) : made;
  return ran.ok ? { ok: true, say: live ? words.choose.nowLive : words.choose.nowFrozen } : ran;
}
