import type { SetExercise } from './sheet.ts';

export const power: SetExercise = {
  id: 'power',
  title: 'Watts, amps and a breaker',
  purpose: 'What fixtures draw, and how many one breaker carries for hours.',
  level: 3,
  onTheSpot: false,
  givens: [
    {
      name: 'watts',
      label: 'One fixture draws',
      quantity: 'power',
      typed: '650 W',
      draw: '300 W to 1500 W, step 50 W',
    },
    {
      name: 'factor',
      label: 'Its power factor is',
      quantity: 'number',
      typed: '0.6',
      draw: '0.5; 0.55; 0.6; 0.65; 0.7; 0.75; 0.8',
    },
    {
      name: 'volts',
      label: 'The mains have',
      quantity: 'voltage',
      typed: '230 V',
      draw: '110 V; 115 V; 120 V; 220 V; 230 V; 240 V',
    },
    {
      name: 'breaker',
      label: 'The breaker is rated',
      quantity: 'current',
      typed: '32 A',
      draw: '16 A; 20 A; 25 A; 32 A; 40 A; 63 A',
    },
    {
      name: 'all',
      label: 'All fixtures on three phases draw together',
      quantity: 'power',
      typed: '24 kW',
      draw: '9 kW to 60 kW, step 3 kW',
    },
    {
      name: 'lines',
      label: 'with, between two lines,',
      quantity: 'voltage',
      typed: '400 V',
      draw: '208 V; 380 V; 400 V; 415 V',
    },
  ],
  conditions: [
    '=$breaker*0.8/AMPS($watts,$volts,$factor)>=2',
    '=MOD($breaker*0.8/AMPS($watts,$volts,$factor),1)>=0.08',
    '=MOD($breaker*0.8/AMPS($watts,$volts,$factor),1)<=0.92',
  ],
  questions: [
    {
      text: 'What current does one fixture draw?',
      quantity: 'current',
      tolerance: '3 %',
      points: 2,
      hint: 'Watts over volts and over the power factor.',
      expected: '=AMPS($watts,$volts,$factor)',
      solution: '{$watts} over {$volts} and over {$factor}: {AMPS($watts,$volts,$factor)}.',
      mistakes: [
        { kind: 'other', says: 'left out the power factor', formula: '=AMPS($watts,$volts,1)' },
        {
          kind: 'other',
          says: 'multiplied by the power factor',
          formula: '=AMPS($watts,$volts,1)*$factor',
        },
      ],
    },
    {
      text: 'How many of them does the breaker carry for hours, loaded to 80 %?',
      quantity: 'number',
      tolerance: '0.4',
      points: 2,
      hint: 'Only whole fixtures count, and nobody rounds up at a breaker.',
      expected: '=INT($breaker*0.8/AMPS($watts,$volts,$factor))',
      solution:
        '80 % of {$breaker} over {AMPS($watts,$volts,$factor)} each: {INT($breaker*0.8/AMPS($watts,$volts,$factor))} whole ones.',
      mistakes: [
        {
          kind: 'other',
          says: 'loaded the breaker to its rating',
          formula: '=INT($breaker/AMPS($watts,$volts,$factor))',
        },
        {
          kind: 'other',
          says: 'left out the power factor',
          formula: '=INT($breaker*0.8/AMPS($watts,$volts,1))',
        },
      ],
    },
    {
      text: 'All of them, shared evenly on three phases: what does each line carry?',
      quantity: 'current',
      tolerance: '3 %',
      points: 2,
      hint: 'Between lines the root of three comes in.',
      expected: '=AMPS($all,$lines,$factor,3)',
      solution: '{$all} over √3, {$lines} and {$factor}: {AMPS($all,$lines,$factor,3)}.',
      mistakes: [
        {
          kind: 'other',
          says: 'left out the root of three',
          formula: '=AMPS($all,$lines,$factor)',
        },
        {
          kind: 'other',
          says: 'divided by three phases between lines',
          formula: '=AMPS($all,$lines,$factor)/3',
        },
      ],
    },
  ],
  remarks: [
    'An exercise. What may be connected is decided by local codes and a qualified electrician on the day.',
  ],
};
