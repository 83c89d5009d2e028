import {
  addSpectra,
  removeSpectrum,
  renameSpectrum,
  type NewSpectrum,
} from '../book/make/spectra.ts';
import { spectraOf } from '../book/spectra.ts';
import { done, type AnyCommand, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { words } from '../words/words.ts';

interface OfSpectrum {
  readonly spectrum: string;
}

/** The list of the book’s spectra, with what each of them comes to. */
export const manage: AnyCommand = {
  id: 'spectra.manage',
  name: words.commands.spectra,
  group: 'book',
  search: [
    ...['spectrum', 'wavelength', 'spd', 'spectrometer', 'cri', 'ssi', 'tlci', 'cgats', 'tm-27'],
    ...['filter', 'transmission', 'add a spectrum', 'import', 'sample'],
  ],
  asks: 'spectra',
  run: () => done,
};

/** One or several, from files or pasted: one gesture. */
export const add: Command<{ readonly spectra: readonly NewSpectrum[] }> = {
  id: 'spectra.add',
  name: words.commands.addSpectra,
  group: 'book',
  run: (context, { spectra }) =>
    carryOut(context, addSpectra(context.book.document, context.means, spectra)),
};

export const rename: Command<OfSpectrum & { readonly name: string }> = {
  id: 'spectra.rename',
  name: words.commands.renameSpectrum,
  group: 'book',
  run(context, { spectrum, name }) {
    const before = spectraOf(context.book.document).find(({ id }) => id === spectrum);
    const say = before && words.commands.renamedSpectrum(before.name);
    return carryOut(context, renameSpectrum(context.book.document, spectrum, name), say);
  },
};

export const remove: Command<OfSpectrum> = {
  id: 'spectra.remove',
  name: words.commands.removeSpectrum,
  group: 'book',
  run: (context, { spectrum }) =>
    carryOut(
      context,
      removeSpectrum(context.book.document, spectrum),
      words.commands.removedSpectrum,
    ),
};

export const spectrumCommands: readonly AnyCommand[] = [manage, add, rename, remove];
