import { addressAt, cellAtSpot, spotOf } from '../book/look.ts';
import type { Document } from '../book/types.ts';
import { inspect } from '../engine/index.ts';
import type { CellPlace, Engine } from '../engine/types.ts';
import { receptorRemark } from './receptors.ts';
import type { Remark } from './remark.ts';
import { sentenceFor } from './sentences.ts';

/** Everything there is to remark on in one cell, its own mistakes first. */
export function remarksAt(document: Document, engine: Engine, place: CellPlace): readonly Remark[] {
  const cell = cellAtSpot(document, place);
  if (!cell || (cell.content.kind !== 'formula' && typeof cell.target !== 'object')) return [];
  const { findings, remarks } = inspect(engine, place);
  const meter = receptorRemark(engine, place);
  return [
    ...[...new Set(findings.map(sentenceFor))].map((sentence) => remark(place, 'unit', sentence)),
    ...remarks.map((sentence) => remark(place, 'standard', sentence)),
    ...(meter === undefined ? [] : [remark(place, 'meter', meter)]),
  ];
}

function remark(place: CellPlace, about: Remark['about'], sentence: string): Remark {
  return { place, sentence, about };
}

/** The whole book, by sheet and address. */
export function checkBook(document: Document, engine: Engine): readonly Remark[] {
  return document.sheets.flatMap((sheet) => {
    const spots = [...sheet.cells()].flatMap(({ row, column, cell }) =>
      cell.content.kind === 'formula' || typeof cell.target === 'object'
        ? (spotOf(document, { sheet: sheet.id, row, column }) ?? [])
        : [],
    );
    return spots
      .toSorted((a, b) => a.row - b.row || a.column - b.column)
      .flatMap((spot) => remarksAt(document, engine, spot));
  });
}

/** `Sail loft!B4: sentence`. */
export function remarkLine(document: Document, { place, sentence }: Remark): string {
  const name = document.sheet(place.sheet)?.properties.name ?? '';
  return `${name}!${addressAt(place)}: ${sentence}`;
}
