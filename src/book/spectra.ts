import * as v from 'valibot';
import { checkReadings } from '../../functions/spectrum/readings.ts';
import type { Spectra } from '../../functions/spectrum/spectra.ts';
import type { Spectrum } from '../../functions/spectrum/spectrum.ts';
import { words } from '../words/words.ts';
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

/** Items never change, a changed spectrum is another: each is read once. */
const read = new WeakMap<ShelfItem, Kept | undefined>();

interface Kept {
  readonly kept: KeptSpectrum;
  readonly spectrum: Spectrum;
}

function keptFrom(item: ShelfItem): Kept | undefined {
  if (read.has(item)) return read.get(item);
  const parsed = v.safeParse(spectrum, item);
  const kept = parsed.success ? parsed.output : undefined;
  const checked =
    kept?.nm.length === kept?.values.length && kept
      ? checkReadings(
          kept.nm.map((nm, index) => ({ nm, value: kept.values[index]! })),
          kept.kind,
        )
      : undefined;
  const found = kept && checked?.ok ? { kept, spectrum: checked.spectrum } : undefined;
  read.set(item, found);
  return found;
}

/** `undefined` for an item that is no spectrum as this version knows them: it is kept as it is. */
export const spectrumFrom = (item: ShelfItem): KeptSpectrum | undefined => keptFrom(item)?.kept;

/** The spectra of a book, by their names. */
export function spectraOf(document: Pick<Document, 'shelf'>): readonly KeptSpectrum[] {
  return document
    .shelf('spectra')
    .items.flatMap((item) => spectrumFrom(item) ?? [])
    .toSorted((one, other) => (keyOf(one.name) < keyOf(other.name) ? -1 : 1));
}

/** A kept spectrum as figures are worked out from it. */
export const curveIn = (item: ShelfItem): Spectrum | undefined => keptFrom(item)?.spectrum;

/** The spectra of a book by name, for the engine. */
export function spectraIn(document: Pick<Document, 'shelf'>): Spectra {
  const items = new Map<string, ShelfItem>();
  const names: string[] = [];
  for (const item of document.shelf('spectra').items) {
    const { name } = item;
    if (typeof name !== 'string' || items.has(keyOf(name))) continue;
    items.set(keyOf(name), item);
    names.push(name);
  }
  return {
    names: names.toSorted((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1)),
    named(name) {
      const item = items.get(keyOf(name));
      return item && (curveIn(item) ?? words.spectra.unknownKind);
    },
  };
}
