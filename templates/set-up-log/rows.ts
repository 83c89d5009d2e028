import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, captions, letterOf, row, type ColumnName } from './columns.ts';

type Cells = Record<string, PlannedCell>;

const table = (head: number, rows: number) => ({ head, first: head + 1, last: head + rows });
export const cameras = table(5, 3);
export const found = table(cameras.last + 2, 16);
export const log = table(found.last + 2, 60);

const logged = [
  'scene',
  'setUp',
  'day',
  'time',
  'camera',
  'light',
  'fixture',
  'channel',
  'circuit',
  'level',
  'gel',
  'readings',
  'ratio',
  'note',
] as const satisfies readonly ColumnName[];

export type PlannedLogRow = Readonly<Partial<Record<(typeof logged)[number], string>>>;

/** How each column is kept: words, but for the day, the hour and the level. */
const kinds = { day: 'dateTime', time: 'dateTime', level: 'share' } as const;
const quantityOf = (column: (typeof logged)[number]) =>
  column in kinds ? kinds[column as keyof typeof kinds] : ('text' as const);

const down = (column: ColumnName): string =>
  `$${letterOf(column)}$${log.first}:$${letterOf(column)}$${log.last}`;

function logRow(at: number, planned: PlannedLogRow = {}): Cells {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const said = logged
    .filter((column) => !(column in kinds))
    .map(is)
    .join('&" "&');
  const counted = letterOf('found');
  return row(at, {
    ...(Object.fromEntries(
      logged.map((column) => [column, choice(planned[column] ?? '', quantityOf(column))]),
    ) as Record<(typeof logged)[number], PlannedCell>),
    readings: { typed: planned.readings ?? '', quantity: 'text', role: 'reading' },
    photo: { role: 'reading', quantity: 'text' },
    found: {
      typed:
        `=IF(AND(ISBLANK(${is('scene')}),ISBLANK(${is('light')})),"",IF(AND(OR(ISBLANK($B$1),${is('scene')}&""=$B$1&""),` +
        `OR(ISBLANK($B$2),ISNUMBER(SEARCH($B$2,${said})))),1+COUNT(${counted}$${log.head}:${counted}${at - 1}),""))`,
      quantity: 'number',
    },
  });
}

/** The rows that are looked for, one below the other, whatever day they are of. */
function foundRow(at: number): Cells {
  const number = at - found.head;
  const where = `MATCH(${number},${down('found')},0)`;
  return row(
    at,
    Object.fromEntries(
      logged.map((column) => {
        const value = `INDEX(${down(column)},${where})`;
        const quantity = quantityOf(column);
        const typed =
          quantity === 'text'
            ? `=IFERROR(${value}&"","")`
            : `=IFERROR(IF(${value}="","",${value}),"")`;
        return [column, { typed, quantity }];
      }),
    ) as Record<(typeof logged)[number], PlannedCell>,
  );
}

export interface PlannedCamera {
  readonly name: string;
  readonly ei: string;
  readonly time: string;
  readonly stop: string;
}

/** Cameras against the first: “B camera EI 1250 against 800: 0.64 stop more, T3.5 beside T2.8”. */
function cameraRow(at: number, planned?: PlannedCamera): Cells {
  const { first } = cameras;
  const [name, ei, time, stop] = ['A', 'B', 'C', 'D'].map((column) => `${column}${at}`);
  const stops = `F${at}`;
  const base = `$D$${first}`;
  const once = (formula: string) => `=IF(ISBLANK(${name}),"",${formula})`;
  const against =
    `${name}&" camera EI "&ROUND(${ei},0)&" against "&ROUND($B$${first},0)&": "&` +
    `IF(ABS(${stops})<0.005,"the same stop",TEXT(ABS(${stops}),"0.00")&" stop "&IF(${stops}>0,"more","less")&", T"&ROUND(${stop},1)&" beside T"&ROUND(${base},1))`;
  return {
    [`A${at}`]: choice(planned?.name ?? '', 'text'),
    [`B${at}`]: choice(planned?.ei ?? '', 'iso'),
    [`C${at}`]: choice(planned?.time ?? '', 'time'),
    [`D${at}`]:
      at === first
        ? choice(planned?.stop ?? '', 'fNumber')
        : {
            typed: once(`INCIDENTF(INCIDENTLUX(${base},$B$${first},$C$${first}),${ei},${time})`),
            quantity: 'fNumber',
          },
    [`E${at}`]: {
      typed: once(
        at === first ? `${name}&" camera EI "&ROUND(${ei},0)&", T"&ROUND(${stop},1)` : against,
      ),
      quantity: 'text',
    },
    [`F${at}`]: {
      typed: once(`FSTOPS(${stop},${base})`),
      quantity: 'stops',
      decimals: 2,
    },
  };
}

const rowsOf = <T>(
  { head, first, last }: typeof log,
  planned: readonly T[],
  make: (at: number, one?: T) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, planned[index])),
  );

export const cameraTable = (planned: readonly PlannedCamera[]): Cells => ({
  ...captionRow(cameras.head, {
    scene: 'Camera',
    setUp: 'EI',
    day: 'Exposure',
    time: 'Stop',
    camera: 'In words',
    light: 'From first',
  }),
  ...rowsOf(cameras, planned, cameraRow),
});

export const foundTable = (): Cells => ({
  ...captionRow(found.head, { scene: 'Found' }),
  ...rowsOf(found, [], foundRow),
});

export const logTable = (planned: readonly PlannedLogRow[]): Cells => ({
  ...captionRow(log.head, captions),
  ...rowsOf(log, planned, logRow),
});

/** How many rows of the log are found, and how many there are. */
export const counts = {
  found: `COUNT(${down('found')})`,
  rows: `SUMPRODUCT((${down('scene')}&${down('light')}<>"")*1)`,
};
