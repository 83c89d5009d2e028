import { define } from '../define.ts';
import { any, sampled, zeroOrMore } from '../domains.ts';
import { verdictShape } from '../stops/verdictWords.ts';
import { colourVerdict, usualTolerance } from './colourWords.ts';

export default define({
  name: 'COLOURVERDICT',
  family: 'colour',
  summary: 'Says in words how far off a light is from a white: too warm or blue, green or magenta.',
  job: 'You want to read “92 mired too warm, green by 0.005” and not work it out from signs.',
  search: ['too warm', 'too blue', 'too green', 'off white', 'tint', 'how far off'],
  parameters: [
    {
      name: 'mired',
      quantity: 'mired',
      domain: sampled(any, -150, 200),
      help: 'Mired of the light less that of the white: positive is warmer, as MIREDSHIFT from white to light.',
    },
    {
      name: 'duv',
      quantity: 'duv',
      domain: sampled(any, -0.02, 0.02),
      help: 'Duv of the light less that of the white: positive is greener.',
    },
    {
      name: 'mired_tolerance',
      quantity: 'mired',
      domain: sampled(zeroOrMore, 0, 20),
      default: usualTolerance.mired,
      help: 'As far off as this still agrees.',
    },
    {
      name: 'duv_tolerance',
      quantity: 'duv',
      domain: sampled(zeroOrMore, 0, 0.006),
      default: usualTolerance.duv,
      help: 'The same for green and magenta.',
    },
  ],
  result: 'verdict',
  alike: ['VERDICT', 'MIREDSHIFT', 'DUV', 'COLOURDIFFERENCE'],
  limits:
    'Mired to the whole one, Duv to a thousandth. What a camera sees of an uneven spectrum it cannot say.',
  sources: [{ from: 'common practice', at: 'within 10 mired and a Duv of 0.003 it agrees' }],
  examples: [
    {
      args: [92.3, 0.0049],
      result: '92 mired too warm, green by 0.005',
      why: 'off both ways',
    },
    {
      args: [-167.6, 0.002],
      result: '168 mired too blue',
      why: '6900 K at 3200 K; the tint agrees',
    },
    { args: [4, -0.006], result: 'magenta by 0.006', why: 'four mired are within ten' },
    { args: [10, 0.003], result: 'agrees', why: 'the tolerance itself still agrees' },
  ],
  laws: {
    'it agrees exactly where both do': (mired, duv, miredTolerance, duvTolerance) =>
      (verdictShape(colourVerdict(mired, duv, miredTolerance, duvTolerance)) === 'agrees') ===
      (Math.abs(mired) <= miredTolerance + 1e-9 && Math.abs(duv) <= duvTolerance + 1e-9),
  },
  formula: {
    none: 'It gives words; MIREDSHIFT and DUV give the numbers behind them.',
    equation:
      '|mired| too warm or blue, green or magenta by |duv|; agrees where neither is more than its tolerance',
  },
  run: colourVerdict,
});
