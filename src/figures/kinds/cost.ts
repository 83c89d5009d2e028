import { words } from '../../words/words.ts';
import { defineFigure } from '../figure.ts';
import { describeChoices } from './cost/describe.ts';
import { drawChoices } from './cost/draw.ts';
import { readChoices } from './cost/read.ts';

/** Options by price and light: which give the most for what they cost, and which are passed over. */
export const cost = defineFigure({
  kind: 'cost',
  name: words.cost.title,
  summary: words.cost.what,
  inputs: [
    {
      name: 'options',
      words: words.cost.options,
      help: words.cost.optionsHelp,
      shape: 'rows',
      captions: [/option|choice/i],
    },
    {
      name: 'light',
      words: words.cost.light,
      help: words.cost.lightHelp,
      shape: 'rows',
      quantities: ['stops'],
      captions: [/from wanted|stops|off/i],
    },
    {
      name: 'cost',
      words: words.cost.cost,
      help: words.cost.costHelp,
      shape: 'rows',
      quantities: ['money'],
      captions: [/cost|price/i],
    },
    {
      name: 'fits',
      words: words.cost.fits,
      help: words.cost.fitsHelp,
      shape: 'rows',
      optional: true,
      captions: [/fits|enough/i],
    },
  ],
  options: [],
  read: readChoices,
  describe: describeChoices,
  draw: drawChoices,
});
