import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, letterOf, row, type ColumnName } from './columns.ts';
import { circuits, lampsOff, settings, surfaces } from './places.ts';

type Cells = Record<string, PlannedCell>;

const rowsOf = <T>(
  { head, first, last }: typeof circuits,
  planned: readonly T[],
  make: (at: number, one?: T) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, planned[index])),
  );

const onceOf = (at: number) => (formula: string) => `=IF(ISBLANK(A${at}),"",${formula})`;

export interface PlannedCircuit {
  readonly name: string;
  readonly place: string;
  readonly breaker: string;
  readonly device?: string;
  /** What the house draws on it already, with all that runs while the film is there. */
  readonly watts?: string;
  readonly powerFactor?: string;
  readonly phase?: string;
  readonly sockets?: string;
  readonly where?: string;
}

/** Where the circuits have what. */
export const wired = {
  breaker: 'width',
  device: 'height',
  watts: 'sill',
  powerFactor: 'bearing',
  takes: 'skyline',
  free: 'sideways',
  phase: 'glass',
  sockets: 'markOff',
  where: 'comesIn',
} as const satisfies Record<string, ColumnName>;

/** The address of what a circuit has, for other sheets. */
export const circuitAt = (index: number, what: keyof typeof wired | 'name'): string =>
  `${what === 'name' ? 'A' : letterOf(wired[what])}${circuits.first + index}`;

function circuitRow(at: number, planned?: PlannedCircuit): Cells {
  const is = (what: keyof typeof wired) => `${letterOf(wired[what])}${at}`;
  const once = onceOf(at);
  const amps = `TEXT(ROUNDDOWN(ABS(${is('free')}),1),"0.0")&" A `;
  return row(at, {
    name: choice(planned?.name ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    words: {
      typed: once(
        `IF(${is('free')}<0,${amps}too much on the "&A${at}&" circuit already",${amps}free on the "&A${at}&" circuit")`,
      ),
      quantity: 'text',
    },
    [wired.breaker]: choice(planned?.breaker ?? '', 'current'),
    [wired.device]: choice(planned?.device ?? '', 'number'),
    [wired.watts]: choice(planned?.watts ?? '', 'power'),
    [wired.powerFactor]: choice(planned?.powerFactor ?? '', 'number'),
    [wired.takes]: {
      typed: once(
        `IF(ISBLANK(${is('watts')}),0,AMPS(${is('watts')},${settings.volts},${is('powerFactor')}))`,
      ),
      quantity: 'current',
      decimals: 1,
    },
    [wired.free]: {
      typed: once(`${is('breaker')}*${settings.share}-${is('takes')}`),
      quantity: 'current',
      decimals: 1,
    },
    [wired.phase]: { ...choice(planned?.phase ?? '', 'text'), align: 'right' },
    [wired.sockets]: choice(planned?.sockets ?? '', 'number'),
    [wired.where]: choice(planned?.where ?? '', 'text'),
  });
}

export const circuitTable = (planned: readonly PlannedCircuit[]): Cells => ({
  ...captionRow(circuits.head, {
    name: 'Circuit',
    place: 'Place',
    words: 'In words',
    width: 'Breaker',
    height: 'Device, mA',
    sill: 'House draws',
    bearing: 'power factor',
    skyline: 'House takes',
    sideways: 'Free',
    glass: 'Phase',
    markOff: 'Sockets',
    comesIn: 'Where',
  }),
  ...rowsOf(circuits, planned, circuitRow),
});

export interface PlannedSurface {
  readonly name: string;
  readonly place: string;
  readonly kind: string;
  readonly lux: string;
  readonly luminance: string;
}

function surfaceRow(at: number, planned?: PlannedSurface): Cells {
  const [lux, luminance, share] = [letterOf('width'), letterOf('height'), letterOf('sill')];
  const once = onceOf(at);
  return row(at, {
    name: choice(planned?.name ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    words: choice(planned?.kind ?? '', 'text'),
    width: { ...choice(planned?.lux ?? '', 'illuminance'), role: 'reading' },
    height: { ...choice(planned?.luminance ?? '', 'luminance'), role: 'reading' },
    sill: {
      typed: once(`REFLECTANCEOF(${luminance}${at},${lux}${at})`),
      quantity: 'share',
      decimals: 0,
    },
    bearing: {
      typed: once(`LOG(${share}${at}/18%,2)`),
      quantity: 'stops',
      decimals: 1,
    },
  });
}

export const surfaceTable = (planned: readonly PlannedSurface[]): Cells => ({
  ...captionRow(surfaces.head, {
    name: 'Surface',
    place: 'Place',
    words: 'What it is',
    width: 'Light on it',
    height: 'Spot',
    sill: 'Reflects',
    bearing: 'From 18 %',
  }),
  ...rowsOf(surfaces, planned, surfaceRow),
});

export interface PlannedLampsOff {
  readonly point: string;
  readonly place: string;
  readonly note: string;
  readonly reading: string;
  readonly receptor: 'dome' | 'flat';
  readonly time: string;
  readonly kelvin?: string;
}

function lampsOffRow(at: number, planned?: PlannedLampsOff): Cells {
  const [reading, receptor] = [`${letterOf('width')}${at}`, `${letterOf('height')}${at}`];
  return row(at, {
    name: choice(planned?.point ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    words: choice(planned?.note ?? '', 'text'),
    width: { typed: planned?.reading ?? '', role: 'reading' },
    height: { ...choice(planned?.receptor ?? '', 'text'), align: 'right' },
    sill: choice(planned?.time ?? '', 'dateTime'),
    bearing: { typed: planned?.kelvin ?? '', role: 'reading', quantity: 'colourTemperature' },
    skyline: {
      typed: onceOf(at)(`READINGLUX(${reading},${receptor},${settings.meterAt},${settings.time})`),
      quantity: 'illuminance',
      decimals: 0,
    },
  });
}

export const lampsOffTable = (planned: readonly PlannedLampsOff[]): Cells => ({
  ...captionRow(lampsOff.head, {
    name: 'Lamps off',
    place: 'Place',
    words: 'Note',
    width: 'Reading',
    height: 'Meter',
    sill: 'Time',
    bearing: 'Colour',
    skyline: 'In lux',
  }),
  ...rowsOf(lampsOff, planned, lampsOffRow),
});
