import type { Document } from '../../book/types.ts';
import type { HeadView, Point, SheetEntry } from '../workbook.ts';
import { countOf } from './points.ts';

type PointsOf = (sheet: string) => readonly Point[];

export function headView(document: Document, id: string, points: PointsOf): HeadView {
  const sheet = document.sheet(id);
  if (!sheet)
    return { sheet: id, title: '', purpose: '', points: [], tolerance: 0, ownTolerance: false };
  const { title, name, purpose, tolerance } = sheet.properties;
  return {
    sheet: id,
    title: title || name,
    purpose,
    points: points(id),
    tolerance: tolerance ?? document.settings.tolerance,
    ownTolerance: tolerance !== null,
  };
}

export function contentsView(
  document: Document,
  shown: string,
  points: PointsOf,
): readonly SheetEntry[] {
  return document.sheets.map(({ id, properties }) => {
    const count = countOf(points(id));
    return {
      id,
      title: properties.title || properties.name,
      phase: properties.phase,
      shown: id === shown,
      ...(count !== undefined && { count }),
    };
  });
}
