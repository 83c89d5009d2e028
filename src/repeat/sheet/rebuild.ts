import { choice, heading, numberHeading, remarks } from '../../../templates/cells.ts';
import { at as settingAt, camera, fixed } from '../../../templates/key-fill-background/camera.ts';
import {
  colourCaptions,
  head,
  keyRow,
  rowsIn,
  spotCaptions,
} from '../../../templates/key-fill-background/rows.ts';
import type { PlannedCell, PlannedSheet } from '../../../templates/plan.ts';
import type { Record, RecordedPoint } from '../../book/records.ts';
import { columns, type RebuildColumn } from './columns.ts';
import { lampOf, type Lamp } from './lamps.ts';
import { short, typed } from './typed.ts';

type Cells = { readonly [address: string]: PlannedCell };

export const rebuildTemplate = 'rebuild';

/** The meter of today against that of the record, and the white that the record was lit for. */
const [over, whiteThen] = ['$B$10', '$D$10'];
const cell = (name: RebuildColumn, at: number) => `${columns.letterOf(name)}${at}`;
const keyGoal = `${fixed('exposeKey')}+${over}`;
const goal = (at: number, isKey: boolean) =>
  `FNUMBERAT(${fixed('stop')},${isKey ? keyGoal : `${keyGoal}+${cell('wanted', at)}`})`;
const rows = rowsIn(columns, goal);

/** Pieces that most kits have, with what they usually lose (common practice); to be overwritten. */
const kit = [
  ['single', '1/2'],
  ['double', '1'],
  ['light diffusion', '1/3'],
  ['half diffusion', '2/3'],
  ['full diffusion', '1 1/3'],
] as const;

export const kitHead = 'Piece';
const kitLoses = 'Loses';

const reckoned = [
  'Should read: what the record had from the key, laid on today’s taking stop. Verdict: today’s reading against it. Ratio: today’s place from the key against the record’s.',
  'Set the key first, meter it again, then the others in their order. Readings typed here give the verdicts at once; “Work out what to set” writes what closes each gap.',
  'A lamp’s own share comes from the reading of it alone, or from a set plan of this book with the same points and lights; the ambient is taken away first.',
];
const cautions = [
  'Lamps, clamps and scrims get hot: keep them clear of cloth, paper, sprinklers and people. Weigh down stands, tie off what hangs, keep water away from mains.',
  'Bright sources and the sun can hurt eyes. These sums plan light; local codes, a qualified electrician and a rigger decide what is safe.',
];

/** A sheet that repeats a record: its points, what each should read today, and what is to be set. */
export function rebuildSheet(record: Record): PlannedSheet {
  const spotHead = head + record.points.length + 2;
  const colourHead = spotHead + record.spots.length + 2;
  const kitRow = colourHead + record.colours.length + 2;
  const notes = kitRow + kit.length + 2;
  return {
    name: `Rebuild ${record.name}`
      .replace(/[[\]*?/\\:]/g, ' ')
      .slice(0, 31)
      .trim(),
    title: `Rebuild of ${record.name}`,
    purpose: `The light of ${[record.place, record.date].filter(Boolean).join(', ')} in another place: what each point should read, how far off it is, what to set.`,
    phase: 'match',
    template: rebuildTemplate,
    tolerance: record.tolerance,
    frozenColumns: 1,
    widths: columns.widths,
    cells: {
      ...settings(record),
      ...rows.ratios,
      A10: { typed: 'Meter reads over by' },
      B10: choice('0', 'stops'),
      C10: { typed: 'White then' },
      D10: choice(typed(record.camera.white, 'colourTemperature'), 'colourTemperature'),
      ...columns.captionRow(head, columns.captions),
      ...columns.captionRow(spotHead, { ...spotCaptions, then: 'Then', should: 'Should read' }),
      ...columns.captionRow(colourHead, {
        ...colourCaptions,
        then: 'Then',
        should: 'Should read',
        ratio: 'Against then',
      }),
      ...all(record.points.map((point, index) => pointCells(record, point, index))),
      ...all(record.spots.map((spot, index) => spotCells(spot, spotHead + 1 + index))),
      ...all(record.colours.map((colour, index) => colourCells(colour, colourHead + 1 + index))),
      [`A${kitRow}`]: heading(kitHead),
      [`B${kitRow}`]: numberHeading(kitLoses),
      ...all(
        kit.map(([piece, stops], index) => ({
          [`A${kitRow + 1 + index}`]: choice(piece, 'text'),
          [`B${kitRow + 1 + index}`]: choice(stops, 'stops'),
        })),
      ),
      ...remarks('How it is reckoned', notes, reckoned),
      ...remarks('Cautions', notes + reckoned.length + 2, cautions),
    },
  };
}

