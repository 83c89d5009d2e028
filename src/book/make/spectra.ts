import { keyOf } from '../fixtures.ts';
import { spectraOf, type KeptSpectrum } from '../spectra.ts';
import type { Document, Id, Means, ShelfItem } from '../types.ts';
import { freeName, longestName } from './freeName.ts';
import { made, refused, type Made } from './made.ts';
import { words } from '../../words/words.ts';

/** A spectrum that is to be kept; its name may still be taken. */
export type NewSpectrum = Omit<KeptSpectrum, 'id'>;

/** Puts spectra on the shelf. A name that is taken gets a number behind it. */
export function addSpectra(
  document: Document,
  means: Pick<Means, 'newId'>,
  spectra: readonly NewSpectrum[],
): Made {
  const [first] = spectra;
  if (!first) return refused(words.spectra.none);
  const taken = new Set(spectraOf(document).map(({ name }) => keyOf(name)));
  const items = spectra.map((spectrum): ShelfItem => {
    const name = freeName(spectrum.name, taken, words.spectra.one);
    taken.add(keyOf(name));
    return { ...spectrum, name, id: means.newId() };
  });
  const label =
    items.length === 1 ? words.spectra.addOne(first.name) : words.spectra.addSome(items.length);
  return made(label, [
    { kind: 'setShelf', shelf: 'spectra', items: items.map((item) => ({ id: item.id, item })) },
  ]);
}

/** Another name. Formulas that look the old one up say that it is gone. */
export function renameSpectrum(document: Document, id: Id, name: string): Made {
  const spectrum = spectraOf(document).find((one) => one.id === id);
  if (!spectrum) return refused(words.spectra.gone);
  const wanted = name.trim();
  if (wanted === '') return refused(words.spectra.unnamed);
  if (wanted.length > longestName) return refused(words.book.nameTooLong(longestName));
  const other = spectraOf(document).find((one) => keyOf(one.name) === keyOf(wanted));
  if (other && other.id !== id) return refused(words.spectra.there(other.name));
  if (wanted === spectrum.name) return made(words.spectra.renameOne(wanted, wanted), []);
  return made(words.spectra.renameOne(spectrum.name, wanted), [
    { kind: 'setShelf', shelf: 'spectra', items: [{ id, item: { ...spectrum, name: wanted } }] },
  ]);
}

export function removeSpectrum(document: Document, id: Id): Made {
  const spectrum = spectraOf(document).find((one) => one.id === id);
  if (!spectrum) return refused(words.spectra.gone);
  return made(words.spectra.removeOne(spectrum.name), [
    { kind: 'setShelf', shelf: 'spectra', items: [{ id, item: null }] },
  ]);
}
