import type { SetExercise } from './sheet.ts';

export const footcandles: SetExercise = {
  id: 'footcandles',
  title: 'Lux and footcandles',
  purpose: 'The same light in two units, and the lamp behind it.',
  level: 1,
  onTheSpot: false,
  givens: [
    {
      name: 'lux',
      label: 'A meter in lux says',
      quantity: 'illuminance',
      typed: '500 lx',
      draw: '100 lx to 3000 lx, step 20 lx',
    },
    {
      name: 'fc',
      label: 'Another one, somewhere else, in footcandles',
      quantity: 'number',
      typed: '40',
      draw: '4 to 150, step 2',
    },
    {
      name: 'feet',
      label: 'from a lamp at a distance, in feet, of',
      quantity: 'number',
      typed: '10',
      draw: '5 to 30, step 1',
    },
  ],
  conditions: [],
  questions: [
    {
      text: 'How many footcandles does the first meter see?',
      quantity: 'number',
      tolerance: '3 %',
      points: 1,
      hint: 'A footcandle is a lumen on a square foot, and a square foot is smaller than a square metre.',
      expected: '=FOOTCANDLES($lux)',
      solution: '{$lux} over 10.764 are {FOOTCANDLES($lux)} footcandles.',
      mistakes: [
        { kind: 'luxForFootcandles', formula: '=$lux' },
        { kind: 'wrongSide', formula: '=$lux*10.7639104' },
      ],
    },
    {
      text: 'How many lux does the second one see?',
      quantity: 'number',
      tolerance: '3 %',
      points: 1,
      hint: 'There are more lux than footcandles in the same light.',
      expected: '=$fc*10.7639104',
      solution: '{$fc} times 10.764 are {$fc*10.7639104} lux.',
      mistakes: [
        { kind: 'luxForFootcandles', formula: '=$fc' },
        { kind: 'wrongSide', formula: '=$fc/10.7639104' },
      ],
    },
    {
      text: 'How many candela does that lamp send there?',
      quantity: 'number',
      tolerance: '3 %',
      points: 2,
      hint: 'Candela are footcandles times feet squared, or lux times metres squared.',
      expected: '=$fc*$feet^2',
      solution: '{$fc} times {$feet} squared are {$fc*$feet^2} candela.',
      mistakes: [
        { kind: 'forgotSquare', formula: '=$fc*$feet' },
        { kind: 'luxForFootcandles', formula: '=$fc*($feet*0.3048)^2' },
      ],
    },
  ],
};
