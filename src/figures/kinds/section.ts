import { defineFigure } from '../figure.ts';
import { describeSet } from './set/describe.ts';
import { drawSet } from './set/draw.ts';
import { handsOf } from './set/hands.ts';
import { setInputs, setOptions, sides } from './set/inputs.ts';
import { readSet } from './set/read.ts';
import { words } from '../../words/words.ts';

/** The set from the front or from its right: heights run up the page. */
export const section = defineFigure({
  kind: 'section',
  name: words.set.section,
  summary: words.set.sectionWhat,
  inputs: setInputs.filter(({ name }) => name !== 'height' && name !== 'outline'),
  options: [{ name: 'from', words: words.set.from, choices: sides }, ...setOptions],
  read: (given, held) => readSet(given, given.options['from'] === 'side' ? [1, 2] : [0, 2], held),
  describe: describeSet,
  draw: drawSet,
  hands: handsOf,
});
