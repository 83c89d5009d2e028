import { figuresOf, keepFigures } from '../figures.ts';
import { keyOf } from '../fixtures.ts';
import { spectraOf, type KeptSpectrum } from '../spectra.ts';
import type { Document, Id, Means } from '../types.ts';
import { made, type Made } from './made.ts';
import { addTo, removeFrom, renameOn, type Shelving } from './shelf.ts';
import { words } from '../../words/words.ts';

/** A spectrum that is to be kept; its name may still be taken. */
export type NewSpectrum = Omit<KeptSpectrum, 'id'>;

const shelving: Shelving = { shelf: 'spectra', all: spectraOf, said: words.spectra.shelf };

export const addSpectra = (
  document: Document,
  means: Pick<Means, 'newId'>,
  spectra: readonly NewSpectrum[],
): Made => addTo(shelving, document, means, spectra);

/** What a figure chose from this shelf stands among its options under these names. */
const choices = ['spectrum', 'filter'] as const;

/** Another name, in the figures that are drawn from it too. */
export function renameSpectrum(document: Document, id: Id, name: string): Made {
  const renamed = renameOn(shelving, document, id, name);
  const before = spectraOf(document).find((one) => one.id === id);
  if (!renamed.ok || !before || renamed.transaction.steps.length === 0) return renamed;
  const figures = figuresOf(document).flatMap((figure) => {
    const named = choices.filter(
      (choice) => keyOf(figure.options[choice] ?? '') === keyOf(before.name),
    );
    const options = Object.fromEntries(named.map((choice) => [choice, name.trim()]));
    return named.length > 0 ? [{ ...figure, options: { ...figure.options, ...options } }] : [];
  });
  const { label, steps } = renamed.transaction;
  return made(label, [...steps, ...(figures.length > 0 ? [keepFigures(figures)] : [])]);
}

export const removeSpectrum = (document: Document, id: Id): Made =>
  removeFrom(shelving, document, id);
