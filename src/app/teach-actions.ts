import { exercisesOf, handoutOn } from '../book/exercises.ts';
import { words } from '../words/words.ts';
import type { Action } from './actions.ts';
import type { TeachHands } from './teach-hands.ts';
import { withOpenBook } from './with-desk.ts';

/** Exercises: for whoever sets them, and for whoever has one to answer. */
export function teachActions(hands: TeachHands): readonly Action[] {
  const { unavailable, withDesk } = withOpenBook(() => hands.desk());
  return [
    {
      id: 'teach.open',
      name: words.teach.exercises,
      group: 'book',
      search: ['exercise', 'teach', 'class', 'hand out', 'mark', 'question', 'homework', 'answer'],
      unavailable,
      run: withDesk(async (desk) => {
        const { document } = desk.book;
        const handout = handoutOn(document, desk.session.state.sheet);
        if (handout && exercisesOf(document).length === 0)
          (await import('./answering.ts')).answer(hands, desk, handout);
        else (await import('./teaching.ts')).teach(hands, desk);
        return { ok: true };
      }),
    },
  ];
}
