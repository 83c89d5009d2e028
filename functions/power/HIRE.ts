import { define } from '../define.ts';
import { above, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

/** Whole weeks at what a week is charged, and the days left at no more than that. */
function run(dayRate: In<'money'>, days: number, charged: number) {
  const weeks = Math.floor(days / 7);
  return dayRate * (weeks * charged + Math.min(days - 7 * weeks, charged));
}

export default define({
  name: 'HIRE',
  family: 'power',
  summary: 'What a hire costs where a week is charged as fewer days.',
  job: 'The house charges three days a week and you have the kit for ten days.',
  search: ['rental', 'day rate', 'week rate', 'cost', 'budget', 'three day week'],
  parameters: [
    {
      name: 'day_rate',
      quantity: 'money',
      domain: sampled(zeroOrMore, 0, 500),
      help: 'Price of one day.',
    },
    {
      name: 'days',
      quantity: 'number',
      domain: sampled(zeroOrMore, 0, 60),
      help: 'Days out of the house, prepping, shooting and travelling.',
    },
    {
      name: 'days_charged_a_week',
      quantity: 'number',
      domain: above(0, 7),
      help: 'Days that a whole week is charged as; 7 for none free.',
    },
  ],
  result: 'money',
  alike: ['ENERGY', 'BATTERYHOURS'],
  limits: 'Without insurance, transport, tax and what breaks.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [20, 10, 3], result: 120, why: 'a week as three days, and three days more' },
    { args: [18, 6, 4], result: 72, why: 'six days cost no more than a week' },
    { args: [20, 10, 7], result: 200, why: 'every day charged' },
  ],
  laws: {
    'never more than every day charged': (dayRate, days, charged) =>
      run(dayRate, days, charged) <= dayRate * days * (1 + 1e-12),
    'a week more costs a week more': (dayRate, days, charged) =>
      near(run(dayRate, days + 7, charged), run(dayRate, days, charged) + dayRate * charged),
  },
  formula:
    'day_rate * (INT(days / 7) * days_charged_a_week + MIN(days - 7 * INT(days / 7), days_charged_a_week))',
  run,
});
