import { define } from '../define.ts';
import { exactMark, inTenths } from '../marks/index.ts';
import { writable } from './scaleParameter.ts';

export default define({
  name: 'FTENTHS',
  family: 'stops',
  summary: 'An f-number as meters read it out: whole stop and tenths above it.',
  job: 'You want to call a reading across the set.',
  search: ['tenths', 'read out', 'meter display', 'how to say it', 'and a half'],
  parameters: [
    { name: 'f_number', quantity: 'fNumber', domain: writable, help: 'The f-number to be said.' },
  ],
  result: 'text',
  alike: ['FMARK', 'FEXACT', 'FSTOPS'],
  limits: 'To the nearest tenth of a stop.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [4.3], result: 'f/4 + 0.2', why: '0.21 stop over f/4' },
    { args: ['f/5.6'], result: 'f/5.6', why: 'a whole stop has no tenths' },
    { args: ['f/2.8 1/3'], result: 'f/2.8 + 0.3', why: 'a third is three tenths' },
  ],
  laws: {
    'half a tenth at most from what was said': (fNumber) => {
      const [whole = '', tenths = '0'] = inTenths(fNumber).slice(2).split(' + ');
      const said = exactMark(Number(whole), 1) * 2 ** (Number(tenths) / 2);
      return Math.abs(2 * Math.log2(fNumber / said)) <= 0.05 + 1e-9;
    },
  },
  formula: {
    none: 'It gives words; written with TEXT and LOG10 it would miss the engraved names.',
    equation: 'N = mark · 2^(tenths / 20)',
  },
  run: inTenths,
});
