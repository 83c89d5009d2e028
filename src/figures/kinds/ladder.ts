import { defineFigure } from '../figure.ts';
import { describeLadder } from './ladder/describe.ts';
import { drawLadder } from './ladder/draw.ts';
import { readLadder, zeroNames } from './ladder/read.ts';

/** Each point of a table of readings against the key, and against what the camera holds. */
export const ladder = defineFigure({
  kind: 'ladder',
  name: 'Ladder of stops',
  summary: 'Where each point stands, where it was wanted, and what the camera holds.',
  inputs: [
    {
      name: 'points',
      words: 'Points',
      help: 'Names of the points, one a row.',
      shape: 'rows',
      captions: [/point|place|spot/i],
    },
    {
      name: 'read',
      words: 'Read',
      help: 'What was read, beside the names: stops, f-numbers or levels.',
      shape: 'rows',
      quantities: ['stops', 'fNumber', 'illuminance', 'luminance'],
      captions: [/^from/i, /read/i],
    },
    {
      name: 'wanted',
      words: 'Wanted',
      help: 'What was wanted there, in the same way.',
      shape: 'rows',
      quantities: ['stops', 'fNumber', 'illuminance', 'luminance'],
      optional: true,
      captions: [/want|plan|target/i],
    },
    {
      name: 'level',
      words: 'What zero is',
      help: 'The key’s f-number, the taking stop, or the level of grey. Needed for readings that are no stops.',
      shape: 'single',
      quantities: ['fNumber', 'illuminance', 'luminance'],
      optional: true,
      captions: [/taking stop/i],
    },
    {
      name: 'above',
      words: 'Camera holds above grey',
      help: 'In stops.',
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/above grey/i],
    },
    {
      name: 'below',
      words: 'Camera holds below grey',
      help: 'In stops.',
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/below grey/i],
    },
    {
      name: 'greySits',
      words: 'Grey sits at',
      help: 'How far from its usual place the camera puts grey, in stops.',
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/grey sits/i],
    },
    {
      name: 'zeroFromGrey',
      words: 'Zero stands from grey',
      help: 'How far the zero of the ladder is from what the taking stop puts at grey, in stops.',
      shape: 'single',
      quantities: ['stops'],
      optional: true,
    },
    {
      name: 'signal',
      words: 'Signal level',
      help: 'Your own table: stops from grey in its first column, the signal there in its second.',
      shape: 'pairs',
      optional: true,
      captions: [/signal/i],
    },
  ],
  options: [
    { name: 'zero', words: 'Zero is the', choices: zeroNames },
    {
      name: 'order',
      words: 'Order',
      choices: [
        { value: 'sheet', words: 'as on the sheet' },
        { value: 'brightest', words: 'brightest first' },
      ],
    },
  ],
  read: readLadder,
  describe: describeLadder,
  draw: drawLadder,
});
