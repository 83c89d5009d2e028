import { define } from '../define.ts';
import { onSet, sampled, zeroOrMore } from '../domains.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';

type Metres = In<'length'>;

/** A hair of grace: three strips reckoned as 3.0000000001 are three. */
const grace = 1e-9;

function run(width: Metres, height: Metres, roll: Metres, lap: Metres): Metres | FunctionError {
  if (lap >= roll)
    return refuse(`ROLLLENGTH: lap must be less than roll_width, ${roll} m, not ${lap} m.`);
  const strips = (side: number) => Math.max(1, Math.ceil((side - lap) / (roll - lap) - grace));
  return Math.min(strips(width) * height, strips(height) * width);
}

export default define({
  name: 'ROLLLENGTH',
  family: 'filter',
  summary: 'Length to cut off a roll of filter to cover a window with its strips.',
  job: 'A window is to be filtered or dimmed and you want to know what to take along.',
  search: ['gel for a window', 'how much gel', 'roll', 'cut', 'sheet', 'strips'],
  parameters: [
    {
      name: 'width',
      quantity: 'length',
      domain: sampled(onSet, 0.2, 6),
      help: 'What is covered, with its margin.',
    },
    {
      name: 'height',
      quantity: 'length',
      domain: sampled(onSet, 0.2, 4),
      help: 'What is covered, with its margin.',
    },
    {
      name: 'roll_width',
      quantity: 'length',
      domain: sampled(onSet, 0.5, 1.5),
      help: 'How wide the roll is.',
    },
    {
      name: 'lap',
      quantity: 'length',
      domain: sampled(zeroOrMore, 0, 0.1),
      default: 0,
      help: 'How far one strip lies over the next; a lap is seen where it is backlit.',
    },
  ],
  result: 'length',
  alike: ['FILTERFOR', 'FILTERLOSS', 'NDFOR'],
  limits:
    'Whole strips of one window, upright or lying, whichever takes less; one layer. What is left over of a strip is not used for another one.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [2, 1.5, 1.2], result: 3, why: 'two upright strips of 1.5 m; lying, two of 2 m' },
    { args: ['1 m', '3 m', '1.2 m'], result: 3, why: 'one upright strip' },
    {
      args: [2.35, 1.5, 1.2, 0.1],
      result: 4.5,
      why: 'two strips lapped by 0.1 m reach 2.3 m: a third',
    },
  ],
  laws: {
    'turned on its side it takes as much': (width, height, roll, lap) =>
      run(width, height, roll, lap) === run(height, width, roll, lap),
    'it is never less than the window': (width, height, roll, lap) => {
      const length = run(width, height, roll, lap);
      return isError(length) || length * roll >= width * height * (1 - 1e-6);
    },
  },
  formula:
    'IF(lap >= roll_width, NA(), MIN(' +
    'MAX(1, ROUNDUP((width - lap) / (roll_width - lap) - 0.000000001, 0)) * height, ' +
    'MAX(1, ROUNDUP((height - lap) / (roll_width - lap) - 0.000000001, 0)) * width))',
  run,
});
