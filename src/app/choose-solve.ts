import { writeBook } from '../book/form/write.ts';
import { addressAt } from '../book/look.ts';
import { enter } from '../book/make/enter.ts';
import { solvePlan, type WrittenSolve } from '../choose/plans.ts';
import { answersInWords } from '../choose/said.ts';
import { solveDialog, type SolveState } from '../choose/screen/solve.ts';
import type { Task } from '../choose/work.ts';
import { roundedFor, typedFor } from '../choose/written.ts';
import type { Outcome } from '../commands/command.ts';
import { signal } from '../panels/kit/signals.ts';
import { words } from '../words/words.ts';
import { apart, groundOf, type ChooseHands, type Choosing } from './choose-hands.ts';
import { selected } from './choose-selected.ts';
import type { Desk } from './desk.ts';

/** Asks what is to equal what, looks for it, and writes the answer that is used. */
export function askSolve(hands: ChooseHands, desk: Desk): Outcome {
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
    const ground = groundOf(hands.means, desk);
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
