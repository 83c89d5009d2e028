import { defineFigure } from '../figure.ts';
import { describeEvenness } from './evenness/describe.ts';
import { drawEvenness } from './evenness/draw.ts';
import { readEvenness, zeros } from './evenness/read.ts';
import { words } from '../../words/words.ts';

/** How even the light lies on a backdrop, a screen or a floor. */
export const evenness = defineFigure({
  kind: 'evenness',
  name: words.evenness.title,
  summary: words.evenness.what,
  inputs: [
    {
      name: 'values',
      words: words.evenness.values,
      help: words.evenness.valuesHelp,
      shape: 'grid',
      quantities: ['illuminance', 'fNumber', 'luminance'],
    },
  ],
  options: [{ name: 'from', words: words.evenness.from, choices: zeros }],
  read: readEvenness,
  describe: describeEvenness,
  draw: drawEvenness,
});
