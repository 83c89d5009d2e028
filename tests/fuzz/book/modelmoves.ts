import type { Ends, Line, MSheet, Model, Part, Ref } from './model.ts';
import { cellAt, holders, isRef, lineAt, living, newSheet, parse, put, span } from './model.ts';

/** What can be done to a book, done to the plain model. Indices count living lines. */

export interface Rect {
  top: number;
  left: number;
  height: number;
  width: number;
}

export type AxisName = 'rows' | 'columns';

export function type(model: Model, sheet: MSheet, row: number, column: number, text: string): void {
  const place = [lineAt(sheet.rows, row), lineAt(sheet.columns, column)] as const;
  put(sheet, ...place, text === '' ? undefined : parse(model, sheet, text));
}

export function insert(sheet: MSheet, axis: AxisName, at: number, count: number): void {
  const all = sheet[axis];
  const position = all.indexOf(lineAt(all, at));
  for (let i = 0; i < count; i++) all.splice(position, 0, { gone: false });
}

export function remove(sheet: MSheet, axis: AxisName, indices: readonly number[]): void {
  for (const line of indices.map((index) => lineAt(sheet[axis], index))) line.gone = true;
  sheet.cells = sheet.cells.filter(({ row, column }) => !row.gone && !column.gone);
}

export function move(
  model: Model,
  sheet: MSheet,
  axis: AxisName,
  indices: readonly number[],
  to: number,
): void {
  const all = sheet[axis];
  lineAt(all, Math.max(to, ...indices));
  const moved = living(all).filter((_, i) => indices.includes(i));
  const before = living(all);
  const follower = before.slice(to).find((line) => !moved.includes(line));
  const stayed = all.filter((line) => !moved.includes(line));
  stayed.splice(follower ? stayed.indexOf(follower) : stayed.length, 0, ...moved);
  if (living(stayed).every((line, i) => line === before[i])) return;
  for (const { parts } of holders(model))
    for (const part of parts)
      if (isRef(part) && part.sheet === sheet && !part.single) reanchor(all, part[axis], moved);
  sheet[axis] = stayed;
}

function reanchor(all: readonly Line[], ends: Ends | null, moved: readonly Line[]): void {
  const between = ends && living(all.slice(all.indexOf(ends.from), all.indexOf(ends.to) + 1));
  const [first, last] = [between?.[0], between?.at(-1)];
  if (!ends || !between || !first || !last) return;
  const [goesFirst, goesLast] = [moved.includes(first), moved.includes(last)];
  const stays = between.filter((line) => !moved.includes(line));
  if (goesFirst && goesLast) {
    ends.from = first;
    ends.to = last;
  } else if (goesFirst) ends.from = stays[0] ?? ends.from;
  else if (goesLast) ends.to = stays.at(-1) ?? ends.to;
}

export function sort(sheet: MSheet, rect: Rect, order: readonly number[]): void {
  const rows = order.map((_, i) => lineAt(sheet.rows, rect.top + i));
  const columns = Array.from({ length: rect.width }, (_, j) =>
    lineAt(sheet.columns, rect.left + j),
  );
  const before = rows.map((row) => columns.map((column) => cellAt(sheet, row, column)?.parts));
  rows.forEach((row, i) => {
    const from = rows[order[i] ?? i];
    if (!from || from === row) return;
    columns.forEach((column, j) => {
      const parts = before[order[i] ?? i]?.[j];
      put(
        sheet,
        row,
        column,
        parts?.map((part) => carried(sheet, part, from, row, columns)),
      );
    });
  });
}

function carried(sheet: MSheet, part: Part, from: Line, to: Line, columns: readonly Line[]): Part {
  if (!isRef(part) || part.sheet !== sheet || !part.rows || !part.columns || part.lost) return part;
  const { rows, columns: across } = part;
  const down = span(sheet.rows, rows);
  const wide = span(sheet.columns, across);
  if (!down || !wide || rows.fixedFrom || rows.fixedTo) return part;
  const ends = [
    ...down.map((i) => lineAt(sheet.rows, i)),
    ...wide.map((i) => lineAt(sheet.columns, i)),
  ];
  const [top, bottom, left, right] = ends;
  const own = top === from && bottom === from;
  if (!own || !left || !right || !columns.includes(left) || !columns.includes(right)) return part;
  return {
    ...part,
    rows: { ...rows, from: to, to },
    columns: { ...across, from: left, to: right },
  };
}

