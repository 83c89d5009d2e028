import { words } from '../../words/words.ts';
import { defineFigure, type Input } from '../figure.ts';
import { describeColours } from './chromaticity/describe.ts';
import { drawColours } from './chromaticity/draw.ts';
import { readColours } from './chromaticity/read.ts';

const said = words.chromaticity;

const coordinate = (
  name: string,
  words: string,
  help: string,
  caption: RegExp,
  shape: 'rows' | 'single' = 'rows',
): Input => ({
  ...{ name, words, help, shape, quantities: ['chromaticity'], captions: [caption] },
  ...(name.length > 1 && { optional: true }),
});

/** Sources in a chromaticity diagram, with the loci, the white wanted and what agrees with it. */
export const chromaticity = defineFigure({
  kind: 'chromaticity',
  name: said.title,
  summary: said.what,
  inputs: [
    {
      name: 'names',
      words: said.names,
      help: said.namesHelp,
      shape: 'rows',
      captions: [/source|light|name/i],
    },
    coordinate('x', said.x, said.xHelp, /^x$/i),
    coordinate('y', said.y, said.yHelp, /^y$/i),
    coordinate('thenX', said.thenX, said.thenXHelp, /^x then$/i),
    coordinate('thenY', said.thenY, said.thenYHelp, /^y then$/i),
    coordinate('targetX', said.targetX, said.targetXHelp, /^x wanted$/i, 'single'),
    coordinate('targetY', said.targetY, said.targetYHelp, /^y wanted$/i, 'single'),
    {
      name: 'mired',
      words: said.mired,
      help: said.miredHelp,
      shape: 'single',
      quantities: ['mired'],
      optional: true,
      captions: [/agrees within/i],
    },
    {
      name: 'duv',
      words: said.duv,
      help: said.duvHelp,
      shape: 'single',
      quantities: ['duv'],
      optional: true,
      captions: [/and duv/i],
    },
  ],
  options: [
    {
      name: 'diagram',
      words: said.diagram,
      choices: [
        { value: 'uv', words: said.uv },
        { value: 'xy', words: said.xy },
      ],
    },
    {
      name: 'extent',
      words: said.extent,
      choices: [
        { value: 'near', words: said.near },
        { value: 'whole', words: said.whole },
      ],
    },
  ],
  read: readColours,
  describe: describeColours,
  draw: drawColours,
});
