import { readingAsLux } from '../../functions/exposure/readings.ts';
import { isError } from '../../functions/values.ts';
import { cellAtSpot } from '../book/look.ts';
import type { NewRecord } from '../book/make/records.ts';
import type { Receptor, Refusal } from '../book/types.ts';
import { cellsOf, tablesWith, type Cells, type Table } from '../panels/handover/cells.ts';
import type { Look } from '../panels/views/look.ts';
import { words } from '../words/words.ts';
import { knownMeter } from './meter.ts';
import { rigIn } from './rig.ts';

/** What the sheet does not say itself. */
export interface RecordedAs {
  readonly name: string;
  readonly place: string;
  /** `2026-09-23` and `14:05`. */
  readonly date: string;
  readonly time: string;
  readonly by?: string;
  readonly meter?: NonNullable<NewRecord['meter']>;
  readonly note?: string;
}

type Camera = NewRecord['camera'];

/** By these words the parts of a sheet of points are found. */
const settingLabels = {
  meterAt: 'Meter at',
  time: 'Exposure time',
  stop: 'Taking stop',
  exposeKey: 'Expose key',
  dome: 'Dome constant C',
  flat: 'flat C',
  spot: 'spot K',
} as const;
const cameraLabels = {
  white: 'White',
  above: 'Holds above grey',
  below: 'below grey',
  greySits: 'Grey sits at',
} as const;

/** A lit set-up, frozen from its sheet and the rig sheets of the book; or why there is none. */
export function recordOf(
  look: Look,
  sheet: string,
  as: RecordedAs,
): { readonly ok: true; readonly record: NewRecord } | Refusal {
  const reader = readerOf(look, sheet);
  const { cells, tables } = reader;
  const points = tables.find(({ columns }) => columns.has('as f-number'));
  if (!points) return { ok: false, reason: words.repeat.noPoints };
  const camera = cameraOf(reader, points.head);
  if ('reason' in camera) return { ok: false, reason: camera.reason };
  const read = points.rows.map((row) => pointOf(reader, points, row, camera));
  if (read[0]?.f === undefined) return { ok: false, reason: words.repeat.noKey };
  const { title, name, tolerance } = look.document.sheet(sheet)?.properties ?? {};
  const below = (quantity: string) =>
    tables.filter((table) => table !== points && quantityUnder(look, cells, table) === quantity);
  const { note, by, ...rest } = as;
  const meter = knownMeter(look.document, as.meter ?? { name: (read[0].meter ?? '').slice(0, 60) });
  return {
    ok: true,
    record: {
      ...rest,
      ...(by && { by }),
      ...(meter && { meter }),
      ...(note && { note }),
      sheet: title || name || '',
      tolerance: tolerance ?? look.document.settings.tolerance,
      camera,
      points: read,
      spots: below('luminance').flatMap((table) =>
        table.rows.map((row) => spotOf(reader, table, row)),
      ),
      colours: below('colourTemperature').flatMap((table) =>
        table.rows.map((row) => colourOf(reader, table, row)),
      ),
      ratios: ratiosOf(reader, points.head),
      rig: rigIn(look, sheet),
    },
  };
}

interface Reader {
  readonly look: Look;
  readonly cells: Cells;
  readonly tables: readonly Table[];
  number(row: number, column: number | undefined): number | undefined;
}

function readerOf(look: Look, sheet: string): Reader {
  const cells = cellsOf(look, sheet);
  return {
    look,
    cells,
    tables: tablesWith(cells, ['reading']),
    number(row, column) {
      if (column === undefined) return undefined;
      const value = look.engine.valueOf({ sheet, row, column });
      return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
    },
  };
}

function quantityUnder(look: Look, cells: Cells, { columns, rows }: Table): string | undefined {
  const column = columns.get('reading') ?? -1;
  return rows
    .map((row) => look.engine.quantityOf({ sheet: cells.sheet, row, column }))
    .find((quantity) => quantity !== undefined);
}

/** The value right of each label over the points. */
function* labelled({ cells }: Reader, end: number) {
  for (let row = 0; row < end; row += 1)
    for (let column = 0; column + 1 < cells.columns; column += 1) {
      const label = cells.label(row, column);
      const value = label === '' ? undefined : cells.at(row, column + 1);
      if (value && (value.role || value.content.kind !== 'text'))
        yield { label, row, column: column + 1 };
    }
}