export function cut(
  model: Model,
  from: MSheet,
  rect: Rect,
  to: MSheet,
  row: number,
  column: number,
) {
  if (from === to && row === rect.top && column === rect.left) return;
  lineAt(to.rows, row + rect.height);
  lineAt(to.columns, column + rect.width);
  const shiftTo = (line: Line, axis: AxisName, start: number, by: number) => {
    const index = living(from[axis]).indexOf(line) - start;
    const size = axis === 'rows' ? rect.height : rect.width;
    return index >= 0 && index < size && !line.gone ? lineAt(to[axis], by + index) : undefined;
  };
  const down = (line: Line) => shiftTo(line, 'rows', rect.top, row);
  const across = (line: Line) => shiftTo(line, 'columns', rect.left, column);
  const moved = from.cells.filter((cell) => down(cell.row) && across(cell.column));
  const targetRows = Array.from({ length: rect.height }, (_, i) => lineAt(to.rows, row + i));
  const targetColumns = Array.from({ length: rect.width }, (_, j) =>
    lineAt(to.columns, column + j),
  );
  const overwritten = to.cells.filter(
    (cell) =>
      targetRows.includes(cell.row) && targetColumns.includes(cell.column) && !moved.includes(cell),
  );
  to.cells = to.cells.filter((cell) => !overwritten.includes(cell));
  for (const { parts } of holders(model))
    parts.forEach((part, i) => {
      parts[i] = follow(part, from, to, down, across);
    });
  from.cells = from.cells.filter((cell) => !moved.includes(cell));
  for (const cell of moved)
    to.cells.push({
      row: down(cell.row) ?? cell.row,
      column: across(cell.column) ?? cell.column,
      parts: cell.parts.map((part) =>
        isRef(part) && part.sheet !== to ? { ...part, explicit: true } : part,
      ),
    });
}

function follow(
  part: Part,
  from: MSheet,
  to: MSheet,
  down: (line: Line) => Line | undefined,
  across: (line: Line) => Line | undefined,
): Part {
  if (!isRef(part) || part.sheet !== from || !part.rows || !part.columns || part.lost) return part;
  const high = span(from.rows, part.rows);
  const wide = span(from.columns, part.columns);
  if (!high || !wide) return part;
  const [top, bottom] = high.map((i) => down(lineAt(from.rows, i)));
  const [left, right] = wide.map((i) => across(lineAt(from.columns, i)));
  if (!top || !bottom || !left || !right) return part;
  return {
    ...part,
    sheet: to,
    rows: { ...part.rows, from: top, to: bottom },
    columns: { ...part.columns, from: left, to: right },
  };
}

export function copy(from: MSheet, rect: Rect, to: MSheet, target: Rect): void {
  const even = target.height % rect.height === 0 && target.width % rect.width === 0;
  const { height, width } = even ? target : rect;
  pour(to, { ...target, height, width }, (i, j) => {
    const row = rect.top + (i % rect.height);
    const column = rect.left + (j % rect.width);
    return shifted(from, row, column, to, target.top + i, target.left + j);
  });
}

export function fill(
  sheet: MSheet,
  rect: Rect,
  direction: 'down' | 'up' | 'right' | 'left',
  count: number,
): void {
  const along = direction === 'down' || direction === 'up';
  const size = along ? rect.height : rect.width;
  const target = { ...rect };
  if (direction === 'down') target.top += rect.height;
  if (direction === 'right') target.left += rect.width;
  if (direction === 'up') target.top -= count;
  if (direction === 'left') target.left -= count;
  if (along) target.height = count;
  else target.width = count;
  pour(sheet, target, (i, j) => {
    const position = along ? i : j;
    const across = along ? j : i;
    const step = direction === 'up' || direction === 'left' ? position - count : size + position;
    const at = (k: number) =>
      [rect.top + (along ? k : across), rect.left + (along ? across : k)] as const;
    const numbers = Array.from({ length: size }, (_, k) => {
      const parts = partsAt(sheet, ...at(k));
      return parts?.length === 1 && /^-?\d+$/.test(String(parts[0])) ? Number(parts[0]) : undefined;
    });
    const series = continued(numbers, step);
    if (series !== undefined) return [String(series)];
    const [row, column] = at(((step % size) + size) % size);
    return shifted(sheet, row, column, sheet, target.top + i, target.left + j);
  });
}

