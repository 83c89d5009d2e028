import { heading, numberHeading } from '../../../templates/cells.ts';
import type { PlannedCell } from '../../../templates/plan.ts';
import type { SetExercise } from './sheet.ts';

const rows = Array.from({ length: 37 }, (_, index) => ({ row: index + 2, nm: 400 + 10 * index }));
const last = rows.at(-1)?.row ?? 2;
const light = `$D$2:$E$${last}`;
const filter = `$G$2:$H$${last}`;
const powers = `$E$2:$E$${last}`;
const shares = `$H$2:$H$${last}`;

const band = (name: string, centre: number, width: number, nm: string) =>
  `$${name}/1000*EXP(-(((${nm}-${centre})/${width})^2))`;

/** The light of three emitters and a filter, each in two columns. */
const tables: Record<string, PlannedCell> = {
  D1: heading('nm'),
  E1: numberHeading('W/(m²·nm)'),
  G1: heading('nm'),
  H1: numberHeading('passes'),
  ...Object.fromEntries(
    rows.flatMap(({ row, nm }) => [
      [`D${row}`, { typed: String(nm) }],
      [
        `E${row}`,
        {
          typed: `=${band('blue', 450, 18, `D${row}`)}+${band('green', 530, 30, `D${row}`)}+${band('red', 630, 22, `D${row}`)}`,
          decimals: 5,
        },
      ],
      [`G${row}`, { typed: String(nm) }],
      [`H${row}`, { typed: `=$least+($most-$least)/(1+EXP(-(G${row}-$edge)/15))`, decimals: 3 }],
    ]),
  ),
};

export const spectra: SetExercise = {
  id: 'spectra',
  title: 'A spectrum and a filter',
  purpose: 'Where a light is strongest, what the eye makes of it, and what a filter takes from it.',
  level: 3,
  onTheSpot: true,
  beside: tables,
  givens: [
    {
      name: 'blue',
      label: 'Blue emitter at 450 nm, mW/(m²·nm)',
      quantity: 'number',
      typed: '6',
      draw: '1 to 12, step 0.5',
    },
    {
      name: 'green',
      label: 'Green emitter at 530 nm',
      quantity: 'number',
      typed: '4',
      draw: '1 to 12, step 0.5',
    },
    {
      name: 'red',
      label: 'Red emitter at 630 nm',
      quantity: 'number',
      typed: '8',
      draw: '1 to 12, step 0.5',
    },
    {
      name: 'edge',
      label: 'The filter passes what is longer than, nm',
      quantity: 'number',
      typed: '550',
      draw: '480 to 600, step 10',
    },
    {
      name: 'most',
      label: 'of which it passes',
      quantity: 'share',
      typed: '90 %',
      draw: '75 % to 95 %, step 5 %',
    },
    {
      name: 'least',
      label: 'and of what is shorter',
      quantity: 'share',
      typed: '5 %',
      draw: '2 % to 20 %, step 2 %',
    },
  ],
  conditions: [
    '=MAX($blue,$green,$red)>=LARGE(B2:B4,2)+1',
    `=SPECTRUMLOSS(${light},${filter})>=0.4`,
  ],
  questions: [
    {
      text: 'At what wavelength, in nanometres, is the light strongest?',
      quantity: 'number',
      tolerance: '5',
      points: 1,
      hint: 'Go down the column of the powers.',
      expected: `=SPECTRUMPEAK(${light})`,
      solution: `The highest of the powers stands at {SPECTRUMPEAK(${light})} nm.`,
      mistakes: [
        { kind: 'other', says: 'took the wavelength that the eye sees best', formula: '=555' },
      ],
    },
    {
      text: 'How many lux are that? (A formula may be the answer.)',
      quantity: 'illuminance',
      tolerance: '4 %',
      points: 2,
      hint: 'Each power counts as the eye weighs its wavelength: SPECTRUMLUX does it.',
      expected: `=SPECTRUMLUX(${light})`,
      solution: `683 times the sum of power, weight of the eye and the step of 10 nm: {SPECTRUMLUX(${light})}.`,
      mistakes: [
        {
          kind: 'other',
          says: 'left out how the eye weighs it',
          formula: `=683*SUM(${powers})*10`,
        },
      ],
    },
    {
      text: 'How many stops does the filter take from this light?',
      quantity: 'stops',
      tolerance: '1/6 stop',
      points: 2,
      hint: 'Lux without and with the filter, against each other.',
      expected: `=SPECTRUMLOSS(${light},${filter})`,
      solution: `{SPECTRUMLUX(${light})} without, {SPECTRUMLUX(${light},${filter})} with it: {SPECTRUMLOSS(${light},${filter})}.`,
      mistakes: [
        { kind: 'wrongSign', formula: `=-SPECTRUMLOSS(${light},${filter})` },
        {
          kind: 'other',
          says: 'left out how the eye weighs it',
          formula: `=LN(SUM(${powers})/SUMPRODUCT(${powers},${shares}))/LN(2)`,
        },
      ],
    },
  ],
};
