import type { SetExercise } from './sheet.ts';

export const ratios: SetExercise = {
  id: 'ratios',
  title: 'Key, fill and ratio',
  purpose: 'Two lamps metered one at a time, and what both give on the two sides of a face.',
  level: 1,
  onTheSpot: true,
  givens: [
    {
      name: 'key',
      label: 'Key alone, on the key side',
      quantity: 'illuminance',
      typed: '600 lx',
      draw: '300 lx to 1600 lx, step 20 lx',
    },
    {
      name: 'fill',
      label: 'Fill alone, the same on both sides',
      quantity: 'illuminance',
      typed: '200 lx',
      draw: '60 lx to 500 lx, step 10 lx',
    },
    {
      name: 'wanted',
      label: 'Wanted ratio of the two sides, all lights on',
      quantity: 'ratio',
      typed: '5:1',
      draw: '2:1; 3:1; 4:1; 5:1; 6:1; 8:1',
    },
  ],
  conditions: ['=$key>=1.2*$fill', '=$key<=12*$fill'],
  questions: [
    {
      text: 'Ratio of the key side to the fill side with both lamps on?',
      quantity: 'ratio',
      tolerance: '3 %',
      points: 2,
      hint: 'The fill reaches the key side too.',
      expected: '=LIGHTINGRATIO($key,$fill)',
      solution: 'Key side {$key+$fill}, fill side {$fill}: {LIGHTINGRATIO($key,$fill)}.',
      mistakes: [
        {
          kind: 'other',
          says: 'left the fill out on the key side',
          formula: '=KEYFILLRATIO($key,$fill)',
        },
        { kind: 'wrongSide', formula: '=$fill/($key+$fill)' },
      ],
    },
    {
      text: 'How many stops is the key side over the fill side, both lamps on?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'A ratio of 2:1 is one stop, 4:1 two.',
      expected: '=STOPS($key+$fill,$fill)',
      solution: 'log2 of {LIGHTINGRATIO($key,$fill)} is {STOPS($key+$fill,$fill)}.',
      mistakes: [{ kind: 'wrongSign', formula: '=-STOPS($key+$fill,$fill)' }],
    },
    {
      text: 'What must the fill alone give for the wanted ratio?',
      quantity: 'illuminance',
      tolerance: '3 %',
      points: 2,
      hint: 'Key and fill over fill is the wanted ratio; solve it for the fill.',
      expected: '=$key/($wanted-1)',
      solution:
        'The key alone is the ratio less one times the fill: {$key} over ({$wanted} less one) is {$key/($wanted-1)}.',
      mistakes: [
        {
          kind: 'other',
          says: 'left the fill out on the key side',
          formula: '=FILLFOR($key,$wanted)',
        },
        { kind: 'wrongSide', formula: '=$key*($wanted-1)' },
      ],
    },
  ],
};
