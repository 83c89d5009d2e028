import { checkReadings } from '../../../functions/spectrum/readings.ts';
import type { Spectra } from '../../../functions/spectrum/spectra.ts';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { spectrumFrom } from '../../book/spectra.ts';
import type { Document, ShelfItem } from '../../book/types.ts';
import { words } from '../../words/words.ts';
import { byName } from '../byName.ts';

/** Items never change, a changed spectrum is another: each is read once. */
const read = new WeakMap<ShelfItem, Spectrum | undefined>();

/** An item of the shelf as figures are worked out from it; undefined where it is none. */
export function spectrumOf(item: ShelfItem): Spectrum | undefined {
  if (read.has(item)) return read.get(item);
  const kept = spectrumFrom(item);
  const readings = kept?.nm.map((nm, index) => ({ nm, value: kept.values[index]! }));
  const checked = kept && readings ? checkReadings(readings, kept.kind) : undefined;
  const found = checked?.ok ? checked.spectrum : undefined;
  read.set(item, found);
  return found;
}

/** The spectra of a book by name, for the engine. */
export const spectraIn = (document: Pick<Document, 'shelf'>): Spectra =>
  byName(document.shelf('spectra').items, spectrumOf, words.spectra.unknownKind);
