import {
  isBlank,
  isError,
  isMeasured,
  isRange,
  type Argument,
  type FunctionError,
  type RangeCell,
  type TableCell,
  type TableRow,
} from '../values.ts';
import { errorAmong } from './range.ts';
import { waitingFor, type Slot } from './slot.ts';

/** Rows of a range with all that stands in them; a range with nothing in it is waited for. */
export function readTable(
  slot: Slot,
  argument: Exclude<Argument, undefined>,
): readonly TableRow[] | FunctionError {
  const { cells, width = 1 } = isRange(argument) ? argument : { cells: [{ value: argument }] };
  const failed = errorAmong(cells);
  if (failed) return failed;
  if (cells.every(({ value }) => isBlank(value))) {
    const [first] = cells;
    return waitingFor(
      slot,
      first && isBlank(first.value) ? (first.value.at ?? first.at) : undefined,
    );
  }
  const rows: TableRow[] = [];
  for (let from = 0; from < cells.length; from += width)
    rows.push(cells.slice(from, from + width).map(tableCell));
  return rows;
}

/** Says where it is only when asked, as the cell does that it was made from. */
function tableCell(cell: RangeCell): TableCell {
  return {
    value: plain(cell.value),
    get at() {
      return cell.at ?? '';
    },
  };
}

function plain(value: RangeCell['value']): TableCell['value'] {
  // A formula cannot leave its cell empty: no text is as good as nothing.
  if (isBlank(value) || isError(value) || value === '') return undefined;
  return isMeasured(value) ? value.value : value;
}
