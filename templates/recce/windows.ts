import { choice, given } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, captions, letterOf, row, type ColumnName } from './columns.ts';
import { held, ofPlace, places, settings, windows } from './places.ts';

type Cells = Record<string, PlannedCell>;

export interface PlannedWindow {
  readonly name: string;
  readonly place: string;
  readonly width: string;
  readonly height: string;
  readonly sill: string;
  readonly bearing: string;
  readonly skyline?: string;
  readonly sideways?: string;
  readonly glass?: string;
  /** Square out from the window, to the right looking out, above the floor. */
  readonly mark: readonly [off: string, right: string, up: string];
}

function windowRow(at: number, planned?: PlannedWindow): Cells {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const once = (formula: string) => `=IF(ISBLANK(${is('name')}),"",${formula})`;
  const of = (setting: keyof typeof held) => ofPlace(held[setting], at);
  const [off, right, up] = planned?.mark ?? ['', '', ''];
  const aside = `(MOD(${of('azimuth')}-${is('bearing')}+540,360)-180)`;
  const tangent = (angle: string) => `TAN(RADIANS(${angle}))`;
  const across = `ABS(${is('markAside')}+${is('markOff')}*${tangent(aside)})<${is('width')}/2`;
  const height = `(${is('markUp')}+${is('markOff')}*${tangent(of('altitude'))}/COS(RADIANS(${aside}))-${is('sill')})`;
  const isIn =
    `${of('overcast')}<>"overcast",${of('altitude')}>MAX(0,${is('skyline')}),ABS(${aside})<${is('sideways')},` +
    `${across},${height}>0,${height}<${is('height')}`;
  const middle = `${is('sill')}+${is('height')}/2`;
  return row(at, {
    name: choice(planned?.name ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    words: {
      typed: once(
        `IF(ISNUMBER(${is('at')}),IF(${is('comesIn')}="no sun","No sun in "&${is('name')},"Sun in "&${is('name')}&" from "&${is('comesIn')}),"no such place")`,
      ),
      quantity: 'text',
    },
    width: choice(planned?.width ?? '', 'length'),
    height: choice(planned?.height ?? '', 'length'),
    sill: choice(planned?.sill ?? '', 'length'),
    bearing: choice(planned?.bearing ?? '', 'angle'),
    skyline: choice(planned?.skyline ?? '0°', 'angle'),
    sideways: given(planned?.sideways ?? '90°', 'angle'),
    glass: given(planned?.glass ?? '80 %', 'share'),
    markOff: choice(off, 'length'),
    markAside: choice(right, 'length'),
    markUp: choice(up, 'length'),
    // Two figures: the model is good to about a stop.
    sky: {
      typed: once(
        `ROUND(WINDOWLUX(${of('openSky')},${is('width')},${is('height')},${is('markOff')},${is('markAside')},${is('markUp')}-(${middle}),${is('glass')},${settings.ground}),-1)`,
      ),
      quantity: 'illuminance',
    },
    sun: {
      typed: once(
        `IF(AND(${isIn}),ROUND(SUNBEAMLUX(MAX(1,${of('altitude')}))*${is('glass')},-3),0)`,
      ),
      quantity: 'illuminance',
    },
    comesIn: {
      typed: once(
        `SUNIN(${of('day')},${is('bearing')},${of('latitude')},${of('longitude')},${of('ahead')},${is('skyline')},${is('sideways')})`,
      ),
      quantity: 'text',
    },
    at: {
      typed: once(`IFERROR(MATCH(${is('place')},$A$${places.first}:$A$${places.last},0),"none")`),
      quantity: 'number',
    },
  });
}

const notes: Partial<Record<ColumnName, string>> = {
  bearing:
    'Looking out of the window: degrees clockwise from true north. A compass is some degrees off.',
  skyline: 'How high roofs, trees or hills opposite reach above level, seen from the window.',
  sideways:
    'How far aside of straight on the sun still comes in: less than 90° where the wall is thick.',
  markOff: 'Square out from the window into the room.',
  markAside: 'Of the middle of the window, looking out; to the left is negative.',
  markUp: 'Above the floor, as the sill is.',
  sky: 'On a flat receptor that faces the window, at the hour of its place.',
  sun: 'On a receptor that faces the sun, at the hour of its place; 0 where its beam misses the mark.',
};

function head(): Cells {
  const cells = captionRow(windows.head, captions);
  for (const [column, note] of Object.entries(notes) as [ColumnName, string][]) {
    const at = `${letterOf(column)}${windows.head}`;
    cells[at] = { ...cells[at], note };
  }
  return cells;
}

export const windowTable = (planned: readonly PlannedWindow[]): Cells => ({
  ...head(),
  ...Object.assign(
    {},
    ...Array.from({ length: windows.last - windows.head }, (_, index) =>
      windowRow(windows.first + index, planned[index]),
    ),
  ),
});
