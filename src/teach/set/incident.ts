import { speeds, times, wholeMarks, type SetExercise } from './sheet.ts';

export const incident: SetExercise = {
  id: 'incident',
  title: 'Exposure from incident light',
  purpose: 'From lux to the f-number and back, metered with a flat receptor.',
  level: 2,
  onTheSpot: true,
  givens: [
    {
      name: 'lux',
      label: 'Flat receptor, facing the lamp',
      quantity: 'illuminance',
      typed: '800 lx',
      draw: '100 lx to 4000 lx, step 50 lx',
    },
    { name: 'iso', label: 'Speed of the camera', quantity: 'iso', typed: 'ISO 800', draw: speeds },
    { name: 'time', label: 'Exposure time', quantity: 'time', typed: '1/50 s', draw: times },
    {
      name: 'wanted',
      label: 'Wanted f-number',
      quantity: 'fNumber',
      typed: 'f/4',
      draw: wholeMarks,
    },
  ],
  conditions: [
    '=INCIDENTF($lux,$iso,$time,"flat")>=1.4',
    '=INCIDENTF($lux,$iso,$time,"flat")<=22',
    '=ABS(FSTOPS($wanted,INCIDENTF($lux,$iso,$time,"flat")))>=0.7',
    '=ABS(FSTOPS($wanted,INCIDENTF($lux,$iso,$time,"flat")))<=4',
  ],
  questions: [
    {
      text: 'To what f-number does the light lead? (C = 250, the flat receptor)',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'The f-number is the root of lux · speed · time over C.',
      expected: '=INCIDENTF($lux,$iso,$time,"flat")',
      solution:
        'The root of {$lux} · {$iso} · {$time} over 250: {INCIDENTF($lux,$iso,$time,"flat")}.',
      mistakes: [
        { kind: 'domeForFlat', formula: '=INCIDENTF($lux,$iso,$time,"dome")' },
        { kind: 'forgotSquare', formula: '=INCIDENTF($lux,$iso,$time,"flat")^2' },
      ],
    },
    {
      text: 'How much light does the wanted f-number need?',
      quantity: 'illuminance',
      tolerance: '5 %',
      points: 2,
      hint: 'The light goes with the square of the f-number.',
      expected: '=INCIDENTLUX($wanted,$iso,$time,"flat")',
      solution:
        '{$wanted} squared times 250 over speed and time: {INCIDENTLUX($wanted,$iso,$time,"flat")}.',
      mistakes: [
        { kind: 'domeForFlat', formula: '=INCIDENTLUX($wanted,$iso,$time,"dome")' },
        { kind: 'forgotSquare', formula: '=INCIDENTLUX($wanted,$iso,$time,"flat")/$wanted' },
      ],
    },
    {
      text: 'How many stops more (+) or less (−) light is that than there is?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'Hold what is wanted against what there is.',
      expected: '=STOPS(INCIDENTLUX($wanted,$iso,$time,"flat"),$lux)',
      solution:
        'log2 of {INCIDENTLUX($wanted,$iso,$time,"flat")} over {$lux}: {STOPS(INCIDENTLUX($wanted,$iso,$time,"flat"),$lux)}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=-STOPS(INCIDENTLUX($wanted,$iso,$time,"flat"),$lux)' },
        { kind: 'domeForFlat', formula: '=STOPS(INCIDENTLUX($wanted,$iso,$time,"dome"),$lux)' },
      ],
    },
  ],
  remarks: [
    'C is 250 for a flat receptor and 340 for a dome, as on the settings of this book (ISO 2720 allows a range).',
  ],
};
