import { photosOfRecord, recordsOf } from '../records.ts';
import type { Document } from '../types.ts';

/** A picture as a file of a book carries it. */
export interface PhotoFile {
  readonly hash: string;
  /** JPEG, in base64. */
  readonly jpeg: string;
}

const carried = new WeakMap<Document, readonly PhotoFile[]>();

/** The pictures that came in the same file as a book; the book itself holds only their hashes. */
export const photosWith = (document: Document): readonly PhotoFile[] => carried.get(document) ?? [];

export function carry(document: Document, photos: readonly PhotoFile[]): void {
  if (photos.length > 0) carried.set(document, photos);
}

/** The hashes of all photos on living cells and in records, each once, in order. */
export function photosOn(document: Document): readonly string[] {
  const found = new Set<string>();
  for (const sheet of document.sheets)
    for (const { cell } of sheet.cells()) for (const { hash } of cell.photos ?? []) found.add(hash);
  for (const record of recordsOf(document))
    for (const hash of photosOfRecord(record)) found.add(hash);
  return [...found].sort();
}
