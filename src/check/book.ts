import { addressAt, cellAtSpot, spotOf } from '../book/look.ts';
import type { Cell, Document } from '../book/types.ts';
import { findingsIn } from '../engine/index.ts';
import type { CellPlace, Engine } from '../engine/types.ts';
import { notesAt } from './notes.ts';
import type { Remark } from './remark.ts';
import { sentenceFor } from './sentences.ts';

/** Everything there is to remark on in one cell, its own mistakes first. */
export function remarksAt(document: Document, engine: Engine, place: CellPlace): readonly Remark[] {
  return [
    ...marksAt(document, engine, place),
    ...notesAt(engine, place).map((note) => ({ place, ...note })),
  ];
}

/** What does not go together in one cell. */
export function marksAt(document: Document, engine: Engine, place: CellPlace): readonly Remark[] {
  const cell = cellAtSpot(document, place);
  if (!cell || !isChecked(cell)) return [];
  const sentences = new Set(findingsIn(engine, place).map(sentenceFor));
  return [...sentences].map((sentence) => ({ place, about: 'unit', sentence }));
}

/** Cells with a formula, in themselves or as their target. */
export function isChecked({ content, target }: Cell): boolean {
  return content.kind === 'formula' || typeof target === 'object';
}

/** The whole book, by sheet and address. */
export function checkBook(document: Document, engine: Engine): readonly Remark[] {
  return document.sheets.flatMap((sheet) => {
    const spots = [...sheet.cells()].flatMap(({ row, column, cell }) =>
      isChecked(cell) ? (spotOf(document, { sheet: sheet.id, row, column }) ?? []) : [],
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
