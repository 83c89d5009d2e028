import { buildBook } from '../build.ts';
import { choice, given, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { circuitTable, type PlannedCircuit } from './circuits.ts';
import { loadTable, type PlannedLoad } from './loads.ts';
import { batteries } from './places.ts';
import {
  batteryTable,
  leadTable,
  phaseTable,
  supplyTable,
  type PlannedBattery,
  type PlannedLead,
} from './supply.ts';

export interface PlannedPower {
  readonly circuits: readonly PlannedCircuit[];
  readonly loads: readonly PlannedLoad[];
  readonly leads: readonly PlannedLead[];
  readonly batteries: readonly PlannedBattery[];
}

const reckoning = [
  'Currents of unlike loads are added as numbers, which is on the safe side. A power factor is asked for and never assumed: 1 for tungsten only.',
  'Of breaker and headroom are local rules: set them as the code and the house say. A lead on its drum carries far less than one laid out.',
];

const cautions = [
  'A planning aid only. The local code and a qualified electrician decide what may be connected, and test it before it is used.',
  'Never defeat an earth leakage device or a breaker that keeps opening: find out why. Keep every plug, joint and board dry and off the ground.',
  'Loads of hours heat plugs, drums and boards: unroll leads fully, feel for warmth on the way, and keep them where nobody trips.',
  'A generator stands outside, away from openings: its exhaust kills. Earthing it is a job for a competent person.',
];

const settingsRows: Readonly<Record<string, PlannedCell>> = {
  A1: words('Mains'),
  B1: { ...choice('230 V', 'voltage'), align: 'left' },
  C1: words('Of a breaker'),
  D1: {
    ...choice('80 %', 'share'),
    note: 'What a load of hours may take of a breaker: a local rule.',
  },
  E1: words('Opens from'),
  F1: {
    ...given('3×', 'factor'),
    note: 'The earliest at which a breaker of type B opens at once: 3 to 5 times its rating (IEC 60898-1, from memory).',
  },
  G1: words('Device, mA'),
  H1: { ...given('30', 'number'), note: 'What the earth leakage device opens at.' },
  I1: words('counted on'),
  J1: {
    ...given('30 %', 'share'),
    note: 'Standing leakage to plan for, so that the device stays closed: common practice.',
  },
  A2: words('Drop allowed'),
  B2: {
    ...choice('5 %', 'share'),
    align: 'left',
    note: 'From the supply to the fixture; the local code says how much.',
  },
  C2: words('Headroom'),
  D2: { ...choice('25 %', 'share'), note: 'What a generator has over what is asked of it.' },
  E2: words('To neutral'),
  F2: {
    ...choice('100 %', 'share'),
    note: 'How much of the electronic loads’ current adds up in the neutral. Less only where the maker states how few harmonics there are; without correction it can reach 173 %.',
  },
};

/** What is plugged in where, and whether the house, the leads and the devices carry it. */
export const powerSheet = (planned: PlannedPower): PlannedSheet => ({
  name: 'Power',
  title: 'Power',
  purpose: 'What is plugged in where, and whether circuits, leads and supply carry it.',
  phase: 'rig',
  template: 'power',
  widths: [208, 272, 104, 96, 108, 120, 96, 116, 104, 96, 136, 116],
  cells: {
    ...settingsRows,
    ...circuitTable(planned.circuits),
    ...loadTable(planned.loads),
    ...phaseTable(),
    ...supplyTable(),
    ...leadTable(planned.leads),
    ...batteryTable(planned.batteries),
    ...remarks('How it is counted', batteries.last + 2, reckoning),
    ...remarks('Cautions', batteries.last + 4 + reckoning.length, cautions),
  },
});

/** The sail loft: three circuits of the house, and what the interview takes. Invented. */
export const loft: PlannedPower = {
  circuits: [
    {
      name: 'blue',
      phase: 'L1',
      breaker: '16 A',
      house: { watts: '400 W', powerFactor: '0.9' },
    },
    { name: 'red', phase: 'L2', breaker: '16 A' },
    {
      name: 'bench',
      phase: 'L3',
      breaker: '10 A',
      house: { watts: '150 W', powerFactor: '0.6' },
    },
  ],
  loads: [
    {
      fixture: 'Soft panel, key',
      count: '1',
      watts: '300 W',
      powerFactor: '0.95',
      circuit: 'blue',
      strike: '12',
      electronic: 'yes',
      leakage: '1.5',
    },
    {
      fixture: 'Soft panel, fill',
      count: '1',
      watts: '300 W',
      powerFactor: '0.95',
      circuit: 'blue',
      strike: '12',
      electronic: 'yes',
      leakage: '1.5',
    },
    {
      fixture: 'Fresnel 650',
      count: '2',
      watts: '650 W',
      powerFactor: '1',
      circuit: 'red',
      strike: '12',
      electronic: 'no',
      leakage: '0.1',
    },
    {
      fixture: 'Open face 800',
      count: '2',
      watts: '800 W',
      powerFactor: '1',
      circuit: 'red',
      strike: '12',
      electronic: 'no',
      leakage: '0.1',
    },
    {
      fixture: 'Tube 120',
      count: '4',
      watts: '50 W',
      powerFactor: '0.6',
      circuit: 'bench',
      strike: '30',
      electronic: 'yes',
      leakage: '0.5',
    },
  ],
  leads: [
    { name: 'Board to loft', amps: '=H6', length: '30 m', section: '2.5 mm2' },
    { name: 'Along the quay', amps: '=H6', length: '80 m', section: '2.5 mm2' },
  ],
  batteries: [{ name: 'Tube in the boat', energy: '150 Wh', watts: '50 W', efficiency: '85 %' }],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [powerSheet(loft)] });
