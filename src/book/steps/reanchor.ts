import type { Reference } from '../../formula/types.ts';
import type { Draft } from '../inside/draft.ts';
import { rewriting } from '../inside/holders.ts';
import type { Replace } from '../inside/holders.ts';
import type { AxisName, Id, MoveLinesStep, Step } from '../types.ts';

/**
 * The steps that keep ranges in shape when lines move. A range with one corner among them keeps to
 * the nearest line inside that stayed; with both corners among them it goes along as it is.
 */
export function reanchoring(draft: Draft, { sheet, axis, ids }: MoveLinesStep): Step[] {
  return rewriting(
    draft,
    draft.uses.rangingOver(sheet),
    replacing(draft, sheet, axis, new Set(ids)),
  );
}

function replacing(draft: Draft, sheet: Id, axis: AxisName, moved: ReadonlySet<Id>): Replace {
  const ends = (from: Id, to: Id) => newEnds(draft, sheet, axis, moved, from, to);
  return (reference): Reference => {
    if (!('sheet' in reference) || reference.sheet !== sheet) return reference;
    if (reference.kind === axis) {
      const { from, to } = reference;
      const kept = ends(from.id, to.id);
      return kept
        ? { ...reference, from: { ...from, id: kept.from }, to: { ...to, id: kept.to } }
        : reference;
    }
    if (reference.kind !== 'range') return reference;
    const key = axis === 'rows' ? 'row' : 'column';
    const { from, to } = reference;
    const kept = ends(from[key].id, to[key].id);
    return kept
      ? {
          ...reference,
          from: { ...from, [key]: { ...from[key], id: kept.from } },
          to: { ...to, [key]: { ...to[key], id: kept.to } },
        }
      : reference;
  };
}

/** `undefined` when both ends can stay as they are. */
function newEnds(
  draft: Draft,
  sheet: Id,
  axis: AxisName,
  moved: ReadonlySet<Id>,
  from: Id,
  to: Id,
): { from: Id; to: Id } | undefined {
  const first = draft.nearest(sheet, axis, from, 'from');
  const last = draft.nearest(sheet, axis, to, 'to');
  if (first < 0 || first > last) return undefined;
  const at = (index: number) => draft.lineAt(sheet, axis, index) ?? '';
  const goes = { from: moved.has(at(first)), to: moved.has(at(last)) };
  if (goes.from && goes.to)
    // Gone corners would stay behind: the living ones take their place.
    return from === at(first) && to === at(last) ? undefined : { from: at(first), to: at(last) };
  if (!goes.from && !goes.to) return undefined;
  let [low, high] = [first, last];
  while (moved.has(at(low))) low++;
  while (moved.has(at(high))) high--;
  return goes.from ? { from: at(low), to } : { from, to: at(high) };
}
