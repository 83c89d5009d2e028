import { handoutOn, type Handout } from '../book/exercises.ts';
import { spotOf, typedText, type Spot } from '../book/look.ts';
import { enter } from '../book/make/enter.ts';
import type { Place } from '../book/types.ts';
import { carryOut } from '../commands/doing.ts';
import { computed, signal } from '../panels/kit/signals.ts';
import { showCell } from '../panels/views/show.ts';
import { at as focusOn } from '../session/session.ts';
import { checked } from '../teach/check.ts';
import { learnerDialog } from '../teach/screen/learner.ts';
import type { Answering } from '../teach/screen/seam.ts';
import { oneMoreTry } from '../teach/tries.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { lookAt } from './look-at.ts';
import type { TeachHands } from './teach-hands.ts';

/** The learner’s screen beside the sheet: it knows nothing but what the hand-out holds. */
export function answer({ means }: TeachHands, desk: Desk, { sheet, learner }: Handout): void {
  const { book, session } = desk;
  /** What was said of an answer holds until it is another one. */
  const said = signal<ReadonlyMap<string, Pick<Answering, 'says' | 'state' | 'answer'>>>(new Map());
  const current = () => handoutOn(book.document, sheet);
  const placeOf = (id: string): Place | undefined => {
    const at = current()?.questions.find((one) => one.id === id)?.at;
    return at && { sheet, ...at };
  };
  const textAt = (spot: Spot): string => {
    const { text, unit } = showCell(lookAt(desk), spot);
    return unit === undefined ? text : `${text} ${unit}`;
  };
  const questions = computed((): readonly Answering[] => {
    void desk.changed.value;
    return (current()?.questions ?? []).map(({ id, at, text, points, hint, check }) => {
      const spot = spotOf(book.document, { sheet, ...at });
      const tries = current()?.tries[id] ?? 0;
      const answered = spot ? textAt(spot) : '';
      const told = said.value.get(id);
      return {
        ...{ id, text, hint },
        points: words.teach.worth(points),
        typed: typedText(book.document, { sheet, ...at }),
        tries: tries > 0 ? words.teach.tried(tries) : '',
        checks: check !== undefined,
        ...(told?.answer === answered ? told : { says: '', state: undefined, answer: answered }),
      };
    });
  });
  learnerDialog({
    learner,
    questions,
    jump(id) {
      const place = placeOf(id);
      const spot = place && spotOf(book.document, place);
      if (!spot) return;
      session.show(sheet);
      session.select(focusOn(spot.row, spot.column));
    },
    type(id, text) {
      const place = placeOf(id);
      const spot = place && spotOf(book.document, place);
      if (!spot) return;
      const entered = enter(book.document, means, [{ ...spot, text: text.trim() }]);
      const outcome = carryOut(desk, entered);
      if (outcome.ok) return;
      said.value = new Map(said.value).set(id, {
        ...{ says: outcome.reason, state: 'notYet', answer: textAt(spot) },
      });
    },
    check(id) {
      const handout = current();
      const question = handout?.questions.find((one) => one.id === id);
      const place = placeOf(id);
      const spot = place && spotOf(book.document, place);
      if (!handout || !question?.check || !spot) return;
      const tellOf = (what: Pick<Answering, 'says' | 'state'>) =>
        (said.value = new Map(said.value).set(id, { ...what, answer: textAt(spot) }));
      const value = desk.engine.valueOf(spot);
      if (typeof value !== 'number') {
        tellOf({ says: words.teach.typeFirst, state: 'blank' });
        return;
      }
      const { state, off } = checked(question.check, question.quantity, value);
      const says =
        state === 'close' && off !== undefined
          ? words.teach.closeNow(off)
          : words.teach.checkStates[state];
      tellOf({ says, state });
      // Not a gesture to be undone: it belongs to the answer that was checked.
      book.follow([oneMoreTry(handout, id)]);
    },
  });
}
