import { buildBook } from '../build.ts';
import { choice, given, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { widths } from './columns.ts';
import { circuitTable, lampsOffTable, surfaceTable } from './house.ts';
import { harbourRecce } from './harbour.ts';
import { lampsOff, placeTable } from './places.ts';
import { windowTable } from './windows.ts';
import type { PlannedRecce } from './planned.ts';

const reckoning = [
  'The sun comes in while it stands over the skyline and less than Sideways aside of straight on: upright windows, to a minute or two, no cloud.',
  'Sky: the open sky by IES RP-21 for the sun’s altitude at the hour of the place, the same all over; below the level of the mark ground that sends back its share. Good to about a stop.',
  'Free is the share of the breaker that a load of hours may take, less what the house draws. A power factor is asked for and never assumed.',
  'Photos and notes are kept on the readings: choose a reading, then Note or Photo on its Slip.',
];

const cautions = [
  'The board is for a qualified electrician: do not open it, and have circuits and earth leakage devices tested before anything is plugged in. The local code decides.',
  'Beams, hooks and ceilings carry what a competent person says they carry. Ask before anything hangs overhead.',
  'Keep lamps off curtains, old timber, dust and sail cloth; keep exits, hydrants and detectors free. Near water, salt and damp, mains is for people who are trained for it.',
  'Ladders and lofts: working at height needs a competent person. Where the public or children come through, ask who is responsible on the day.',
  'Never look at the sun through a viewfinder or a lens, and never leave a lens turned to a window that it will come in at.',
];

/** What a room is like before a single lamp is in it. */
export const recceSheet = (planned: PlannedRecce): PlannedSheet => ({
  name: 'Recce',
  title: 'Recce',
  purpose: 'When the sun is in which window, what daylight gives, and what the house carries.',
  phase: 'recce',
  template: 'recce',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('Mains'),
    B1: choice('230 V', 'voltage'),
    D1: words('Of a breaker'),
    E1: {
      ...choice('80 %', 'share'),
      note: 'What a load of hours may take of a breaker: a local rule.',
    },
    G1: words('Meter at'),
    H1: choice(planned.meterAt, 'iso'),
    J1: words('Exposure'),
    K1: choice(planned.exposure, 'time'),
    M1: words('Ground'),
    O1: { ...given('20 %', 'share'), note: 'What ground and houses outside send back.' },
    ...placeTable(planned.places),
    ...windowTable(planned.windows),
    ...circuitTable(planned.circuits),
    ...surfaceTable(planned.surfaces),
    ...lampsOffTable(planned.lampsOff),
    ...remarks('How it is reckoned', lampsOff.last + 2, reckoning),
    ...remarks('Cautions', lampsOff.last + 4 + reckoning.length, cautions),
  },
});

export const build = () => buildBook({ title: 'Untitled', sheets: [recceSheet(harbourRecce)] });
