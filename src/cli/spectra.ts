import { keyOf } from '../book/fixtures.ts';
import { addSpectra, removeSpectrum, type NewSpectrum } from '../book/make/spectra.ts';
import { spectraOf } from '../book/spectra.ts';
import type { Book } from '../book/types.ts';
import { takeSpectra } from '../files/spectra/take.ts';
import { runMade } from './fixtures.ts';
import { contentOf } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io } from './types.ts';

/** Puts spectra on the shelf of a book, each under its name, in place of one of that name. */
export async function putSpectra(book: Book, given: readonly string[], io: Io): Promise<void> {
  let count = 0;
  const means = { newId: () => `spectrum-${String(++count)}` };
  for (const one of given) {
    const [, name = '', path = ''] = /^([^=]*)=(.*)$/s.exec(one) ?? [];
    if (name.trim() === '' || path === '')
      throw new Unusable(words.commandLine.wantsNot('spectrum', words.commandLine.nameFile, one));
    const taken = takeSpectra({ name: path, content: await contentOf(path, io) });
    if (!taken.ok) throw new Unusable(`${path}: ${taken.reason}`);
    for (const note of taken.notes) io.err(`${path}: ${note}\n`);
    const spectrum = wanted(taken.spectra, name, path);
    const before = spectraOf(book.document).find((kept) => keyOf(kept.name) === keyOf(name));
    if (before) runMade(book, removeSpectrum(book.document, before.id));
    runMade(book, addSpectra(book.document, means, [{ ...spectrum, name: name.trim() }]));
  }
}

/** The only one of a file, or the one that the file itself calls so. */
function wanted(spectra: readonly NewSpectrum[], name: string, path: string): NewSpectrum {
  const [only, more] = spectra;
  const found = more ? spectra.find((one) => keyOf(one.name) === keyOf(name)) : only;
  if (found) return found;
  const names = spectra.map((one) => one.name).join(', ');
  throw new Unusable(words.commandLine.severalSpectra(path, names));
}
