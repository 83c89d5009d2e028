import { choice, given, heading, numberHeading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';

/** Stops from what the stop puts at grey, and the signal there, as they are typed. */
export type SignalRow = readonly [stops: string, signal: string];

export interface SignalPlace {
  /** The row of the captions; the table begins below it. */
  readonly head: number;
  readonly rows: number;
}

const column = (letter: string, { head, rows }: SignalPlace): string =>
  `$${letter}$${String(head + 1)}:$${letter}$${String(head + rows)}`;

/** Both columns of the table, for the ladder. */
export const tableOf = ({ head, rows }: SignalPlace): string =>
  `A${String(head + 1)}:B${String(head + rows)}`;

/** The signal at so many stops from grey: straight between the rows of the table, nothing beyond its ends. */
export function signalAt(stops: string, place: SignalPlace): PlannedCell {
  const [at, level] = [column('A', place), column('B', place)];
  const row = `MATCH(${stops},${at},1)`;
  const [low, high] = [`INDEX(${at},${row})`, `INDEX(${at},${row}+1)`];
  const [from, to] = [`INDEX(${level},${row})`, `INDEX(${level},${row}+1)`];
  return {
    typed:
      `=IF(COUNT(${level})<ROWS(${level}),"gap in table",` +
      `IF(OR(${stops}<MIN(${at}),${stops}>MAX(${at})),"off table",` +
      `IF(${stops}=MAX(${at}),${from},` +
      `${from}+(${stops}-${low})/(${high}-${low})*(${to}-${from}))))`,
    quantity: 'share',
    decimals: 0,
    align: 'right',
  };
}

/** The user’s own table of stops to signal, from the darkest up. */
export function signalTable(
  rows: readonly SignalRow[],
  place: SignalPlace,
): Record<string, PlannedCell> {
  const first = place.head + 1;
  const last = place.head + place.rows;
  const rising = `SUMPRODUCT(--(A${String(first + 1)}:A${String(last)}<=A${String(first)}:A${String(last - 1)}))=0`;
  return {
    [`A${String(place.head)}`]: numberHeading('Stops from grey'),
    [`B${String(place.head)}`]: numberHeading('Signal'),
    [`C${String(place.head)}`]: {
      ...heading(`=IF(${rising},"","Write it from the darkest up.")`),
      quantity: 'text',
    },
    ...Object.fromEntries(
      rows.flatMap(([stops, signal], index) => [
        [`A${String(first + index)}`, given(stops, 'stops')],
        [`B${String(first + index)}`, { ...choice(signal, 'share'), decimals: 1 }],
      ]),
    ),
  };
}

/**
 * Hybrid log-gamma (ITU-R BT.2100) with middle grey at 38 % (ITU-R BT.2408), to a tenth of a per cent:
 * a curve to begin with that belongs to no camera.
 */
export const startingTable: readonly SignalRow[] = [
  ['-5', '6.7 %'],
  ['-4', '9.5 %'],
  ['-3', '13.4 %'],
  ['-2', '19 %'],
  ['-1', '26.9 %'],
  ['0', '38 %'],
  ['+1', '53.5 %'],
  ['+2', '68.6 %'],
  ['+3', '82.2 %'],
  ['+4', '95.2 %'],
];
