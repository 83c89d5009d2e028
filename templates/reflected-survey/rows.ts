import { choice, heading, numberHeading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { above, below, fixed } from './camera.ts';
import { signalAt, type SignalPlace } from './signal.ts';

/** A place in the frame, and where it is wanted from grey. */
export interface PlannedSpot {
  readonly point: string;
  readonly wanted?: string;
  readonly reading?: string;
  readonly note?: string;
}

/** Row of the captions of the spot readings. */
export const head = 8;

export const widths = [176, 96, 112, 100, 172, 96, 96, 96, 120, 84, 220];

export const captions: Readonly<Record<string, PlannedCell>> = {
  [`A${head}`]: heading('Spot reading'),
  [`B${head}`]: numberHeading('Wanted'),
  [`C${head}`]: numberHeading('Reading'),
  [`D${head}`]: numberHeading('From grey'),
  [`E${head}`]: heading('Verdict'),
  [`F${head}`]: numberHeading('Signal'),
  [`G${head}`]: numberHeading('Above'),
  [`H${head}`]: numberHeading('Below'),
  [`I${head}`]: numberHeading('Should read'),
  [`J${head}`]: numberHeading('Light'),
  [`K${head}`]: heading('Note'),
};

export function spotRow(
  { point, wanted = '', reading = '', note = '' }: PlannedSpot,
  index: number,
  signal: SignalPlace,
): Record<string, PlannedCell> {
  const row = String(head + 1 + index);
  const of = (column: string): string => column + row;
  const grey = fixed('grey');
  const should = `LEVELAT(${grey},${of('B')})`;
  const off = `${of('D')}-${of('B')}`;
  const placed = `PLACEMENT(${of('D')},${above},${below})`;
  const unlessWanted = (then: string) => `=IF(ISBLANK(${of('B')}),"",${then})`;
  return {
    [of('A')]: words(point),
    [of('B')]: choice(wanted, 'stops'),
    [of('C')]: {
      typed: reading,
      role: 'reading',
      quantity: 'luminance',
      target: `=${should}`,
    },
    [of('D')]: { typed: `=STOPS(${of('C')},${grey})` },
    // What the camera cannot hold matters more than what was wanted.
    [of('E')]: {
      typed: `=IF(OR(ISBLANK(${of('B')}),${placed}<>"in range"),${placed},VERDICT(${off}))`,
      quantity: 'verdict',
    },
    [of('F')]: signalAt(of('D'), signal),
    [of('G')]: { typed: `=HEADROOM(${of('C')},${grey},${above})`, decimals: 1 },
    [of('H')]: { typed: `=FOOTROOM(${of('C')},${grey},${below})`, decimals: 1 },
    [of('I')]: { typed: unlessWanted(should), quantity: 'luminance' },
    [of('J')]: {
      typed: unlessWanted(`IF(VERDICT(${off})="agrees","",STOPFACTOR(-(${off})))`),
      quantity: 'factor',
    },
    [of('K')]: { typed: note, quantity: 'text' },
  };
}
