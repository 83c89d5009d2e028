import { words } from '../../words/words.ts';
import { defineFigure } from '../figure.ts';
import { describeFamily } from './over/describe.ts';
import { drawFamily } from './over/draw.ts';
import { readFamily } from './over/read.ts';

/** What cells come to over the values of another: a line each, a picture for each thing measured. */
export const over = defineFigure({
  kind: 'over',
  name: words.over.title,
  summary: words.over.what,
  inputs: [
    { name: 'along', words: words.over.along, help: words.over.alongHelp, shape: 'rows' },
    { name: 'results', words: words.over.results, help: words.over.resultsHelp, shape: 'grid' },
    {
      name: 'names',
      words: words.over.names,
      help: words.over.namesHelp,
      shape: 'grid',
      optional: true,
    },
    {
      name: 'caption',
      words: words.over.caption,
      help: words.over.captionHelp,
      shape: 'single',
      optional: true,
    },
    {
      name: 'now',
      words: words.over.now,
      help: words.over.nowHelp,
      shape: 'single',
      optional: true,
    },
  ],
  options: [],
  read: readFamily,
  describe: describeFamily,
  draw: drawFamily,
});
