import { define } from '../define.ts';
import { any, sampled, zeroOrMore } from '../domains.ts';
import { placementWords, verdictShape } from './verdictWords.ts';

export default define({
  name: 'PLACEMENT',
  family: 'stops',
  summary: 'Says in words whether a tone lies within what the camera holds.',
  job: 'You have spotted a window or a dark corner and want to know whether it clips or sinks into noise.',
  search: ['clip', 'blown out', 'noise', 'dynamic range', 'latitude', 'crushed'],
  parameters: [
    {
      name: 'from_grey',
      quantity: 'stops',
      domain: any,
      help: 'Stops from what the taking stop puts at middle grey.',
    },
    {
      name: 'above',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 2, 9),
      help: 'Stops that the camera holds above middle grey.',
    },
    {
      name: 'below',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 2, 9),
      help: 'Stops that it holds below, as a positive number.',
    },
  ],
  result: 'verdict',
  alike: ['HEADROOM', 'FOOTROOM', 'VERDICT'],
  limits:
    'A camera’s range is what its user has tested it to be; makers’ figures are often kinder.',
  sources: [{ from: 'common practice' }],
  examples: [
    {
      args: [7.6, 6.5, 4.5],
      result: 'clips by 1.1 stops',
      why: '7.6 less the 6.5 it holds',
    },
    { args: [-3.5, 6.5, 4.5], result: 'in range', why: 'a stop above the noise' },
    {
      args: [-5, 6.5, 4.5],
      result: 'lost by 1/2 stop',
      why: 'darker than it can tell from noise',
    },
  ],
  laws: {
    'no light is both clipped and lost': (fromGrey, above, below) =>
      verdictShape(placementWords(fromGrey, above, below)) ===
      (fromGrey > above + 1e-9 ? 'clips' : fromGrey < -below - 1e-9 ? 'lost' : 'in range'),
  },
  formula: {
    none: 'It gives words; HEADROOM and FOOTROOM give the numbers behind them.',
    equation:
      'clips by from_grey − above, or is lost by −from_grey − below; in range where neither is more than 0',
  },
  run: placementWords,
});
