import type { PlannedCell } from '../plan.ts';
import { choice, fixed, metered } from './camera.ts';
import type { Columns } from '../columns.ts';
import { columns, type ColumnName } from './columns.ts';

/** One row of the points: where the reading goes and what is wanted there. */
export interface PlannedPoint {
  readonly point: string;
  readonly wanted?: string;
  readonly meter: string;
  /** Distance of its lamp now, the nearest it may stand, its output now. */
  readonly lamp?: readonly [distance: string, nearest: string, output: string];
}

export interface PlannedSpot {
  readonly point: string;
  readonly wanted?: string;
}

/** Row of the points' captions; the key side is the row below. */
export const head = 11;
export const keyRow = head + 1;

/** What a point is to come to, as a formula; the first row is the key. */
type Goal = (at: number, isKey: boolean) => string;

/** The rows of a sheet of points, whatever other columns stand between theirs. */
export function rowsIn(
  { letterOf, row }: Pick<Columns<ColumnName>, 'letterOf' | 'row'>,
  goal?: Goal,
) {
  const cell = (column: ColumnName, at: number): string => `${letterOf(column)}${at}`;
  const keyF = `$${letterOf('asF')}$${keyRow}`;

  function pointRow(
    { point, wanted, meter, lamp = ['', '', ''] }: PlannedPoint,
    index: number,
  ): Record<string, PlannedCell> {
    const at = keyRow + index;
    const of = (column: ColumnName): string => cell(column, at);
    const isKey = index === 0;
    const goalHere =
      goal?.(at, isKey) ??
      (isKey
        ? `FNUMBERAT(${fixed('stop')},${fixed('exposeKey')})`
        : `FNUMBERAT(${keyF},${of('wanted')})`);
    const lux = (reading: ColumnName, receptor: ColumnName): string =>
      `READINGLUX(${of(reading)},${of(receptor)},${metered})`;
    const agrees = `${of('verdict')}="agrees"`;
    const moved = `NEWDISTANCE(${of('standsAt')},${of('light')}`;
    return row(at, {
      point: { typed: point },
      wanted: isKey ? { typed: `=${fixed('exposeKey')}` } : choice(wanted ?? '', 'stops'),
      reading: { role: 'reading', target: `=${goalHere}` },
      meter: choice(meter, 'text'),
      fromKey: { typed: `=FSTOPS(${of('asF')},${isKey ? fixed('stop') : keyF})` },
      verdict: {
        typed: `=IF(ISBLANK(${of('wanted')}),"",VERDICT(${of('fromKey')}-${of('wanted')}))`,
        quantity: 'verdict',
      },
      light: {
        typed: `=IF(${agrees},"",LIGHTFACTOR(${of('here')},${of('wantedLight')},${of('own')}))`,
        quantity: 'factor',
      },
      newDistance: {
        typed: `=IF(OR(${agrees},ISBLANK(${of('standsAt')})),"",IF(ISBLANK(${of('nearest')}),${moved}),${moved},${of('nearest')})))`,
        quantity: 'length',
        decimals: 2,
      },
      newOutput: {
        typed: `=IF(OR(${agrees},ISBLANK(${of('outputNow')})),"",NEWOUTPUT(${of('outputNow')},${of('light')}))`,
        quantity: 'share',
        decimals: 0,
      },
      countedOn: {
        typed: `=IF(${agrees},"",IF(ISBLANK(${of('alone')}),"if this lamp alone lights the point",ROUND(100*${of('own')}/${of('here')},0)&" % of the light here is its own"))`,
        quantity: 'text',
      },
      alone: { role: 'reading' },
      with: choice('flat', 'text'),
      lampsOff: { role: 'reading' },
      standsAt: choice(lamp[0], 'length'),
      nearest: choice(lamp[1], 'length'),
      outputNow: choice(lamp[2], 'share'),
      note: { quantity: 'text' },
      asF: { typed: `=READINGF(${of('reading')},${of('meter')},${metered})` },
      here: { typed: `=${lux('reading', 'meter')}` },
      wantedLight: { typed: `=READINGLUX(${goalHere},${of('meter')},${metered})` },
      own: {
        typed: `=IF(ISBLANK(${of('alone')}),${of('here')},${lux('alone', 'with')}-IF(ISBLANK(${of('lampsOff')}),0,${lux('lampsOff', 'with')}))`,
        quantity: 'illuminance',
      },
    });
  }

  function spotRow({ point, wanted }: PlannedSpot, at: number): Record<string, PlannedCell> {
    const of = (column: ColumnName): string => cell(column, at);
    const above = `${fixed('above')}-${fixed('greySits')}`;
    const below = `${fixed('below')}+${fixed('greySits')}`;
    return row(at, {
      point: { typed: point },
      wanted: choice(wanted ?? '', 'stops'),
      reading: { role: 'reading', quantity: 'luminance' },
      meter: { typed: 'spot', role: 'given', quantity: 'text' },
      fromKey: { typed: `=STOPS(${of('reading')},${fixed('grey')})` },
      verdict: { typed: `=PLACEMENT(${of('fromKey')},${above},${below})` },
      light: { typed: `=HEADROOM(${of('reading')},${fixed('grey')},${above})`, decimals: 1 },
      newDistance: { typed: `=FOOTROOM(${of('reading')},${fixed('grey')},${below})`, decimals: 1 },
      countedOn: {
        typed: `=IF(ISBLANK(${of('wanted')}),"",VERDICT(${of('fromKey')}-${of('wanted')}))`,
        quantity: 'verdict',
      },
      note: { quantity: 'text' },
    });
  }

  function colourRow(source: string, at: number): Record<string, PlannedCell> {
    const of = (column: ColumnName): string => cell(column, at);
    const off = of('fromKey');
    const tint = of('wanted');
    return row(at, {
      point: { typed: source },
      wanted: { role: 'reading', quantity: 'duv' },
      reading: { role: 'reading', quantity: 'colourTemperature' },
      fromKey: { typed: `=MIREDSHIFT(${fixed('white')},${of('reading')})`, decimals: 0 },
      verdict: {
        typed:
          `=IF(ROUND(${off},0)=0,"as the camera’s white",ROUND(ABS(${off}),0)&" mired too "&IF(${off}>0,"warm","blue"))` +
          `&IF(ISBLANK(${tint}),"",IF(ROUND(${tint},3)=0,"",IF(${tint}>0,", green by ",", magenta by ")&TEXT(ABS(${tint}),"0.000")))`,
        quantity: 'text',
      },
      note: { quantity: 'text' },
    });
  }

  /** What the points come to together. */
  const ratios: Readonly<Record<string, PlannedCell>> = {
    A8: { typed: 'Contrast by sides' },
    B8: { typed: `=FCONTRASTRATIO(${cell('asF', keyRow)},${cell('asF', keyRow + 1)})` },
    C8: { typed: 'Lighting ratio' },
    D8: { typed: `=LIGHTINGRATIO(${cell('own', keyRow)},${cell('own', keyRow + 1)})` },
    E8: { typed: 'Stop for it' },
    F8: { typed: `=FNUMBERAT(${cell('asF', keyRow)},-${fixed('exposeKey')})`, align: 'left' },
    A9: { typed: 'Lamps off, from fill side' },
    B9: {
      typed: `=STOPS(READINGLUX(${cell('lampsOff', keyRow + 1)},${cell('with', keyRow + 1)},${metered}),${cell('here', keyRow + 1)})`,
    },
  };

  return { pointRow, spotRow, colourRow, ratios };
}

export const { pointRow, spotRow, colourRow, ratios } = rowsIn(columns);

export const spotCaptions: Readonly<Partial<Record<ColumnName, string>>> = {
  point: 'Spot reading',
  wanted: 'Wanted',
  reading: 'Reading',
  meter: 'Meter',
  fromKey: 'From grey',
  verdict: 'In the camera',
  light: 'Above',
  newDistance: 'Below',
  countedOn: 'Against wanted',
  note: 'Note',
};

export const colourCaptions: Readonly<Partial<Record<ColumnName, string>>> = {
  point: 'Colour',
  wanted: 'Tint',
  reading: 'Reading',
  meter: '',
  fromKey: 'From white',
  verdict: 'In words',
  note: 'Note',
};
