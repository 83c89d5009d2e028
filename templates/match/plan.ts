import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { advice } from './advice.ts';
import { channelRows, type PlannedChannel } from './channels.ts';
import { captionRow, captions, down, rows, white, widths } from './columns.ts';
import { kitRows } from './kit.ts';
import { allLose, sourceRow, staysOff, type PlannedSource } from './sources.ts';
import { windowRows, type PlannedWindow } from './windows.ts';

const reckoning = [
  'A reading is kelvin and tint (Duv, positive is green), or x and y. A tint left blank is none. The level is of that source alone.',
  'Shifts in mired and Duv are taken to add: true for smooth spectra near the light that the book was made for. Tubes and cheap LED have gaps: meter again through the piece.',
  'Nearest is nearest in u′v′. A piece, or a second one of the other sort, goes on only where it brings the light nearer by more than 0.0011, which is hardly seen; no orange on what is not too blue, no magenta on what is not too green.',
  'The order goes by loss, the least first. Balance asks of each source what all would lose if the camera were balanced to it; one that cannot be filtered (no) and stays off outweighs any loss. One that is off because you want it so says “meant” and is left out of both.',
  'Off the roll is whole strips, upright or lying, whichever takes less, in as many layers as there are pieces. The margin goes all round.',
];

const cautions = [
  'Filters on hot lamps fade, warp and burn: keep them off the lens and on the frame, and never close a lamp’s vents.',
  'A ladder at a window, wind on the sheet and glass behind it can hurt: ask who rigs it. Do not look into the sun or a bright source to judge its colour.',
];

export interface PlannedMatch {
  readonly name: string;
  readonly white: string;
  readonly sources: readonly PlannedSource[];
  readonly channels?: readonly [warm: PlannedChannel, cool: PlannedChannel];
  readonly windows?: readonly PlannedWindow[];
}

const { sources } = rows;

/** Sources against one white: what goes on each, what remains, and in which order. */
export const matchSheet = (planned: PlannedMatch): PlannedSheet => ({
  name: planned.name,
  title: planned.name,
  purpose: 'How far each source is off the white, what of the kit brings it there, what it costs.',
  phase: 'match',
  template: 'match',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('White wanted'),
    B1: { ...choice(planned.white, 'colourTemperature'), note: 'Usually the camera’s balance.' },
    C1: words('Duv'),
    D1: choice('0', 'duv'),
    E1: { typed: 'x, y', align: 'right' },
    F1: { typed: `=PLANCKX(${white.kelvin},${white.duv})`, quantity: 'chromaticity' },
    G1: { typed: `=PLANCKY(${white.kelvin},${white.duv})`, quantity: 'chromaticity' },
    A2: words('Agrees within'),
    B2: choice('10 mired', 'mired'),
    C2: words('and Duv'),
    D2: choice('0.003', 'duv'),
    E2: { typed: 'All lose', align: 'right' },
    F2: {
      typed: `=${allLose(white.kelvin, white.duv)}`,
      quantity: 'stops',
      decimals: 2,
      note: 'Stops that all sources lose together when each is brought to the white wanted.',
    },
    G2: { typed: 'stay off', align: 'right' },
    H2: { typed: `=${staysOff(white.kelvin, white.duv)}`, quantity: 'number' },
    ...advice,
    ...captionRow(sources.head, captions),
    ...Object.assign(
      {},
      ...Array.from({ length: sources.last - sources.first + 1 }, (_, index) =>
        sourceRow(sources.first + index, planned.sources[index]),
      ),
    ),
    ...channelRows(planned.channels),
    ...windowRows(planned.windows ?? []),
    ...kitRows(),
    ...remarks('How it is reckoned', rows.kit.last + 2, reckoning),
    ...remarks('Cautions', rows.kit.last + 4 + reckoning.length, cautions),
  },
  figures: [
    {
      kind: 'chromaticity',
      title: 'Sources and white',
      cells: {
        names: down('source', sources),
        x: down('x', sources),
        y: down('y', sources),
        thenX: down('thenX', sources),
        thenY: down('thenY', sources),
        targetX: white.x,
        targetY: white.y,
        mired: white.mired,
        duv: white.within,
      },
    },
  ],
});

const blank = matchSheet({
  name: 'Match',
  white: '3200 K',
  sources: [
    { source: 'Key', role: 'key' },
    { source: 'Window', role: 'window' },
    { source: 'Practical', role: 'practical' },
  ],
});

export const build = () => buildBook({ title: 'Untitled', sheets: [blank] });
