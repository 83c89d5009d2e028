import type { Document } from '../../book/types.ts';
import { agreementOf } from '../../check/agreement.ts';
import { isDrawnWithin } from '../../check/tolerance.ts';
import type { HeadView, Point, RemarksView, SheetEntry } from '../shown.ts';
import { countOf } from './points.ts';

type PointsOf = (sheet: string) => readonly Point[];

/** `held`: whether anything on the sheet is held to its tolerance. */
export function headView(
  document: Document,
  id: string,
  points: PointsOf,
  held: boolean,
  filtered: string,
): HeadView {
  const sheet = document.sheet(id);
  if (!sheet)
    return {
      sheet: id,
      title: '',
      purpose: '',
      points: [],
      agreement: '',
      tolerance: 0,
      ownTolerance: false,
      filtered: '',
      isHeld: false,
    };
  const judged = points(id);
  const { title, name, purpose, tolerance } = sheet.properties;
  return {
    sheet: id,
    title: title || name,
    purpose,
    points: judged,
    agreement: agreementOf(judged).words,
    tolerance: tolerance ?? document.settings.tolerance,
    ownTolerance: tolerance !== null,
    filtered,
    isHeld: held || isDrawnWithin(document, id),
  };
}

export function contentsView(
  document: Document,
  shown: string,
  points: PointsOf,
  { marks }: RemarksView,
): readonly SheetEntry[] {
  const remarks = new Map(marks.map(({ sheet, count }) => [sheet, count]));
  return document.sheets.map(({ id, properties }) => {
    const count = countOf(points(id));
    const remarksHere = remarks.get(id);
    return {
      id,
      title: properties.title || properties.name,
      phase: properties.phase,
      shown: id === shown,
      ...(count !== undefined && { count }),
      ...(remarksHere !== undefined && { remarks: remarksHere }),
    };
  });
}

/** How many points of the whole book agree; nothing where that is the sum of one sheet. */
export function bookAgreement(bySheet: readonly (readonly Point[])[]): string {
  const judged = bySheet.filter((points) => points.length > 0);
  return judged.length < 2 ? '' : agreementOf(judged.flat()).words;
}
