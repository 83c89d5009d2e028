import { define } from '../define.ts';
import { reflecting } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(reflectance: In<'share'>, grey: In<'share'>) {
  return Math.log2(reflectance / grey);
}

export default define({
  name: 'GREYSTOPS',
  family: 'exposure',
  summary: 'How many stops over (+) or under (−) middle grey a surface is in the same light.',
  job: 'You want to know where a costume, a wall or skin will sit before it is lit.',
  search: ['zone', 'grey card', 'white shirt', 'dark wall', 'skin', 'reflectance'],
  parameters: [
    {
      name: 'reflectance',
      quantity: 'share',
      domain: reflecting,
      help: 'Share of the light that the surface sends back.',
    },
    {
      name: 'grey',
      quantity: 'share',
      domain: reflecting,
      default: 0.18,
      help: 'Reflectance of the grey it is held against; 18 % unless given.',
    },
  ],
  result: 'stops',
  alike: ['LUMINANCEOF', 'REFLECTANCEOF', 'HEADROOM'],
  limits: 'For matte surfaces in the same light; a shine goes far over any reflectance.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['90 %'], result: Math.log2(5), why: 'white paper, 2.3 stops over grey' },
    { args: [0.045], result: -2, why: 'a quarter of 18 % is two stops under' },
  ],
  laws: {
    'grey itself is nothing': (_reflectance, grey) => run(grey, grey) === 0,
    'the stops give the reflectance back': (reflectance, grey) =>
      near(grey * 2 ** run(reflectance, grey), reflectance),
  },
  formula: 'LN(reflectance / grey) / LN(2)',
  run,
});
