import { isId } from '../../formula/ids.ts';
import { limits } from '../inside/draft.ts';
import type { Draft } from '../inside/draft.ts';
import type { Lines } from '../inside/lines.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import type {
  AxisName,
  DropLinesStep,
  Id,
  InsertLinesStep,
  LinesEffect,
  MoveLinesStep,
  RemoveLinesStep,
  ReturnLinesStep,
  ReviveLinesStep,
  SetLinesStep,
  Step,
} from '../types.ts';
import type { Applied, Doer, InTurn } from './applied.ts';
import { applied, onSheet, refuse } from './applied.ts';
import { grownFrozen, shrunkFrozen } from './frozen.ts';
import { reanchoring } from './reanchor.ts';
import { words } from '../../words/words.ts';

export const insertLines: Doer<InsertLinesStep> = (
  draft,
  { sheet: id, axis, ids, after },
  inTurn,
) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (after !== null && !lines.knows(after)) return refuse(words.book.besideGone(axis));
    if (ids.length === 0) return refuse(words.book.nothingToInsert(axis));
    if (new Set(ids).size < ids.length || ids.some((line) => lines.knows(line) || !isId(line)))
      return refuse(words.book.linesThere(axis));
    if (lines.length + ids.length > limits[axis])
      return refuse(words.book.tooManyLines(axis, limits[axis]));
    const tail = after === lines.last;
    lines.insert(ids, after);
    const inserted = effect('linesInserted', sheet, axis, ids, { tail });
    const frozen = tail ? [] : grownFrozen(sheet, axis, ids);
    return withMore(
      applied([{ kind: 'dropLines', sheet: id, axis, ids }], inserted),
      draft,
      frozen,
      inTurn,
    );
  });

export const dropLines: Doer<DropLinesStep> = (draft, { sheet: id, axis, ids }) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (!living(lines, ids) || !sheet.isEmpty(axis, ids))
      return refuse(words.book.linesNotEmpty(axis));
    const tail =
      ids.at(-1) === lines.last && lines.indexOf(ids[0] ?? '') === lines.length - ids.length;
    const dropped = effect('linesRemoved', sheet, axis, ids, { tail });
    const inverse: Step = {
      kind: 'insertLines',
      sheet: id,
      axis,
      ids,
      after: lines.before(ids[0] ?? ''),
    };
    lines.drop(ids);
    return applied([inverse], dropped);
  });

export const removeLines: Doer<RemoveLinesStep> = (draft, { sheet: id, axis, ids }, inTurn) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (!living(lines, ids)) return refuse(words.book.linesGone(axis));
    const removed = effect('linesRemoved', sheet, axis, ids, {});
    const frozen = shrunkFrozen(sheet, axis, ids);
    lines.remove(ids);
    return withMore(
      applied([{ kind: 'reviveLines', sheet: id, axis, ids }], removed),
      draft,
      frozen,
      inTurn,
    );
  });

export const reviveLines: Doer<ReviveLinesStep> = (draft, { sheet: id, axis, ids }) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (!ids.every((line) => lines.isGone(line))) return refuse(words.book.linesNotDeleted(axis));
    lines.revive(ids);
    return applied(
      [{ kind: 'removeLines', sheet: id, axis, ids }],
      effect('linesInserted', sheet, axis, ids, {}),
    );
  });

export const moveLines: Doer<MoveLinesStep> = (draft, step, inTurn) =>
  onSheet(draft, step.sheet, (sheet) =>
    living(sheet.lines(step.axis), step.ids)
      ? inTurn(draft, [...reanchoring(draft, step), { ...step, kind: 'returnLines' }])
      : refuse(words.book.linesToMoveGone(step.axis)),
  );

export const returnLines: Doer<ReturnLinesStep> = (draft, { sheet: id, axis, ids, after }) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (!living(lines, ids) || !anchored(lines, ids, after))
      return refuse(words.book.noMovingThere(axis));
    const removed = effect('linesRemoved', sheet, axis, ids, { moved: true });
    const home = places(lines, ids);
    lines.move(ids, after);
    const inserted = effect('linesInserted', sheet, axis, ids, { moved: true });
    return applied([{ kind: 'returnLines', sheet: id, axis, ...home }], removed, inserted);
  });

export const setLines: Doer<SetLinesStep> = (draft, { sheet: id, axis, lines: changes }) =>
  onSheet(draft, id, (sheet) => {
    const lines = sheet.lines(axis);
    if (changes.some((change) => lines.indexOf(change.id) < 0))
      return refuse(words.book.linesGone(axis));
    const before = changes.map((change) => ({
      id: change.id,
      properties: lines.properties(change.id) ?? null,
    }));
    for (const change of changes) lines.setProperties(change.id, change.properties);
    return applied([{ kind: 'setLines', sheet: id, axis, lines: before.toReversed() }], {
      kind: 'lineProperties',
      sheet: id,
      axis,
    });
  });

function living(lines: Lines, ids: readonly Id[]): boolean {
  return (
    ids.length > 0 && new Set(ids).size === ids.length && ids.every((id) => lines.indexOf(id) >= 0)
  );
}

/** Each line goes after one that stays, or after one that was placed before it. */
function anchored(lines: Lines, ids: readonly Id[], after: readonly (Id | null)[]): boolean {
  const waiting = new Set(ids);
  return (
    ids.length === after.length &&
    ids.every((id, i) => {
      const anchor = after[i];
      waiting.delete(id);
      if (anchor === null) return true;
      return anchor !== undefined && anchor !== id && lines.knows(anchor) && !waiting.has(anchor);
    })
  );
}

/** Where these lines stand now, first to last, each after the one before it. */
function places(lines: Lines, ids: readonly Id[]): { ids: Id[]; after: (Id | null)[] } {
  const moving = new Set(ids);
  const places = { ids: [] as Id[], after: [] as (Id | null)[] };
  let before: Id | null = null;
  for (const id of lines.entries) {
    if (moving.has(id)) {
      places.ids.push(id);
      places.after.push(before);
    }
    before = id;
  }
  return places;
}

function effect(
  kind: LinesEffect['kind'],
  sheet: DraftSheet,
  axis: AxisName,
  ids: readonly Id[],
  { moved = false, tail = false },
): LinesEffect {
  const lines = sheet.lines(axis);
  const spans: { at: number; count: number }[] = [];
  for (const at of ids.map((id) => lines.indexOf(id)).toSorted((a, b) => a - b)) {
    const last = spans.at(-1);
    if (last && last.at + last.count === at) last.count++;
    else spans.push({ at, count: 1 });
  }
  return { kind, sheet: sheet.id, axis, spans, moved, tail };
}

function withMore(first: Applied, draft: Draft, steps: readonly Step[], inTurn: InTurn) {
  if (steps.length === 0) return first;
  const more = inTurn(draft, steps);
  return more.ok
    ? {
        ...first,
        inverse: [...more.inverse, ...first.inverse],
        effects: [...first.effects, ...more.effects],
      }
    : more;
}
