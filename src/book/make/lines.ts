import { draftOf } from '../inside/opened.ts';
import type { AxisName, Block, Document, Id, LineProperties, Means } from '../types.ts';
import { Growing, beyondSheet } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

const gone = words.book.sheetGone;

/** New empty lines before the line at `at`. Beyond the lines in use there is nothing to shift. */
export function insertLines(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  axis: AxisName,
  at: number,
  count: number,
): Made {
  const lines = draftOf(document).sheet(sheet)?.lines(axis);
  if (!lines) return refused(gone);
  const before = lines.idAt(at);
  const label = words.book.insertLines(axis, count);
  if (before === undefined || count < 1) return made(label, []);
  const ids = Array.from({ length: count }, () => means.newId());
  const after = lines.before(before);
  return made(
    label,
    [{ kind: 'insertLines', sheet, axis, ids, after }],
    crossing(document, sheet, axis, ids),
  );
}

/** Deletes the lines at these positions; those never used need no deleting. */
export function removeLines(
  document: Document,
  sheet: Id,
  axis: AxisName,
  indices: readonly number[],
): Made {
  const lines = document.sheet(sheet)?.[axis];
  if (!lines) return refused(gone);
  const ids = linesAt(lines.ids, indices);
  const label = words.book.deleteLines(axis, indices.length);
  if (ids.length === 0) return made(label, []);
  return made(
    label,
    [{ kind: 'removeLines', sheet, axis, ids }],
    crossing(document, sheet, axis, ids),
  );
}

/** Moves the lines at these positions before the line that is at `to` now. */
export function moveLines(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  axis: AxisName,
  indices: readonly number[],
  to: number,
): Made {
  const growing = new Growing(document, means);
  const last = Math.max(to - 1, ...indices);
  if (!document.sheet(sheet)) return refused(gone);
  if (last >= 0 && growing.lineAt(sheet, axis, last) === undefined) return refused(beyondSheet);
  const order = Array.from({ length: last + 1 }, (_, i) => growing.lineAt(sheet, axis, i) ?? '');
  const all = [...order, ...(document.sheet(sheet)?.[axis].ids.slice(last + 1) ?? [])];
  const ids = linesAt(all, indices);
  const label = words.book.moveLines(axis, ids.length);
  if (staysInOrder(all, ids, to)) return made(label, []);
  const moved = new Set(ids);
  const follower = all.slice(to).find((id) => !moved.has(id));
  const anchor = anchorBefore(document, growing, sheet, axis, follower, moved);
  const after = ids.map((_, i) => ids[i - 1] ?? anchor);
  return made(
    label,
    [...growing.steps, { kind: 'moveLines', sheet, axis, ids, after }],
    crossing(document, sheet, axis, ids),
  );
}

/** Widths or heights, in pixels at zoom 1; `null` for the usual size. */
export function sizeLines(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  axis: AxisName,
  indices: readonly number[],
  size: number | null,
): Made {
  return describeLines(
    document,
    means,
    sheet,
    axis,
    indices,
    words.book.sizeLines(axis),
    (before) => {
      const { size: _, ...rest } = before;
      return size === null ? rest : { ...rest, size };
    },
  );
}

/** Changes what lines say about themselves. Lines come into use by it. */
export function describeLines(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
  axis: AxisName,
  indices: readonly number[],
  label: string,
  change: (before: LineProperties) => LineProperties,
): Made {
  const growing = new Growing(document, means);
  const own = document.sheet(sheet)?.[axis];
  if (!own) return refused(gone);
  if (growing.lineAt(sheet, axis, Math.max(...indices)) === undefined) return refused(beyondSheet);
  const lines = indices.map((index) => {
    const id = growing.lineAt(sheet, axis, index) ?? '';
    const properties = change(own.properties(id) ?? {});
    return { id, properties: Object.keys(properties).length > 0 ? properties : null };
  });
  const ids = lines.map(({ id }) => id);
  return made(
    label,
    [...growing.steps, { kind: 'setLines', sheet, axis, lines }],
    crossing(document, sheet, axis, ids),
  );
}

function linesAt(ids: readonly Id[], indices: readonly number[]): Id[] {
  return [...new Set(indices)].toSorted((a, b) => a - b).flatMap((index) => ids[index] ?? []);
}

function staysInOrder(all: readonly Id[], ids: readonly Id[], to: number): boolean {
  const moved = new Set(ids);
  const rest = (part: readonly Id[]) => part.filter((id) => !moved.has(id));
  const after = [...rest(all.slice(0, to)), ...ids, ...rest(all.slice(to))];
  return after.every((id, i) => id === all[i]);
}

/** The line, living or gone, that the moved ones are to stand after. */
function anchorBefore(
  document: Document,
  growing: Growing,
  sheet: Id,
  axis: AxisName,
  follower: Id | undefined,
  moved: ReadonlySet<Id>,
): Id | null {
  const entries = draftOf(document).sheet(sheet)?.lines(axis).entries ?? [];
  const minted = growing.steps.flatMap((step) => (step.axis === axis ? step.ids : []));
  const all = [...entries, ...minted];
  const end = follower === undefined ? all.length : all.indexOf(follower);
  return all.slice(0, end).findLast((id) => !moved.has(id)) ?? null;
}

/** These lines and everything across them. */
function crossing(document: Document, sheet: Id, axis: AxisName, ids: readonly Id[]): Block {
  const across = document.sheet(sheet)?.[axis === 'rows' ? 'columns' : 'rows'].ids ?? [];
  const first = across.slice(0, 1);
  return axis === 'rows'
    ? { sheet, rows: ids, columns: first }
    : { sheet, rows: first, columns: ids };
}
