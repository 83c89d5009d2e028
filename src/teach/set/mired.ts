import type { SetExercise } from './sheet.ts';

export const mired: SetExercise = {
  id: 'mired',
  title: 'Kelvin and mired',
  purpose: 'What a gel does to a lamp, what a lamp wants, and how two mix.',
  level: 2,
  onTheSpot: false,
  givens: [
    {
      name: 'lamp',
      label: 'The lamp has',
      quantity: 'colourTemperature',
      typed: '3200 K',
      draw: '2700 K to 6500 K, step 100 K',
    },
    {
      name: 'white',
      label: 'The camera’s white is',
      quantity: 'colourTemperature',
      typed: '5600 K',
      draw: '3000 K; 3200 K; 3400 K; 4300 K; 5000 K; 5600 K; 6000 K',
    },
    {
      name: 'gel',
      label: 'A gel at hand shifts by',
      quantity: 'mired',
      typed: '-100',
      draw: '-140; -120; -100; -80; -60; -40; 40; 60; 80; 100; 120; 150',
    },
    {
      name: 'other',
      label: 'Another lamp has',
      quantity: 'colourTemperature',
      typed: '6500 K',
      draw: '2400 K to 7500 K, step 100 K',
    },
  ],
  conditions: [
    '=ABS(MIREDSHIFT($lamp,$white))>=20',
    '=ABS(MIREDSHIFT($lamp,$other))>=90',
    '=KELVINTHROUGH($lamp,$gel)>=1800',
    '=KELVINTHROUGH($lamp,$gel)<=12000',
    '=MIRED($lamp)-ABS($gel)>=70',
  ],
  questions: [
    {
      text: 'What shift, in mired, brings the lamp to the camera’s white?',
      quantity: 'mired',
      tolerance: '4 mired',
      points: 2,
      hint: 'A million over the wanted kelvin, less a million over the lamp’s.',
      expected: '=MIREDSHIFT($lamp,$white)',
      solution: '{MIRED($white)} less {MIRED($lamp)} is {MIREDSHIFT($lamp,$white)}.',
      mistakes: [{ kind: 'wrongSign', formula: '=MIREDSHIFT($white,$lamp)' }],
    },
    {
      text: 'What is the lamp through the gel at hand?',
      quantity: 'colourTemperature',
      tolerance: '2 %',
      points: 2,
      hint: 'Mired add, kelvin do not.',
      expected: '=KELVINTHROUGH($lamp,$gel)',
      solution:
        '{MIRED($lamp)} and {$gel} are {MIRED($lamp)+$gel}, which is {KELVINTHROUGH($lamp,$gel)}.',
      mistakes: [{ kind: 'wrongSign', formula: '=KELVINTHROUGH($lamp,-$gel)' }],
    },
    {
      text: 'Both lamps give as much light. About what is their mixture?',
      quantity: 'colourTemperature',
      tolerance: '1.5 %',
      points: 2,
      hint: 'The middle lies in mired.',
      expected: '=KELVIN((MIRED($lamp)+MIRED($other))/2)',
      solution:
        'The middle of {MIRED($lamp)} and {MIRED($other)} is {(MIRED($lamp)+MIRED($other))/2} mired, which is {KELVIN((MIRED($lamp)+MIRED($other))/2)}.',
      mistakes: [{ kind: 'averagedKelvin', formula: '=($lamp+$other)/2' }],
    },
  ],
  remarks: [
    'The middle in mired is common practice for lamps that lie near the colours of a glowing body.',
  ],
};
