import { wholeMarks, type SetExercise } from './sheet.ts';

export const tStops: SetExercise = {
  id: 't-stops',
  title: 'f and T',
  purpose: 'What the glass of a lens takes, and what is set for it.',
  level: 2,
  onTheSpot: true,
  givens: [
    {
      name: 'set',
      label: 'The lens is set to',
      quantity: 'fNumber',
      typed: 'f/2.8',
      draw: wholeMarks,
    },
    {
      name: 'glass',
      label: 'Its glass lets through',
      quantity: 'share',
      typed: '70 %',
      draw: '40 % to 76 %, step 2 %',
    },
    {
      name: 'wanted',
      label: 'The meter asks for T',
      quantity: 'fNumber',
      typed: 'f/4',
      draw: 'f/2; f/2.8; f/4; f/5.6; f/8; f/11; f/16',
    },
  ],
  conditions: ['=ABS(FSTOPS($set,$wanted))>=0.9'],
  questions: [
    {
      text: 'What T-number is it set to?',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'T is f over the root of what the glass lets through.',
      expected: '=TNUMBER($set,$glass)',
      solution: '{$set} over the root of {$glass} is {TNUMBER($set,$glass)}.',
      mistakes: [
        { kind: 'fForT', formula: '=$set' },
        { kind: 'forgotSquare', formula: '=$set/$glass' },
        { kind: 'wrongSide', formula: '=$set*SQRT($glass)' },
      ],
    },
    {
      text: 'How many stops does the glass take?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'Half of the light is a stop.',
      expected: '=TRANSMISSIONSTOPS($glass)',
      solution: 'log2 of one over {$glass} is {TRANSMISSIONSTOPS($glass)}.',
      mistakes: [{ kind: 'wrongSign', formula: '=-TRANSMISSIONSTOPS($glass)' }],
    },
    {
      text: 'To what f-number is the lens set for the T that is asked for?',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'What the glass takes, the iris gives back.',
      expected: '=$wanted*SQRT($glass)',
      solution: '{$wanted} times the root of {$glass} is {$wanted*SQRT($glass)}.',
      mistakes: [
        { kind: 'fForT', formula: '=$wanted' },
        { kind: 'wrongSide', formula: '=TNUMBER($wanted,$glass)' },
      ],
    },
  ],
};