function continued(numbers: readonly (number | undefined)[], step: number): number | undefined {
  const [first, second] = numbers;
  if (first === undefined || second === undefined) return undefined;
  const by = second - first;
  return numbers.every((number, k) => number === first + by * k) ? first + by * step : undefined;
}

function partsAt(sheet: MSheet, row: number, column: number): Part[] | undefined {
  return cellAt(sheet, lineAt(sheet.rows, row), lineAt(sheet.columns, column))?.parts;
}

function pour(sheet: MSheet, rect: Rect, partsFor: (i: number, j: number) => Part[] | undefined) {
  const all: [number, number, Part[] | undefined][] = [];
  for (let i = 0; i < rect.height; i++)
    for (let j = 0; j < rect.width; j++) all.push([rect.top + i, rect.left + j, partsFor(i, j)]);
  for (const [row, column, parts] of all)
    put(sheet, lineAt(sheet.rows, row), lineAt(sheet.columns, column), parts);
}

function shifted(
  from: MSheet,
  row: number,
  column: number,
  to: MSheet,
  toRow: number,
  toColumn: number,
): Part[] | undefined {
  return partsAt(from, row, column)?.map((part) => {
    if (!isRef(part) || part.lost) return part;
    const sheet = part.explicit || part.sheet !== from ? part.sheet : to;
    const rows = part.rows && shiftEnds(part.sheet, sheet, 'rows', part.rows, toRow - row);
    const columns =
      part.columns && shiftEnds(part.sheet, sheet, 'columns', part.columns, toColumn - column);
    const lost = part.sheet.gone || rows === undefined || columns === undefined;
    const copy: Ref = { ...part, sheet, lost };
    return lost ? copy : { ...copy, rows, columns };
  });
}

function shiftEnds(
  from: MSheet,
  to: MSheet,
  axis: AxisName,
  ends: Ends,
  by: number,
): Ends | undefined {
  const found = span(from[axis], ends);
  if (!found) return undefined;
  const [low, high] = [found[0] + (ends.fixedFrom ? 0 : by), found[1] + (ends.fixedTo ? 0 : by)];
  if (low < 0 || high < 0) return undefined;
  const [a, b] = [lineAt(to[axis], low), lineAt(to[axis], high)];
  return low <= high
    ? { ...ends, from: a, to: b }
    : { from: b, to: a, fixedFrom: ends.fixedTo, fixedTo: ends.fixedFrom };
}

/** Copies what is alive: a range resting on a gone line rests on the living one inside. */
export function duplicate(model: Model, sheet: MSheet, name: string): void {
  const copy = newSheet(name);
  const twin = (axis: AxisName) => {
    const twins = new Map(living(sheet[axis]).map((line) => [line, { gone: false }]));
    copy[axis] = [...twins.values()];
    return twins;
  };
  const rows = twin('rows');
  const columns = twin('columns');
  const ends = (axis: AxisName, twins: Map<Line, Line>, before: Ends | null) => {
    if (!before) return null;
    const found = span(sheet[axis], before);
    const [from, to] = (found ?? []).map((i) => twins.get(lineAt(sheet[axis], i)));
    return from && to ? { ...before, from, to } : undefined;
  };
  for (const cell of sheet.cells) {
    const [row, column] = [rows.get(cell.row), columns.get(cell.column)];
    if (!row || !column) continue;
    const parts = cell.parts.map((part): Part => {
      if (!isRef(part) || part.sheet !== sheet || part.explicit || part.lost) return part;
      const [down, across] = [
        ends('rows', rows, part.rows),
        ends('columns', columns, part.columns),
      ];
      return down === undefined || across === undefined
        ? { ...part, lost: true }
        : { ...part, sheet: copy, rows: down, columns: across };
    });
    copy.cells.push({ row, column, parts });
  }
  model.sheets.splice(model.sheets.indexOf(sheet) + 1, 0, copy);
}

export function renameName(model: Model, before: string, after: string): void {
  const same = (name: string) => name.toLowerCase() === before.toLowerCase();
  for (const { parts } of holders(model))
    parts.forEach((part, i) => {
      if (typeof part === 'object' && 'name' in part && !isRef(part) && same(part.name))
        parts[i] = { name: after };
    });
  for (const name of model.names) if (same(name.name)) name.name = after;
}
