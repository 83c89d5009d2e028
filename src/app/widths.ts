const usual = 96;

/**
 * On a narrow screen what a row is called leaves room for one whole column beside it: the frozen
 * columns, several of which may take more, or the first column where none is frozen.
 */
const narrow = { headings: 44, share: 0.38, severalShare: 0.5, beside: 152 };

/** A grid that is less wide is one on a phone. */
export const narrowBelow = 640;

/**
 * How wide a column is shown, in pixels.
 * @param sizeOf how wide a column is meant to be, where that is said
 * @param frozen how many columns stay in view
 * @param wide how wide the grid may be
 */
export function widthInView(
  sizeOf: (column: number) => number | undefined,
  column: number,
  frozen: number,
  wide: number,
): number {
  const width = sizeOf(column) ?? usual;
  if (wide >= narrowBelow) return width;
  const inView = wide - narrow.headings;
  if (frozen === 0) return Math.min(width, column === 0 ? inView - narrow.beside : inView);
  const all = Array.from({ length: frozen }, (_, at) => sizeOf(at) ?? usual);
  const sum = all.reduce((total, one) => total + one, 0);
  const forFrozen = Math.min(sum, (frozen > 1 ? narrow.severalShare : narrow.share) * wide);
  return Math.round(
    column < frozen ? (width * forFrozen) / sum : Math.min(width, inView - forFrozen),
  );
}
