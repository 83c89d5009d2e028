import { speeds, times, type SetExercise } from './sheet.ts';

export const spot: SetExercise = {
  id: 'spot',
  title: 'Spot readings and the camera',
  purpose: 'Where a tone falls, and whether the camera holds it.',
  level: 3,
  onTheSpot: true,
  givens: [
    {
      name: 'stop',
      label: 'The lens is set to T',
      quantity: 'fNumber',
      typed: 'f/4',
      draw: 'f/2; f/2.8; f/4; f/5.6; f/8',
    },
    { name: 'iso', label: 'Speed of the camera', quantity: 'iso', typed: 'ISO 800', draw: speeds },
    { name: 'time', label: 'Exposure time', quantity: 'time', typed: '1/50 s', draw: times },
    {
      name: 'window',
      label: 'The window reads',
      quantity: 'luminance',
      typed: '600 cd/m2',
      draw: '100 cd/m2 to 6000 cd/m2, step 100 cd/m2',
    },
    {
      name: 'above',
      label: 'The camera holds above middle grey',
      quantity: 'stops',
      typed: '6',
      draw: '5; 5 1/2; 6; 6 1/2; 7; 7 1/2; 8',
    },
  ],
  conditions: [
    '=STOPS($window,SPOTLUMINANCE($stop,$iso,$time))>=1',
    '=STOPS($window,SPOTLUMINANCE($stop,$iso,$time))<=10',
    '=ABS(HEADROOM($window,SPOTLUMINANCE($stop,$iso,$time),$above))>=0.5',
  ],
  questions: [
    {
      text: 'What luminance does this exposure put at middle grey? (K = 12.5)',
      quantity: 'luminance',
      tolerance: '5 %',
      points: 2,
      hint: 'The f-number squared times K, over speed and time.',
      expected: '=SPOTLUMINANCE($stop,$iso,$time)',
      solution:
        '{$stop} squared times 12.5 over {$iso} and {$time}: {SPOTLUMINANCE($stop,$iso,$time)}.',
      mistakes: [{ kind: 'forgotSquare', formula: '=SPOTLUMINANCE($stop,$iso,$time)/$stop' }],
    },
    {
      text: 'How many stops over middle grey is the window?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'Each doubling over the luminance of grey is a stop.',
      expected: '=STOPS($window,SPOTLUMINANCE($stop,$iso,$time))',
      solution:
        'log2 of {$window} over {SPOTLUMINANCE($stop,$iso,$time)}: {STOPS($window,SPOTLUMINANCE($stop,$iso,$time))}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=-STOPS($window,SPOTLUMINANCE($stop,$iso,$time))' },
      ],
    },
    {
      text: 'How many stops are left before it clips? (− if it does)',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'What the camera holds, less what the window takes.',
      expected: '=HEADROOM($window,SPOTLUMINANCE($stop,$iso,$time),$above)',
      solution:
        '{$above} less {STOPS($window,SPOTLUMINANCE($stop,$iso,$time))} is {HEADROOM($window,SPOTLUMINANCE($stop,$iso,$time),$above)}.',
      mistakes: [
        {
          kind: 'wrongSign',
          formula: '=-HEADROOM($window,SPOTLUMINANCE($stop,$iso,$time),$above)',
        },
      ],
    },
  ],
};
