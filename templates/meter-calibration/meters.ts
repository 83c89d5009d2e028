import { choice, given, heading, numberHeading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';

/** A meter as its own data say it is. */
export interface PlannedMeter {
  readonly name: string;
  /** dome, flat or spot. */
  readonly receptor: string;
  /** Incident constant C of the dome and of the flat receptor, reflected constant K of the spot. */
  readonly constants: readonly [dome: string, flat: string, spot: string];
}

const rows = { first: 2, second: 3 } as const;
type Which = keyof typeof rows;

/** Speed and exposure time to meter at. */
const [speed, time] = ['$B$4', '$D$4'];

export const nameOf = (which: Which): string => `$B$${rows[which]}`;
export const receptorOf = (which: Which): string => `$C$${rows[which]}`;

/** A reading of that meter by its own constant. */
export const asFNumber = (reading: string, which: Which): string => asked('F', reading, which);
export const asLux = (reading: string, which: Which): string => asked('LUX', reading, which);

function asked(as: 'F' | 'LUX', reading: string, which: Which): string {
  const at = rows[which];
  return `READING${as}(${reading},$C$${at},${speed},${time},$D$${at},$E$${at},$F$${at})`;
}

/** The constant of the receptor that was metered with. */
export const constantOf = (which: Which): string => {
  const at = rows[which];
  return `IF($C$${at}="spot",$F$${at},IF($C$${at}="flat",$E$${at},$D$${at}))`;
};

function meterRow(label: string, at: number, planned: PlannedMeter): Record<string, PlannedCell> {
  const [dome, flat, spot] = planned.constants;
  return {
    [`A${at}`]: words(label),
    [`B${at}`]: choice(planned.name, 'text'),
    [`C${at}`]: { ...choice(planned.receptor, 'text'), note: 'dome, flat or spot.' },
    [`D${at}`]: given(dome, 'number'),
    [`E${at}`]: given(flat, 'number'),
    [`F${at}`]: given(spot, 'number'),
  };
}

/** The two meters, and what they are set to. */
export const metersHead = (
  first: PlannedMeter,
  second: PlannedMeter,
): Record<string, PlannedCell> => ({
  A1: heading('Meter'),
  B1: heading('Name'),
  C1: heading('Receptor'),
  D1: numberHeading('Dome C'),
  E1: numberHeading('flat C'),
  F1: numberHeading('spot K'),
  ...meterRow('First', rows.first, first),
  ...meterRow('Second', rows.second, second),
  A4: words('Both set to'),
  B4: { ...choice('800', 'iso'), align: 'left' },
  C4: words('and'),
  D4: choice('1/50 s', 'time'),
});
