import type { Place, Range, SelectedRange, Selection } from './contract.ts';

/** Rows of a sheet as they are counted where some are out of view, and back. */
export interface SeenRows {
  has(row: number): boolean;
  /** Where the nth row in view stands on the sheet. */
  onSheet(row: number): number;
  /** Which row in view it is; of one that is out of view, the next below it. */
  inView(row: number): number;
  /** The part in view; undefined where none is. */
  rangeInView(range: Range): Range | undefined;
  /** What is selected in view, piece by piece, so that nothing out of view is taken along. */
  selectionOnSheet(selection: Selection): Selection;
  selectionInView(selection: Selection): Selection;
}

/** `leftOut`: positions of the rows out of view, from the top. */
export function seenRows(leftOut: readonly number[]): SeenRows {
  /** How many of the first entries `test` holds for; it holds for no later one. */
  const count = (test: (row: number, index: number) => boolean): number => {
    let [low, high] = [0, leftOut.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (test(leftOut[middle] ?? 0, middle)) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  const above = (row: number) => count((out) => out < row);
  const has = (row: number) => leftOut[above(row)] !== row;
  const onSheet = (row: number) => row + count((out, index) => out - index <= row);
  const inView = (row: number) => row - above(row);
  const rangeInView = ({ from, to }: Range): Range | undefined => {
    const last = to.row - above(to.row + 1);
    const range = {
      from: { ...from, row: inView(from.row) },
      to: { ...to, row: last },
    };
    return range.from.row <= last ? range : undefined;
  };
  const pieces = (range: SelectedRange): readonly SelectedRange[] => {
    const { from, to, kind } = range;
    if (kind === 'columns' || kind === 'all')
      return [{ ...range, to: { ...to, row: onSheet(to.row) } }];
    const found: SelectedRange[] = [];
    for (let row = from.row; row <= to.row; row += 1) {
      const at = onSheet(row);
      const before = found.at(-1);
      if (before?.to.row === at - 1)
        found[found.length - 1] = { ...before, to: { ...to, row: at } };
      else found.push({ kind, from: { ...from, row: at }, to: { ...to, row: at } });
    }
    return found;
  };
  const joined = (ranges: readonly SelectedRange[]): readonly SelectedRange[] =>
    ranges.reduce<readonly SelectedRange[]>((all, range) => {
      const before = all.at(-1);
      const goesOn =
        before?.kind === range.kind &&
        before.from.column === range.from.column &&
        before.to.column === range.to.column &&
        before.to.row === range.from.row - 1;
      return goesOn ? [...all.slice(0, -1), { ...before, to: range.to }] : [...all, range];
    }, []);
  const along = (
    { focus, anchor, lead }: Selection,
    place: (at: Place) => Place,
    found: readonly SelectedRange[],
  ): Selection => {
    const [first, ...others] = found;
    const only = { from: place(focus), to: place(focus), kind: 'cells' } as const;
    return {
      focus: place(focus),
      anchor: place(anchor),
      lead: place(lead),
      ranges: [first ?? only, ...others],
    };
  };
  const whole = leftOut.length === 0;
  return {
    has,
    onSheet,
    inView,
    rangeInView,
    selectionOnSheet: (selection) =>
      whole
        ? selection
        : along(
            selection,
            ({ row, column }) => ({ row: onSheet(row), column }),
            selection.ranges.flatMap(pieces),
          ),
    selectionInView: (selection) =>
      whole
        ? selection
        : along(
            selection,
            ({ row, column }) => ({ row: inView(row), column }),
            joined(
              selection.ranges.flatMap((range) => {
                const seen = rangeInView(range);
                return seen ? [{ ...range, ...seen }] : [];
              }),
            ),
          ),
  };
}
