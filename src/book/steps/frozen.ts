import type { DraftSheet } from '../inside/sheet.ts';
import type { AxisName, Id, Step } from '../types.ts';

/** The frozen part keeps its last line: it grows with what comes in before that line … */
export function grownFrozen(sheet: DraftSheet, axis: AxisName, ids: readonly Id[]): Step[] {
  const { key, frozen } = frozenPart(sheet, axis);
  const inside = sheet.lines(axis).indexOf(ids[0] ?? '') < frozen;
  return inside ? [frozenStep(sheet, key, frozen + ids.length)] : [];
}

/** … and shrinks with what goes. */
export function shrunkFrozen(sheet: DraftSheet, axis: AxisName, ids: readonly Id[]): Step[] {
  const { key, frozen } = frozenPart(sheet, axis);
  const inside = ids.filter((id) => sheet.lines(axis).indexOf(id) < frozen).length;
  return inside > 0 ? [frozenStep(sheet, key, frozen - inside)] : [];
}

function frozenPart(sheet: DraftSheet, axis: AxisName) {
  const key = axis === 'rows' ? 'frozenRows' : 'frozenColumns';
  return { key, frozen: sheet.properties[key] } as const;
}

const frozenStep = (
  sheet: DraftSheet,
  key: 'frozenRows' | 'frozenColumns',
  count: number,
): Step => ({ kind: 'setSheet', sheet: sheet.id, properties: { [key]: count } });
