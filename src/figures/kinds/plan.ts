import { defineFigure } from '../figure.ts';
import { describeSet } from './set/describe.ts';
import { drawSet } from './set/draw.ts';
import { handsOf } from './set/hands.ts';
import { setInputs, setOptions } from './set/inputs.ts';
import { readSet } from './set/read.ts';
import { words } from '../../words/words.ts';

/** The set from above: x runs to the right, y up the page. */
export const plan = defineFigure({
  kind: 'plan',
  name: words.set.plan,
  summary: words.set.planWhat,
  inputs: setInputs,
  options: setOptions,
  read: (given, held) => readSet(given, [0, 1], held),
  describe: describeSet,
  draw: drawSet,
  hands: handsOf,
});
