import { choice, heading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, row, rows } from './columns.ts';

type Piece = readonly [name: string, mired: string, duv: string, loss: string];

const strengths = ['Full', 'Half', 'Quarter', 'Eighth'] as const;

/** Invented, in round figures: oranges and blues by mired, magentas and greens by Duv. */
const pieces: readonly Piece[] = [
  ...paired('orange', ['160', '80', '40', '20'], '0', ['0.75', '0.45', '0.25', '0.15']),
  ...paired('blue', ['-140', '-70', '-35', '-18'], '0', ['1.6', '0.9', '0.5', '0.3']),
  ...tinted(
    'magenta',
    ['-0.0160', '-0.0080', '-0.0040', '-0.0020'],
    ['0.8', '0.45', '0.25', '0.15'],
  ),
  ...tinted('green', ['0.0160', '0.0080', '0.0040', '0.0020'], ['0.4', '0.2', '0.1', '0.05']),
];

function paired(
  colour: string,
  mired: readonly string[],
  duv: string,
  loss: readonly string[],
): Piece[] {
  return strengths.map((strength, index) => [
    `${strength} ${colour}`,
    mired[index] ?? '0',
    duv,
    loss[index] ?? '0',
  ]);
}

function tinted(colour: string, duv: readonly string[], loss: readonly string[]): Piece[] {
  return strengths.map((strength, index) => [
    `${strength} ${colour}`,
    '0',
    duv[index] ?? '0',
    loss[index] ?? '0',
  ]);
}

/** The kit: room for twenty pieces, sixteen of them invented. */
export const kitRows = (): Record<string, PlannedCell> => ({
  [`A${rows.kit.head - 1}`]: heading('The kit, from your swatch book: these are invented'),
  ...captionRow(rows.kit.head, { source: 'Piece', role: 'Shift', may: 'Tint', kelvin: 'Loses' }),
  [`B${rows.kit.head}`]: { typed: 'Shift', bold: true, align: 'right' },
  [`C${rows.kit.head}`]: { typed: 'Tint', bold: true, align: 'right' },
  ...Object.assign(
    {},
    ...Array.from({ length: rows.kit.last - rows.kit.first + 1 }, (_, index) => {
      const [name, mired, duv, loss] = pieces[index] ?? ['', '', '', ''];
      return row(rows.kit.first + index, {
        source: choice(name, 'text'),
        role: choice(mired, 'mired'),
        may: choice(duv, 'duv'),
        kelvin: choice(loss, 'stops'),
      });
    }),
  ),
});
