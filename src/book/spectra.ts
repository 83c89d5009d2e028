import * as v from 'valibot';
import { keyOf } from './fixtures.ts';
import { id } from './form/schema.ts';
import type { Document, ShelfItem } from './types.ts';

const numbers = v.pipe(v.array(v.pipe(v.number(), v.finite())), v.maxLength(20_000));

const spectrum = v.strictObject({
  id,
  name: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60)),
  /** Power of which only the shape counts, W/(m²·nm), or the share that a filter lets through. */
  kind: v.picklist(['shape', 'irradiance', 'transmission']),
  /** Wavelengths in nanometres and, in the same order, the values. */
  nm: numbers,
  values: numbers,
  /** What the file was called that it came from. */
  file: v.exactOptional(v.string()),
});

/** A spectrum as the book keeps it, on its shelf `spectra`. */
export type KeptSpectrum = v.InferOutput<typeof spectrum>;

/**
 * `undefined` for an item that is no spectrum as this version knows them: it is kept as it is.
 * Whether its numbers make sense is for who reads it.
 */
export function spectrumFrom(item: ShelfItem): KeptSpectrum | undefined {
  const parsed = v.safeParse(spectrum, item);
  if (!parsed.success || parsed.output.nm.length !== parsed.output.values.length) return undefined;
  return parsed.output;
}

/** The spectra of a book, by their names. */
export function spectraOf(document: Pick<Document, 'shelf'>): readonly KeptSpectrum[] {
  return document
    .shelf('spectra')
    .items.flatMap((item) => spectrumFrom(item) ?? [])
    .toSorted((one, other) => (keyOf(one.name) < keyOf(other.name) ? -1 : 1));
}
