import type { NewRecord } from '../book/make/records.ts';
import type { Refusal } from '../book/types.ts';
import type { Cells, Table } from '../panels/handover/cells.ts';
import type { Look } from '../panels/views/look.ts';
import { words } from '../words/words.ts';
import { knownMeter } from './meter.ts';
import { cameraOf, ratiosOf } from './record/camera.ts';
import { readerOf } from './record/reader.ts';
import { colourOf, pointOf, spotOf } from './record/rows.ts';
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

function quantityUnder(look: Look, cells: Cells, { columns, rows }: Table): string | undefined {
  const column = columns.get('reading') ?? -1;
  return rows
    .map((row) => look.engine.quantityOf({ sheet: cells.sheet, row, column }))
    .find((quantity) => quantity !== undefined);
}
