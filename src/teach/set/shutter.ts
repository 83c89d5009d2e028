import { wholeMarks, type SetExercise } from './sheet.ts';

export const shutter: SetExercise = {
  id: 'shutter',
  title: 'Shutter and frame rate',
  purpose: 'From angle and rate to the time of a frame, and what faster frames cost.',
  level: 2,
  onTheSpot: true,
  givens: [
    {
      name: 'angle',
      label: 'Shutter angle',
      quantity: 'angle',
      typed: '180°',
      draw: '45°; 90°; 120°; 144°; 172.8°; 180°; 200°; 216°; 270°',
    },
    {
      name: 'fps',
      label: 'Frame rate',
      quantity: 'frameRate',
      typed: '25 fps',
      draw: '12 fps; 24 fps; 25 fps; 30 fps',
    },
    {
      name: 'fast',
      label: 'One shot is taken at the same angle at',
      quantity: 'frameRate',
      typed: '100 fps',
      draw: '40 fps; 48 fps; 50 fps; 60 fps; 75 fps; 96 fps; 100 fps; 120 fps; 150 fps; 200 fps',
    },
    {
      name: 'stop',
      label: 'The lens is set to',
      quantity: 'fNumber',
      typed: 'f/8',
      draw: wholeMarks,
    },
  ],
  conditions: ['=FRAMESTOPS($fast,$fps)<=4', '=FNUMBERAT($stop,-FRAMESTOPS($fast,$fps))>=0.95'],
  questions: [
    {
      text: 'How long is each frame of the other shots exposed?',
      quantity: 'time',
      tolerance: '3 %',
      points: 2,
      hint: 'The angle is a share of the whole turn of 360°.',
      expected: '=SHUTTERTIME($angle,$fps)',
      solution: '{$angle} of 360° of one frame at {$fps}: {SHUTTERTIME($angle,$fps)}.',
      mistakes: [
        { kind: 'other', says: 'left out the angle', formula: '=1/$fps' },
        { kind: 'wrongSide', formula: '=360/$angle/$fps' },
      ],
    },
    {
      text: 'How many stops more light does the fast shot need?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 1,
      hint: 'Twice the frames is half of the time for each.',
      expected: '=FRAMESTOPS($fast,$fps)',
      solution: 'log2 of {$fast} over {$fps}: {FRAMESTOPS($fast,$fps)}.',
      mistakes: [{ kind: 'wrongSign', formula: '=-FRAMESTOPS($fast,$fps)' }],
    },
    {
      text: 'If the light stays: to what f-number is the lens opened for it?',
      quantity: 'fNumber',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'A stop wider for each halving of the time.',
      expected: '=FNUMBERAT($stop,-FRAMESTOPS($fast,$fps))',
      solution:
        '{FRAMESTOPS($fast,$fps)} under {$stop}: {FNUMBERAT($stop,-FRAMESTOPS($fast,$fps))}.',
      mistakes: [
        { kind: 'wrongSign', formula: '=FNUMBERAT($stop,FRAMESTOPS($fast,$fps))' },
        { kind: 'forgotSquare', formula: '=FNUMBERAT($stop,-2*FRAMESTOPS($fast,$fps))' },
      ],
    },
  ],
};
