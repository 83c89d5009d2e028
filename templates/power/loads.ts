import { choice, heading, numberHeading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow } from './circuits.ts';
import { circuits, down, loads, once, settings } from './places.ts';

/** Fixtures of one kind on one circuit, as they are plugged in: whole ones, none split. */
export interface PlannedLoad {
  readonly fixture: string;
  readonly count: string;
  readonly watts: string;
  readonly powerFactor: string;
  readonly circuit: string;
  /** So many times the running current in the moment it is switched on. */
  readonly strike: string;
  readonly electronic: 'yes' | 'no';
  /** Milliamperes of one. */
  readonly leakage: string;
}

const captions: readonly PlannedCell[] = [
  heading('Fixture'),
  heading('Circuit'),
  heading('Phase'),
  numberHeading('Count'),
  numberHeading('Each draws'),
  numberHeading('Power factor'),
  numberHeading('Current'),
  numberHeading('Strikes at, times'),
  numberHeading('When struck'),
  heading('Electronic'),
  numberHeading('Each leaks, mA'),
  numberHeading('Leakage, mA'),
];

function loadRow(row: number, planned: PlannedLoad | undefined): Record<string, PlannedCell> {
  const name = `A${row}`;
  return {
    [name]: choice(planned?.fixture ?? '', 'text'),
    [`D${row}`]: choice(planned?.count ?? '', 'number'),
    [`E${row}`]: choice(planned?.watts ?? '', 'power'),
    [`F${row}`]: choice(planned?.powerFactor ?? '', 'number'),
    [`B${row}`]: choice(planned?.circuit ?? '', 'text'),
    [`C${row}`]: {
      typed: once(
        name,
        `IFERROR(INDEX(${down('C', circuits)},MATCH(B${row},${down('A', circuits)},0)),"no such circuit")`,
      ),
      quantity: 'text',
    },
    [`G${row}`]: {
      typed: once(name, `D${row}*AMPS(E${row},${settings.volts},F${row})`),
      quantity: 'current',
      decimals: 1,
    },
    [`H${row}`]: choice(planned?.strike ?? '', 'number'),
    [`I${row}`]: { typed: once(name, `G${row}*H${row}`), quantity: 'current', decimals: 0 },
    [`J${row}`]: choice(planned?.electronic ?? '', 'text'),
    [`K${row}`]: choice(planned?.leakage ?? '', 'number'),
    [`L${row}`]: { typed: once(name, `D${row}*K${row}`), quantity: 'number', decimals: 1 },
  };
}

export const loadTable = (planned: readonly PlannedLoad[]): Record<string, PlannedCell> => ({
  ...captionRow(loads.head, captions),
  ...Object.assign(
    {},
    ...Array.from({ length: loads.last - loads.head }, (_, index) =>
      loadRow(loads.first + index, planned[index]),
    ),
  ),
});
