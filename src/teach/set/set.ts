import { buildBook } from '../../../templates/build.ts';
import type { Document, Means } from '../../book/types.ts';
import { setExercise } from '../author.ts';
import { footcandles } from './footcandles.ts';
import { incident } from './incident.ts';
import { inverseSquare } from './inverseSquare.ts';
import { mired } from './mired.ts';
import { neutralDensity } from './neutralDensity.ts';
import { power } from './power.ts';
import { ratios } from './ratios.ts';
import { layOut, type SetExercise } from './sheet.ts';
import { shutter } from './shutter.ts';
import { spectra } from './spectra.ts';
import { spot } from './spot.ts';
import { stops } from './stops.ts';
import { tStops } from './tStops.ts';

/** The exercises that come along, from stops to spectra, the easy ones first. */
export const exerciseSet: readonly SetExercise[] = [
  stops,
  ratios,
  inverseSquare,
  neutralDensity,
  footcandles,
  incident,
  tStops,
  shutter,
  mired,
  spot,
  power,
  spectra,
];

export const exerciseIds: readonly string[] = exerciseSet.map(({ id }) => id);

/** A book with one of our exercises in it. */
export function exerciseBook(id: string, means: Means): Document {
  const planned = exerciseSet.find((one) => one.id === id);
  if (!planned) throw new Error(`There is no exercise ${id}.`);
  return bookOf(planned, means);
}

/** A planned exercise as a book of its own; a plan that cannot be carried out is a mistake of its author. */
export function bookOf(planned: SetExercise, means: Means): Document {
  const { sheet, exercise } = layOut(planned);
  const book = buildBook({ title: sheet.title, sheets: [sheet] }, means);
  const made = setExercise(book.document, means, book.document.sheets[0]?.id ?? '', exercise);
  const ran = made.ok ? book.run(made.transaction) : made;
  if (!ran.ok) throw new Error(`${planned.id}: ${ran.reason}`);
  return book.document;
}