function cameraOf(reader: Reader, end: number): NewRecord['camera'] | { readonly reason: string } {
  const settings: NewRecord['camera']['settings'] = [];
  const numbers = new Map<string, number>();
  for (const { label, row, column } of labelled(reader, end)) {
    const value = reader.number(row, column);
    if (value !== undefined && !numbers.has(label)) numbers.set(label, value);
    const text = reader.cells.said(row, column);
    const quantity = reader.look.engine.quantityOf({ sheet: reader.cells.sheet, row, column });
    if (text !== '' && quantity !== 'ratio')
      settings.push({ label, text, ...present({ value, quantity }) });
  }
  const needed: Record<string, number> = {};
  for (const [key, label] of Object.entries(settingLabels)) {
    const value = numbers.get(label);
    if (value === undefined) return { reason: words.repeat.noCamera(label) };
    needed[key] = value;
  }
  const more = Object.fromEntries(
    Object.entries(cameraLabels).flatMap(([key, label]) => {
      const value = numbers.get(label);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  return { ...(needed as Needed), ...more, settings };
}

type Needed = { readonly [Key in keyof typeof settingLabels]: number };

const isRatio = ({ look, cells: { sheet } }: Reader, row: number, column: number): boolean =>
  look.engine.quantityOf({ sheet, row, column }) === 'ratio';

function ratiosOf(reader: Reader, end: number): NewRecord['ratios'] {
  return [...labelled(reader, end)].flatMap(({ label, row, column }) => {
    if (!isRatio(reader, row, column)) return [];
    const value = reader.number(row, column);
    return [{ label, text: reader.cells.said(row, column), ...(value !== undefined && { value }) }];
  });
}

type Entries = { readonly [key: string]: unknown };

/** Without what there is not. */
const present = <T extends Entries>(entries: T) =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as {
    [Key in keyof T]?: Exclude<T[Key], undefined>;
  };

function pointOf(
  reader: Reader,
  { columns }: Table,
  row: number,
  camera: Camera,
): NewRecord['points'][number] {
  const number = (caption: string) => reader.number(row, columns.get(caption));
  const { text, ...taken } = takenAt(reader, columns, row);
  const own = isTyped(reader, row, columns.get('alone')) ? number('its own') : undefined;
  return {
    name: reader.cells.label(row, 0).slice(0, 60),
    receptor: (text('meter') === 'flat' ? 'flat' : 'dome') satisfies Receptor,
    ...taken,
    ...present({
      f: number('as f-number'),
      lux: number('here'),
      wanted: number('wanted'),
      fromKey: number('from key'),
      own: own !== undefined && own >= 0 ? own : undefined,
      lampsOff: lampsOff(reader, columns, row, camera),
      distance: number('stands at'),
      nearest: number('nearest'),
      output: number('output now'),
    }),
  };
}

const isTyped = ({ cells }: Reader, row: number, column: number | undefined): boolean =>
  column !== undefined && cells.at(row, column)?.content.kind === 'number';

/** In lux, whatever it was metered in: with the receptor of the single readings. */
function lampsOff(reader: Reader, columns: Table['columns'], row: number, camera: Camera) {
  const { look, cells } = reader;
  const column = columns.get('lamps off');
  const value = isTyped(reader, row, column) ? reader.number(row, column) : undefined;
  const measured = look.engine.quantityOf({ sheet: cells.sheet, row, column: column ?? -1 });
  if (value === undefined || measured === undefined) return undefined;
  const meter = cells.said(row, columns.get('with') ?? -1) || 'flat';
  const { meterAt: iso, time, dome, flat, spot } = camera;
  const lux = readingAsLux({ value, measured }, { meter, iso, time, dome, flat, spot });
  return typeof lux === 'number' ? lux : undefined;
}

function spotOf(reader: Reader, { columns }: Table, row: number): NewRecord['spots'][number] {
  const { text: _, ...taken } = takenAt(reader, columns, row);
  return {
    name: reader.cells.label(row, 0).slice(0, 60),
    ...taken,
    ...present({ fromGrey: reader.number(row, columns.get('from grey')) }),
  };
}

function colourOf(reader: Reader, { columns }: Table, row: number): NewRecord['colours'][number] {
  const { text: _, reading, ...taken } = takenAt(reader, columns, row);
  return {
    name: reader.cells.label(row, 0).slice(0, 60),
    ...taken,
    ...present({ kelvin: reading?.value, duv: reader.number(row, columns.get('tint')) }),
  };
}

/** The reading of a row with when, with what, notes and photos. */
function takenAt({ look, cells, number }: Reader, columns: Table['columns'], row: number) {
  const text = (caption: string): string => {
    const column = columns.get(caption);
    return column === undefined ? '' : cells.said(row, column);
  };
  const column = columns.get('reading') ?? -1;
  const spot = { sheet: cells.sheet, row, column };
  const value = isError(look.engine.valueOf(spot)) ? undefined : number(row, column);
  const quantity = look.engine.quantityOf(spot);
  const cell = cellAtSpot(look.document, spot);
  const note = [text('note'), cell?.note ?? ''].filter(Boolean).join('; ');
  return {
    text,
    ...present({
      reading:
        value === undefined || quantity === undefined
          ? undefined
          : { value, quantity, said: cells.said(row, column) },
      time: text('time') || cell?.taken?.time,
      meter: text('with meter') || cell?.taken?.meter,
      note: note || undefined,
      photos: cell?.photos && [...cell.photos],
    }),
  };
}
