import { thirdMarks, type SetExercise } from './sheet.ts';

export const stops: SetExercise = {
  id: 'stops',
  title: 'Stops and f-numbers',
  purpose: 'How far two readings in f-numbers lie apart, and what they would be elsewhere.',
  level: 1,
  onTheSpot: true,
  givens: [
    { name: 'key', label: 'Key side reads', quantity: 'fNumber', typed: 'f/5.6', draw: thirdMarks },
    {
      name: 'fill',
      label: 'Fill side reads',
      quantity: 'fNumber',
      typed: 'f/2.8 1/3',
      draw: thirdMarks,
    },
    {
      name: 'more',
      label: 'The fill is brought up by',
      quantity: 'stops',
      typed: '2/3',
      draw: '1/3; 2/3; 1; 1 1/3; 1 2/3; 2; 2 1/3; 2 2/3; 3',
    },
  ],
  conditions: ['=FSTOPS($key,$fill)>=1', '=FSTOPS($key,$fill)<=4'],
  questions: [
    {
      text: 'By how many stops is the key side over the fill side?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'Count the marks from the fill side to the key side: a whole mark is a stop.',
      expected: '=FSTOPS($key,$fill)',
      solution:
        'Stops are 2 · log2 of the f-numbers over each other, as light goes with their square. From {$fill} to {$key}: {FSTOPS($key,$fill)}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=FSTOPS($fill,$key)' },
        { kind: 'forgotSquare', formula: '=FSTOPS($key,$fill)/2' },
      ],
    },
    {
      text: 'What does the fill side read then, if no other light changes?',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'More light on the meter is a higher f-number.',
      expected: '=FNUMBERAT($fill,$more)',
      solution:
        '{$more} more light than {$fill} is √2 to the power of the stops times that f-number: {FNUMBERAT($fill,$more)}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=FNUMBERAT($fill,-$more)' },
        { kind: 'forgotSquare', formula: '=FNUMBERAT($fill,2*$more)' },
      ],
    },
    {
      text: 'How many times the light of the fill side does the key side get?',
      quantity: 'factor',
      tolerance: '5 %',
      points: 1,
      hint: 'Each stop doubles the light.',
      expected: '=STOPFACTOR(FSTOPS($key,$fill))',
      solution: '2 to the power of {FSTOPS($key,$fill)}: {STOPFACTOR(FSTOPS($key,$fill))}.',
      mistakes: [
        { kind: 'forgotSquare', formula: '=$key/$fill' },
        { kind: 'wrongSide', formula: '=STOPFACTOR(FSTOPS($fill,$key))' },
      ],
    },
  ],
};