const all = (parts: readonly Cells[]): Cells => Object.assign({}, ...parts) as Cells;

/** The camera starts as it was; what differs today is typed over. */
function settings({ camera: then, points }: Record): Cells {
  const cells: { [address: string]: PlannedCell } = { ...camera };
  for (const { label, value, quantity } of then.settings) {
    const found = Object.values(settingAt).find((address) => {
      const before = String.fromCharCode(address.charCodeAt(0) - 1) + address.slice(1);
      return camera[before]?.typed === label;
    });
    const planned = found && camera[found];
    if (!found || !planned?.role || value === undefined) continue;
    cells[found] = { ...planned, typed: typed(value, planned.quantity ?? quantity ?? 'number') };
  }
  // Where the key sat against the taking stop is what it should come to again.
  const key = cells[settingAt.exposeKey];
  const sat = points[0]?.fromKey;
  if (key && sat !== undefined)
    cells[settingAt.exposeKey] = short({ ...key, typed: typed(sat, 'stops') });
  return cells;
}

function pointCells(record: Record, point: RecordedPoint, index: number): Cells {
  const at = keyRow + index;
  const lamp: Lamp = lampOf(record, point);
  const planned = rows.pointRow({ point: point.name, meter: point.receptor }, index);
  const off = `${cell('fromKey', at)}-${cell('wanted', at)}`;
  return {
    ...planned,
    ...columns.row(at, {
      then: { typed: typed(point.f, 'fNumber'), role: 'given', quantity: 'fNumber' },
      ...(index > 0 && { wanted: stopsFrom(point.fromKey) }),
      should: {
        typed: `=IF(ISBLANK(${cell('wanted', at)}),"",${goal(at, index === 0)})`,
        quantity: 'fNumber',
      },
      verdict: {
        typed: `=IF(ISBLANK(${cell('wanted', at)}),"",VERDICT(FSTOPS(${cell('asF', at)},${cell('should', at)})))`,
        quantity: 'verdict',
      },
      ratio: {
        typed:
          index === 0 ? '="the key"' : `=IF(ISBLANK(${cell('wanted', at)}),"",VERDICT(${off}))`,
        quantity: index === 0 ? 'text' : 'verdict',
      },
      set: { quantity: 'text' },
      lamp: choice(lamp.name, 'text'),
      standsAt: choice(typed(lamp.distance, 'length'), 'length'),
      nearest: choice(typed(lamp.nearest, 'length'), 'length'),
      farthest: choice('', 'length'),
      outputNow: choice(typed(lamp.output, 'share'), 'share'),
      pieces: choice(lamp.pieces.join(', '), 'text'),
      faceWidth: choice('', 'length'),
      faceHeight: choice('', 'length'),
    }),
  };
}

/** Thirds are shown as thirds; what a reading in lux comes to has no end of figures. */
function stopsFrom(fromKey: number | undefined): PlannedCell {
  const cell = choice(typed(fromKey, 'stops'), 'stops');
  const thirds = (fromKey ?? 0) * 3;
  return Math.abs(thirds - Math.round(thirds)) < 1e-6 ? cell : { ...cell, decimals: 2 };
}

function spotCells({ name, reading, fromGrey }: Record['spots'][number], at: number): Cells {
  return {
    ...rows.spotRow({ point: name }, at),
    ...columns.row(at, {
      wanted: stopsFrom(fromGrey),
      then: { typed: typed(reading?.value, 'luminance'), role: 'given', quantity: 'luminance' },
      should: {
        typed: `=IF(ISBLANK(${cell('wanted', at)}),"",LEVELAT(${fixed('grey')},${cell('wanted', at)}+${over}))`,
        quantity: 'luminance',
      },
    }),
  };
}

function colourCells({ name, kelvin }: Record['colours'][number], at: number): Cells {
  const should = cell('should', at);
  const off = `MIREDSHIFT(${should},${cell('reading', at)})`;
  return {
    ...rows.colourRow(name, at),
    ...columns.row(at, {
      then: {
        typed: typed(kelvin, 'colourTemperature'),
        role: 'given',
        quantity: 'colourTemperature',
      },
      should: {
        typed: `=IF(ISBLANK(${cell('then', at)}),"",KELVIN(MIRED(${fixed('white')})+MIREDSHIFT(${whiteThen},${cell('then', at)})))`,
        quantity: 'colourTemperature',
      },
      ratio: {
        typed: `=IF(ISBLANK(${cell('then', at)}),"",IF(ROUND(${off},0)=0,"as then",ROUND(ABS(${off}),0)&" mired "&IF(${off}>0,"warmer","bluer")))`,
        quantity: 'text',
      },
    }),
  };
}
