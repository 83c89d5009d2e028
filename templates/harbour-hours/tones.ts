import { surveySheet } from '../reflected-survey/plan.ts';

/** The frame of the interview by spot meter, and the table of the camera it is shot with. Invented. */
export const tones = surveySheet({
  name: 'Reflected survey',
  tolerance: 1 / 4,
  spots: [
    { point: 'Window gap', reading: '1.2 kcd/m2', note: 'a hand wide; clips on purpose' },
    { point: 'Lantern glass', wanted: '+5', reading: '190 cd/m2' },
    {
      point: 'Sailcloth in the key',
      wanted: '+2',
      reading: '31 cd/m2',
      note: 'net over the top third',
    },
    { point: 'Face, key side', wanted: '+1', reading: '14 cd/m2' },
    { point: 'Grey card at face', wanted: '0', reading: '6.9 cd/m2' },
    { point: 'Face, fill side', wanted: '-1', reading: '1 fL' },
    { point: 'Canvas left', wanted: '-2', reading: '1.5 cd/m2' },
    { point: 'Rope coil', wanted: '-2 1/2', reading: '0.3 fL' },
    { point: 'Dark corner', wanted: '-3 1/2', reading: '0.55 cd/m2' },
    { point: 'Beam overhead', wanted: '-4', reading: '0.22 cd/m2' },
  ],
  signal: [
    ['-5', '4 %'],
    ['-4', '8 %'],
    ['-3', '15 %'],
    ['-2', '23 %'],
    ['-1', '32 %'],
    ['0', '41 %'],
    ['+1', '50 %'],
    ['+2', '59 %'],
    ['+3', '68 %'],
    ['+4', '77 %'],
    ['+5', '85 %'],
    ['+6', '92 %'],
    ['+6 1/2', '95 %'],
  ],
  about: ['Camera A, grey card under one lamp, read from the waveform on the test day.'],
});
