import { readWalk } from '../../src/files/walk.ts';
import { fillWalk } from '../../src/walk/fill.ts';
import { buildBook, planMeans, run } from '../build.ts';
import { cameras, cameraSheet } from '../camera/plan.ts';
import { at } from '../key-fill-background/camera.ts';
import { letterOf } from '../key-fill-background/columns.ts';
import { pointsSheet } from '../key-fill-background/plan.ts';
import { keyRow } from '../key-fill-background/rows.ts';
import { harbourRecce } from '../recce/harbour.ts';
import { recceSheet } from '../recce/plan.ts';
import { sunSheet } from '../sun/plan.ts';
import { dimmingSheet } from '../tungsten-dimming/plan.ts';
import { shelve, shelveSpectra } from '../shelve.ts';
import { daysSheets } from './days.ts';
import { matchInLoft } from './match.ts';
import { orderSheets } from './order.ts';
import { rigSheets } from './rig.ts';
import { tones } from './tones.ts';
import { loft, shed } from './walks.ts';

const purpose = 'How far each reading is from what was planned, and what closes the gap.';

const spots = [
  { point: 'Grey card at face', wanted: '0' },
  { point: 'Dark corner', wanted: '-3 1/2' },
] as const;

const sheets = [
  pointsSheet({
    name: 'Sail loft',
    purpose: `${purpose} The reference for the interview.`,
    tolerance: 1 / 4,
    points: [
      { point: 'Key side of face', meter: 'dome', lamp: ['3.2 m', '2 m', '100 %'] },
      { point: 'Fill side of face', wanted: '-2', meter: 'dome', lamp: ['2.1 m', '1.5 m', '7 %'] },
      {
        point: 'Back light on shoulder',
        wanted: '+1',
        meter: 'flat',
        lamp: [`11'6"`, '2.5 m', '80 %'],
      },
      { point: 'Canvas left', wanted: '-2', meter: 'flat', lamp: ['2.8 m', '1 m', '65 %'] },
      { point: 'Canvas right', wanted: '-2', meter: 'flat', lamp: ['2.8 m', '1 m', '65 %'] },
      { point: 'Rope bench', wanted: '-1', meter: 'flat' },
    ],
    spots: [{ point: 'Window gap' }, ...spots],
    colours: ['Key colour', 'Fill colour', 'Window colour'],
    figures: [
      {
        kind: 'falloff',
        title: 'Fill light along its throw',
        // What the fill lamp alone gives from where it stands; its frame is 1.2 m square.
        cells: {
          lux: `${letterOf('own')}${keyRow + 1}`,
          mark: `${letterOf('standsAt')}${keyRow + 1}`,
        },
        values: { width: 1.2, height: 1.2 },
      },
    ],
  }),
  pointsSheet({
    name: 'Boat shed',
    purpose: `${purpose} The same light in another room.`,
    tolerance: 1 / 4,
    points: [
      { point: 'Key side of face', meter: 'dome' },
      { point: 'Fill side of face', wanted: '-1 2/3', meter: 'dome' },
      { point: 'Back light on shoulder', wanted: '+1', meter: 'flat' },
      { point: 'Canvas left', wanted: '-2', meter: 'flat' },
      { point: 'Canvas right', wanted: '-1.6', meter: 'flat' },
      { point: 'Rope bench', wanted: '-1/2', meter: 'flat' },
    ],
    spots,
    colours: ['Key colour', 'Fill colour'],
  }),
  cameraSheet({ ...cameras, C: { ...cameras.C, usedFor: 'rope, slow' } }),
  dimmingSheet,
  recceSheet({
    ...harbourRecce,
    meterAt: `='Sail loft'!${at.meterAt}`,
    exposure: `='Sail loft'!${at.time}`,
  }),
  // The day in the boat shed, as the recce has it.
  sunSheet({
    place: '=Recce!A5',
    date: '=Recce!B5',
    latitude: '=Recce!E5',
    longitude: '=Recce!F5',
    ahead: '=Recce!G5',
  }),
  tones,
  matchInLoft,
  ...rigSheets,
  ...orderSheets,
  ...daysSheets,
];

/** The sample book: both places planned, and the walks of both taken in as they were written. */
export function build() {
  const means = planMeans();
  const book = buildBook({ title: 'Harbour Hours', sheets }, means);
  for (const [index, text] of [loft, shed].entries()) {
    const walk = readWalk(text);
    if ('reason' in walk) throw new Error(walk.reason);
    run(book, fillWalk(book.document, means, book.document.sheets[index]?.id ?? '', walk).made);
  }
  shelve(book, means);
  shelveSpectra(book, means);
  return book;
}
