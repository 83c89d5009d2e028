import { wholeMarks, type SetExercise } from './sheet.ts';

export const neutralDensity: SetExercise = {
  id: 'neutral-density',
  title: 'Neutral density',
  purpose: 'What a density takes from the light, in stops and in shares.',
  level: 1,
  onTheSpot: true,
  givens: [
    {
      name: 'nd',
      label: 'Filter on the lens',
      quantity: 'density',
      typed: 'ND 0.6',
      draw: 'ND 0.3; ND 0.6; ND 0.9; ND 1.2; ND 1.5; ND 1.8; ND 2.1',
    },
    {
      name: 'reading',
      label: 'The meter says',
      quantity: 'fNumber',
      typed: 'f/8',
      draw: wholeMarks,
    },
    {
      name: 'gel',
      label: 'A gel on the lamp lets through',
      quantity: 'share',
      typed: '60 %',
      draw: '25 % to 85 %, step 5 %',
    },
  ],
  conditions: ['=FNUMBERAT($reading,-DENSITYSTOPS($nd))>=0.95'],
  questions: [
    {
      text: 'How many stops does the filter take?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'A density of 0.3 is a stop.',
      expected: '=DENSITYSTOPS($nd)',
      solution: '{$nd} over 0.3 is {DENSITYSTOPS($nd)}.',
      mistakes: [{ kind: 'densityForStops', formula: '=DENSITYSTOPS($nd)*0.3' }],
    },
    {
      text: 'To what f-number is the lens opened behind the filter?',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'Less light wants a wider lens: a lower f-number.',
      expected: '=FNUMBERAT($reading,-DENSITYSTOPS($nd))',
      solution: '{DENSITYSTOPS($nd)} under {$reading}: {FNUMBERAT($reading,-DENSITYSTOPS($nd))}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=FNUMBERAT($reading,DENSITYSTOPS($nd))' },
        { kind: 'densityForStops', formula: '=FNUMBERAT($reading,-DENSITYSTOPS($nd)*0.3)' },
      ],
    },
    {
      text: 'What share of the light comes through filter and gel together?',
      quantity: 'share',
      tolerance: '4 %',
      points: 2,
      hint: 'Shares multiply; densities and stops add.',
      expected: '=DENSITYTRANSMISSION($nd)*$gel',
      solution:
        'The filter passes {DENSITYTRANSMISSION($nd)}; {$gel} of that is {DENSITYTRANSMISSION($nd)*$gel}.',
      mistakes: [
        { kind: 'densityForStops', formula: '=STOPSTRANSMISSION(DENSITYSTOPS($nd)*0.3)*$gel' },
        {
          kind: 'other',
          says: 'took what the gel passes for what it takes',
          formula: '=DENSITYTRANSMISSION($nd)*(1-$gel)',
        },
      ],
    },
  ],
};
