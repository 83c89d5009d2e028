import { defineFigure } from '../figure.ts';
import { describePolar } from './polar/describe.ts';
import { drawPolar } from './polar/draw.ts';
import { readPolar } from './polar/read.ts';
import { words } from '../../words/words.ts';

/** What one fixture gives in every direction, in two planes through its aim line. */
export const polar = defineFigure({
  kind: 'polar',
  name: words.polar.title,
  summary: words.polar.what,
  inputs: [
    {
      name: 'fixture',
      words: words.polar.fixture,
      help: words.polar.fixtureHelp,
      shape: 'single',
      captions: [/fixture/i],
    },
  ],
  options: [],
  read: readPolar,
  describe: describePolar,
  draw: drawPolar,
});
