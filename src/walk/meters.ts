import { cellAtSpot, type Spot } from '../book/look.ts';
import { recordsOf } from '../book/records.ts';
import type { Document, Id, Taken } from '../book/types.ts';

const when = ({ date, time }: Taken): string => `${date} ${time}`;

/** The stamps on the readings of a sheet, or of the whole book, the latest first. */
function stampsOn(document: Document, sheet?: Id): readonly Taken[] {
  return document.sheets
    .filter(({ id }) => sheet === undefined || id === sheet)
    .flatMap((one) => [...one.cells()].flatMap(({ cell }) => cell.taken ?? []))
    .toSorted((one, other) => when(other).localeCompare(when(one), 'en'));
}

/** The meter of the latest reading here, else of the latest of the book; empty where none said. */
export const lastMeter = (document: Document, sheet: Id): string =>
  stampsOn(document, sheet)[0]?.meter ?? stampsOn(document)[0]?.meter ?? '';

/** The names of meters that the book knows, each once. */
export function metersIn(document: Document): readonly string[] {
  const recorded = recordsOf(document).flatMap(({ meter, points }) => [
    meter?.name,
    ...points.map((point) => point.meter),
  ]);
  const names = [...stampsOn(document).map(({ meter }) => meter), ...recorded];
  return [...new Set(names.flatMap((name) => name || []))];
}

/** When and with what the reading of a cell was taken. */
export const stampOf = (document: Document, spot: Spot): Taken | undefined =>
  cellAtSpot(document, spot)?.taken;
