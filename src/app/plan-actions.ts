import type { Means } from '../book/types.ts';
import { carryOut } from '../commands/doing.ts';
import { collectRigs } from '../plan/collect/collect.ts';
import { orderSetUps } from '../plan/running/order.ts';
import { words } from '../words/words.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import { withOpenBook } from './with-desk.ts';
import { lookAt } from './look-at.ts';

export interface PlanHands {
  readonly means: Means;
  desk(): Desk | null;
}

/** The order out of the rigs, and the order in which set-ups are shot. */
export function planActions({ means, desk }: PlanHands): readonly Action[] {
  const { unavailable, withDesk } = withOpenBook(desk);
  const making = (make: typeof collectRigs) =>
    withDesk((open) => {
      const made = make(lookAt(open), means, open.session.state.sheet);
      return carryOut(open, made, 'says' in made ? made.says : undefined);
    });
  return [
    {
      id: 'plan.collect',
      name: words.plan.collect,
      group: 'book',
      search: ['package', 'hire order', 'gather', 'kit list', 'fixtures of the rig'],
      unavailable,
      run: making(collectRigs),
    },
    {
      id: 'plan.order',
      name: words.plan.order,
      group: 'book',
      search: ['running order', 'best order', 'fewest moves', 'schedule', 'sort set-ups'],
      unavailable,
      run: making(orderSetUps),
    },
  ];
}
