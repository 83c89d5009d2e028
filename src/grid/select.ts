import type { Place, Range, RangeKind, SelectedRange, Selection } from './contract.ts';
import { span, within, type Extent } from './range.ts';

/** Selections as values: each function takes one and gives the next. */

export function selectCell(place: Place): Selection {
  return {
    focus: place,
    anchor: place,
    lead: place,
    ranges: [{ kind: 'cells', from: place, to: place }],
  };
}

export function selectBlock(range: Range, kind: RangeKind = 'cells'): Selection {
  return {
    focus: range.from,
    anchor: range.from,
    lead: range.to,
    ranges: [{ kind, from: range.from, to: range.to }],
  };
}

/** A whole row or column grows over the sheet's other extent, whatever corners it was given. */
function grown(range: Range, kind: RangeKind, extent: Extent): SelectedRange {
  const lastRow = extent.rowCount - 1;
  const lastColumn = extent.columnCount - 1;
  const rows = kind === 'columns' || kind === 'all' ? [0, lastRow] : [range.from.row, range.to.row];
  const columns =
    kind === 'rows' || kind === 'all' ? [0, lastColumn] : [range.from.column, range.to.column];
  return {
    kind,
    from: { row: rows[0] ?? 0, column: columns[0] ?? 0 },
    to: { row: rows[1] ?? 0, column: columns[1] ?? 0 },
  };
}

/** Starts a new selection at `place`: a cell, or the whole row or column it stands in. */
export function begin(place: Place, kind: RangeKind, extent: Extent): Selection {
  return {
    focus: place,
    anchor: place,
    lead: place,
    ranges: [grown({ from: place, to: place }, kind, extent)],
  };
}

/** As `begin`, keeping what was selected before. */
export function beginAnother(
  selection: Selection,
  place: Place,
  kind: RangeKind,
  extent: Extent,
): Selection {
  const added = grown({ from: place, to: place }, kind, extent);
  return { focus: place, anchor: place, lead: place, ranges: [...selection.ranges, added] };
}

/** Moves the free corner of the last range. */
export function extend(
  selection: Selection,
  lead: Place,
  extent: Extent,
  kind: RangeKind = lastRange(selection).kind,
): Selection {
  const last = grown(span(selection.anchor, lead), kind, extent);
  const before = selection.ranges.slice(0, -1);
  const [first = last, ...rest] = [...before, last];
  return { ...selection, lead, ranges: [first, ...rest] };
}

export function lastRange(selection: Selection): SelectedRange {
  return selection.ranges[selection.ranges.length - 1] ?? selection.ranges[0];
}

/** The same selection on a sheet that grew or shrank. */
export function refit(selection: Selection, extent: Extent): Selection {
  const fit = (place: Place) => within(place, extent);
  const [first, ...rest] = selection.ranges;
  const fitRange = (range: SelectedRange) =>
    grown({ from: fit(range.from), to: fit(range.to) }, range.kind, extent);
  return {
    focus: fit(selection.focus),
    anchor: fit(selection.anchor),
    lead: fit(selection.lead),
    ranges: [fitRange(first), ...rest.map(fitRange)],
  };
}

/** True if typing has one place to go: one range of one cell. */
export function isSingle(selection: Selection): boolean {
  const [only, another] = selection.ranges;
  return (
    another === undefined && only.from.row === only.to.row && only.from.column === only.to.column
  );
}
