import { formulaFrom } from '../../formula/bind.ts';
import type { Reference } from '../../formula/types.ts';
import { figuresOf, figuresOn, keepFigures, takeFigures, type Figure } from '../figures.ts';
import { rewriteFigure } from '../figures.ts';
import type { Document, Id, Means, Step } from '../types.ts';
import { Growing } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

/** What a figure is to be: cells by their addresses, as seen from its sheet. */
export interface PlannedFigure {
  readonly kind: string;
  readonly title: string;
  /** `C12:C17`, `Camera!B4`, a name: by the names of the kind's inputs. */
  readonly cells: Readonly<Record<string, string>>;
  readonly values?: Readonly<Record<string, number>>;
  readonly options?: Readonly<Record<string, string>>;
}

const gone = words.book.figureGone;

/** A new figure under the others of its sheet. */
export function addFigure(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  planned: PlannedFigure,
): Made {
  const last = figuresOn(document, sheet).at(-1);
  const base = { id: means.newId(), sheet, place: (last?.place ?? -1) + 1 };
  return keeping(document, means, base, planned, words.book.addFigure(planned.title).trim());
}

/** The same figure from other cells, with another title or other choices. */
export function changeFigure(
  document: Document,
  means: Pick<Means, 'newId'>,
  id: Id,
  planned: PlannedFigure,
): Made {
  const before = figuresOf(document).find((figure) => figure.id === id);
  if (!before) return refused(gone);
  return keeping(document, means, before, planned, words.book.changeFigure(planned.title).trim());
}

function keeping(
  document: Document,
  means: Pick<Means, 'newId'>,
  { id, sheet, place }: Pick<Figure, 'id' | 'sheet' | 'place'>,
  { kind, title, cells, values = {}, options = {} }: PlannedFigure,
  label: string,
): Made {
  const growing = new Growing(document, means);
  const ranges: Record<string, Reference> = {};
  for (const [name, address] of Object.entries(cells)) {
    const range = rangeFrom(address, sheet, growing);
    if ('reason' in range) return refused(range.reason);
    ranges[name] = range;
  }
  const figure = { id, kind, sheet, place, title, ranges, values, options };
  return made(label, [...growing.steps, keepFigures([figure])]);
}

function rangeFrom(
  address: string,
  own: Id,
  growing: Growing,
): Reference | { readonly reason: string } {
  const formula = formulaFrom(`=${address}`, own, growing);
  const [reference, ...others] = 'reason' in formula ? [] : formula.references;
  const alone = 'reason' in formula ? false : formula.shape.pieces.join('').trim() === '=';
  if (!reference || others.length > 0 || !alone || reference.kind === 'lost')
    return { reason: words.book.noRange(address) };
  return reference;
}

/** One up or down among the figures of its sheet. */
export function moveFigure(document: Document, id: Id, way: -1 | 1): Made {
  const moved = figuresOf(document).find((figure) => figure.id === id);
  if (!moved) return refused(gone);
  const all = figuresOn(document, moved.sheet);
  const from = all.findIndex((figure) => figure.id === id);
  if (!all[from + way]) return refused(way < 0 ? words.book.firstFigure : words.book.lastFigure);
  const order = all.toSpliced(from, 1).toSpliced(from + way, 0, moved);
  const placed = order.map((figure, place) => ({ ...figure, place }));
  return made(words.book.moveFigure, [keepFigures(placed)]);
}

export function removeFigure(document: Document, id: Id): Made {
  const figure = figuresOf(document).find((one) => one.id === id);
  return figure
    ? made(words.book.removeFigure(figure.title).trim(), [takeFigures([figure])])
    : refused(gone);
}

/** Figures of one sheet for its copy: what they were drawn from there, they are drawn from here. */
export const figuresFor = (
  figures: readonly Figure[],
  means: Pick<Means, 'newId'>,
  from: Id,
  to: Id,
): readonly Figure[] =>
  figures.map((figure) => ({
    ...rewriteFigure(figure, (range) =>
      'sheet' in range && range.sheet === from ? { ...range, sheet: to } : range,
    ),
    id: means.newId(),
    sheet: to,
  }));

/** What goes with a sheet that is deleted. */
export function withoutFiguresOf(document: Document, sheet: Id): readonly Step[] {
  const figures = figuresOn(document, sheet);
  return figures.length > 0 ? [takeFigures(figures)] : [];
}
