import { readingAsLux } from '../../../functions/exposure/readings.ts';
import type { NewRecord } from '../../book/make/records.ts';
import type { Receptor } from '../../book/types.ts';
import type { Table } from '../../panels/handover/cells.ts';
import { present, type Reader } from './reader.ts';
import { takenAt } from './taken.ts';

type Camera = NewRecord['camera'];

export function pointOf(
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

export function spotOf(
  reader: Reader,
  { columns }: Table,
  row: number,
): NewRecord['spots'][number] {
  const { text: _, ...taken } = takenAt(reader, columns, row);
  return {
    name: reader.cells.label(row, 0).slice(0, 60),
    ...taken,
    ...present({ fromGrey: reader.number(row, columns.get('from grey')) }),
  };
}

export function colourOf(
  reader: Reader,
  { columns }: Table,
  row: number,
): NewRecord['colours'][number] {
  const { text: _, reading, ...taken } = takenAt(reader, columns, row);
  return {
    name: reader.cells.label(row, 0).slice(0, 60),
    ...taken,
    ...present({ kelvin: reading?.value, duv: reader.number(row, columns.get('tint')) }),
  };
}
