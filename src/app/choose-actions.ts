import { words } from '../words/words.ts';
import type { Action } from './actions.ts';
import type { ChooseHands } from './choose-hands.ts';
import { chooseFixtures, hangLoads } from './choose-pick.ts';
import { askSolve } from './choose-solve.ts';
import { askSweep, runAgain, turnLive } from './choose-sweep.ts';
import { withOpenBook } from './with-desk.ts';

/** Solving for a cell and sweeping cells over values: tried on a copy, off the page. */
export function chooseActions(hands: ChooseHands): readonly Action[] {
  const { unavailable, withDesk } = withOpenBook(() => hands.desk());
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
      id: 'choose.live',
      name: words.choose.follow,
      group: 'sheets',
      search: ['follow', 'freeze', 'automatic', 'sweep'],
      unavailable,
      run: withDesk((desk) => turnLive(hands, desk)),
    },
    {
      id: 'choose.loads',
      name: words.choose.packLoads,
      group: 'sheets',
      search: ['pack', 'power', 'breakers', 'distribute', 'balance'],
      unavailable,
      run: withDesk((desk) => hangLoads(hands, desk)),
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
