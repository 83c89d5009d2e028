import { define } from '../define.ts';
import type { Domain } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

/** A residue of one would be frames with no light at all. */
const belowOne: Domain = {
  says: 'from 0 to less than 1',
  allows: (value) => value >= 0 && value < 1,
  samples: [0, 0.99],
};

function run(residue: In<'share'>) {
  return Math.log2((1 + residue) / (1 - residue));
}

export default define({
  name: 'FLICKERSTOPS',
  family: 'time',
  summary: 'Stops between the brightest and the darkest frame of a flicker.',
  job: 'You have the residue of a flicker and want to know what it looks like.',
  search: ['flicker', 'pulsing', 'how many stops', 'visible', 'bright frame'],
  parameters: [
    {
      name: 'residue',
      quantity: 'share',
      domain: belowOne,
      help: 'Half the swing over the average, from FLICKERRESIDUE.',
    },
  ],
  result: 'stops',
  alike: ['FLICKERRESIDUE', 'FLICKERCHECK'],
  limits: 'From peak to trough; slow pulsing is seen from a tenth of a stop and less.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [0], result: 0, why: 'no flicker' },
    { args: ['60 %'], result: 2, why: '1.6 over 0.4 is four times the light' },
  ],
  laws: {
    'the stops give the residue back': (residue) => {
      const factor = 2 ** run(residue);
      return near((factor - 1) / (factor + 1), residue);
    },
  },
  formula: 'LN((1 + residue) / (1 - residue)) / LN(2)',
  run,
});
