import { defineFigure } from '../figure.ts';
import { describeLadder } from './ladder/describe.ts';
import { drawLadder } from './ladder/draw.ts';
import { readLadder, zeroNames } from './ladder/read.ts';
import { words } from '../../words/words.ts';

/** Each point of a table of readings against the key, and against what the camera holds. */
export const ladder = defineFigure({
  kind: 'ladder',
  name: words.ladder.title,
  summary: words.ladder.what,
  inputs: [
    {
      name: 'points',
      words: words.ladder.points,
      help: words.ladder.pointsHelp,
      shape: 'rows',
      captions: [/point|place|spot/i],
    },
    {
      name: 'read',
      words: words.ladder.read,
      help: words.ladder.readHelp,
      shape: 'rows',
      quantities: ['stops', 'fNumber', 'illuminance', 'luminance'],
      captions: [/^from/i, /read/i],
    },
    {
      name: 'wanted',
      words: words.ladder.wanted,
      help: words.ladder.wantedHelp,
      shape: 'rows',
      quantities: ['stops', 'fNumber', 'illuminance', 'luminance'],
      optional: true,
      captions: [/want|plan|target/i],
    },
    {
      name: 'level',
      words: words.ladder.level,
      help: words.ladder.levelHelp,
      shape: 'single',
      quantities: ['fNumber', 'illuminance', 'luminance'],
      optional: true,
      captions: [/taking stop/i],
    },
    {
      name: 'above',
      words: words.ladder.above,
      help: words.ladder.inStops,
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/above grey/i],
    },
    {
      name: 'below',
      words: words.ladder.below,
      help: words.ladder.inStops,
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/below grey/i],
    },
    {
      name: 'greySits',
      words: words.ladder.grey,
      help: words.ladder.greyHelp,
      shape: 'single',
      quantities: ['stops'],
      optional: true,
      captions: [/grey sits/i],
    },
    {
      name: 'zeroFromGrey',
      words: words.ladder.zeroFromGrey,
      help: words.ladder.zeroFromGreyHelp,
      shape: 'single',
      quantities: ['stops'],
      optional: true,
    },
    {
      name: 'signal',
      words: words.ladder.signal,
      help: words.ladder.signalHelp,
      shape: 'pairs',
      optional: true,
      captions: [/signal/i],
    },
  ],
  options: [
    { name: 'zero', words: words.ladder.zero, choices: zeroNames },
    {
      name: 'order',
      words: words.ladder.order,
      choices: [
        { value: 'sheet', words: words.ladder.asOnSheet },
        { value: 'brightest', words: words.ladder.brightest },
      ],
    },
  ],
  read: readLadder,
  describe: describeLadder,
  draw: drawLadder,
});
