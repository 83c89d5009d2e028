import type { SetExercise } from './sheet.ts';

export const inverseSquare: SetExercise = {
  id: 'inverse-square',
  title: 'Distance and light',
  purpose: 'What a small lamp gives from elsewhere, and where it must stand.',
  level: 1,
  onTheSpot: true,
  givens: [
    {
      name: 'lux',
      label: 'Light at the subject',
      quantity: 'illuminance',
      typed: '800 lx',
      draw: '200 lx to 3000 lx, step 50 lx',
    },
    {
      name: 'near',
      label: 'from a distance of',
      quantity: 'length',
      typed: '2 m',
      draw: '1.5 m to 6 m, step 0.5 m',
    },
    {
      name: 'far',
      label: 'The lamp is moved to',
      quantity: 'length',
      typed: '4 m',
      draw: '1 m to 12 m, step 0.5 m',
    },
    {
      name: 'wanted',
      label: 'Wanted in place of that',
      quantity: 'illuminance',
      typed: '400 lx',
      draw: '100 lx to 4000 lx, step 100 lx',
    },
  ],
  conditions: [
    '=ABS(FALLOFF($near,$far))>=0.5',
    '=ABS(FALLOFF($near,$far))<=4',
    '=ABS(STOPS($wanted,$lux))>=0.5',
    '=ABS(STOPS($wanted,$lux))<=4',
  ],
  questions: [
    {
      text: 'What does the lamp give at the subject from the new distance?',
      quantity: 'illuminance',
      tolerance: '3 %',
      points: 2,
      hint: 'Twice as far is a quarter of the light.',
      expected: '=INVERSESQUARE($lux,$near,$far)',
      solution: '{$lux} times ({$near} over {$far}) squared is {INVERSESQUARE($lux,$near,$far)}.',
      mistakes: [
        { kind: 'forgotSquare', formula: '=$lux*$near/$far' },
        { kind: 'wrongSide', formula: '=$lux*($far/$near)^2' },
      ],
    },
    {
      text: 'How many stops more (+) or less (−) is that?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'Metres follow the f-numbers: from 2 m to 2.8 m is a stop less.',
      expected: '=-FALLOFF($near,$far)',
      solution: '2 · log2 of {$near} over {$far}: {-FALLOFF($near,$far)}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=FALLOFF($near,$far)' },
        { kind: 'forgotSquare', formula: '=-FALLOFF($near,$far)/2' },
      ],
    },
    {
      text: 'At what distance does it give the wanted light?',
      quantity: 'length',
      tolerance: '3 %',
      points: 2,
      hint: 'The distance goes with the root of the light.',
      expected: '=DISTANCEFOR($lux,$near,$wanted)',
      solution:
        '{$near} times the root of {$lux} over {$wanted} is {DISTANCEFOR($lux,$near,$wanted)}.',
      mistakes: [
        { kind: 'forgotSquare', formula: '=$near*$lux/$wanted' },
        { kind: 'wrongSide', formula: '=DISTANCEFOR($wanted,$near,$lux)' },
      ],
    },
  ],
  remarks: [
    'For a small lamp without a lens. Lamps near people and walls get them hot: keep the maker’s distance.',
  ],
};
