import { choice, heading, numberHeading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { circuits, down, loads, once, settings } from './places.ts';

/** A circuit of the house as it is found: what it draws before anything of ours is plugged in. */
export interface PlannedCircuit {
  readonly name: string;
  /** L1, L2 or L3. */
  readonly phase: string;
  readonly breaker: string;
  readonly house?: { readonly watts: string; readonly powerFactor: string };
}

const captions: readonly PlannedCell[] = [
  heading('Circuit'),
  heading('In words'),
  heading('Phase'),
  numberHeading('Breaker'),
  numberHeading('House draws'),
  numberHeading('its power factor'),
  numberHeading('Ours'),
  numberHeading('In all'),
  numberHeading('Of breaker'),
  numberHeading('Free'),
  numberHeading('All struck at once'),
  numberHeading('Leakage, mA'),
];

export const captionRow = (row: number, cells: readonly PlannedCell[]) =>
  Object.fromEntries(cells.map((cell, index) => [`${'ABCDEFGHIJKL'[index]}${row}`, cell]));

/** What is amiss with a circuit, the gravest first. */
function inWords(row: number): string {
  const { share, opensAt, device, leakShare } = settings;
  const amps = (formula: string) => `ROUND(${formula},1)&" A"`;
  return once(
    `A${row}`,
    `IF(J${row}<0,"over by "&${amps(`-J${row}`)},` +
      `IF(L${row}>${device}*${leakShare},"leakage: spread over more devices",` +
      `IF(K${row}>${opensAt}*D${row},"strike one after the other",` +
      `IF(COUNTIF(${down('B', loads)},A${row})=0,"nothing of ours, ","")&${amps(`D${row}*${share}-H${row}`)}&" free")))`,
  );
}

function circuitRow(row: number, planned: PlannedCircuit | undefined): Record<string, PlannedCell> {
  const { volts, share } = settings;
  const name = `A${row}`;
  const sum = (column: string) => `SUMIF(${down('B', loads)},${name},${down(column, loads)})`;
  return {
    [name]: choice(planned?.name ?? '', 'text'),
    [`C${row}`]: choice(planned?.phase ?? '', 'text'),
    [`D${row}`]: choice(planned?.breaker ?? '', 'current'),
    [`E${row}`]: choice(planned?.house?.watts ?? '', 'power'),
    [`F${row}`]: choice(planned?.house?.powerFactor ?? '', 'number'),
    [`G${row}`]: { typed: once(name, sum('G')), quantity: 'current', decimals: 1 },
    [`H${row}`]: {
      typed: once(name, `G${row}+IF(ISBLANK(E${row}),0,AMPS(E${row},${volts},F${row}))`),
      quantity: 'current',
      decimals: 1,
    },
    [`I${row}`]: { typed: once(name, `H${row}/D${row}`), quantity: 'share', decimals: 0 },
    [`J${row}`]: {
      typed: once(name, `D${row}*${share}-H${row}`),
      quantity: 'current',
      decimals: 1,
    },
    [`K${row}`]: {
      typed: once(name, `H${row}-G${row}+${sum('I')}`),
      quantity: 'current',
      decimals: 0,
    },
    [`L${row}`]: { typed: once(name, sum('L')), quantity: 'number', decimals: 1 },
    [`B${row}`]: { typed: inWords(row), quantity: 'text' },
  };
}

export const circuitTable = (planned: readonly PlannedCircuit[]): Record<string, PlannedCell> => ({
  ...captionRow(circuits.head, captions),
  ...Object.assign(
    {},
    ...Array.from({ length: circuits.last - circuits.head }, (_, index) =>
      circuitRow(circuits.first + index, planned[index]),
    ),
  ),
});
