import { referenceFromText, referenceToText } from '../formula/codec.ts';
import type { Reference } from '../formula/types.ts';
import type { Document, Id, Json, ShelfItem, Step } from './types.ts';

/**
 * A figure as the book keeps it, on its shelf `figures`: what kind it is, which cells it is drawn
 * from, what was chosen about it. The cells are named by the ids of their lines, so it follows them.
 */
export interface Figure {
  readonly id: Id;
  readonly kind: string;
  /** The sheet under which it stands. */
  readonly sheet: Id;
  /** Among the figures of its sheet; lower ones come first. */
  readonly place: number;
  readonly title: string;
  /** Cells by the names of the kind's inputs. One that leads nowhere any more is `lost`. */
  readonly ranges: Readonly<Record<string, Reference>>;
  /** What was typed in place of a cell, in the base unit of its input. */
  readonly values: Readonly<Record<string, number>>;
  readonly options: Readonly<Record<string, string>>;
}

export function figureItem({ ranges, ...figure }: Figure): ShelfItem {
  const written = Object.entries(ranges).map(([name, range]) => [name, referenceToText(range)]);
  return { ...figure, ranges: Object.fromEntries(written) };
}

/** `undefined` for an item that is no figure as this version knows them: it is kept as it is. */
export function figureFrom(item: ShelfItem): Figure | undefined {
  const { id, kind, sheet, place, title, ranges, values, options } = item;
  if (typeof kind !== 'string' || typeof sheet !== 'string') return undefined;
  return {
    ...{ id, kind, sheet },
    place: typeof place === 'number' ? place : 0,
    title: typeof title === 'string' ? title : '',
    ranges: only(ranges, (text) =>
      typeof text === 'string' ? (referenceFromText(text) ?? { kind: 'lost' }) : undefined,
    ),
    values: only(values, (value) => (typeof value === 'number' ? value : undefined)),
    options: only(options, (value) => (typeof value === 'string' ? value : undefined)),
  };
}

/** The entries of a record that are what they should be; none of what is no record. */
function only<T>(
  record: Json | undefined,
  take: (value: Json) => T | undefined,
): Record<string, T> {
  if (typeof record !== 'object' || record === null || Array.isArray(record)) return {};
  return Object.fromEntries(
    Object.entries(record as { readonly [key: string]: Json }).flatMap(([key, value]) => {
      const taken = take(value);
      return taken === undefined ? [] : [[key, taken]];
    }),
  );
}

/** Every figure of the book, in no order that means something. */
export const figuresOf = (document: Pick<Document, 'shelf'>): readonly Figure[] =>
  document.shelf('figures').items.flatMap((item) => figureFrom(item) ?? []);

/** The figures of one sheet as they stand under one another. */
export const figuresOn = (document: Pick<Document, 'shelf'>, sheet: Id): readonly Figure[] =>
  figuresOf(document)
    .filter((figure) => figure.sheet === sheet)
    .toSorted((a, b) => a.place - b.place || (a.id < b.id ? -1 : 1));

/** The step that puts these figures on the shelf as they are now. */
export const keepFigures = (figures: readonly Figure[]): Step => ({
  kind: 'setShelf',
  shelf: 'figures',
  items: figures.map((figure) => ({ id: figure.id, item: figureItem(figure) })),
});

export const takeFigures = (figures: readonly Figure[]): Step => ({
  kind: 'setShelf',
  shelf: 'figures',
  items: figures.map(({ id }) => ({ id, item: null })),
});

/** The figure with its references replaced; the same figure if none were. */
export function rewriteFigure(
  figure: Figure,
  replace: (reference: Reference) => Reference,
): Figure {
  const entries = Object.entries(figure.ranges).map(
    ([name, range]) => [name, range, replace(range)] as const,
  );
  if (entries.every(([, before, after]) => before === after)) return figure;
  return { ...figure, ranges: Object.fromEntries(entries.map(([name, , after]) => [name, after])) };
}
