import * as v from 'valibot';
import {
  formulaFromJson,
  formulaToJson,
  referenceFromText,
  referenceToText,
} from '../../formula/codec.ts';
import type { FormulaJson } from '../../formula/codec.ts';
import { entrySettings } from '../settings.ts';
import type { Area, Cell, Change, EntrySettings, Formula, Step, Transaction } from '../types.ts';
import type { CellJson } from './cells.ts';
import { cellFromJson, cellToJson } from './cells.ts';
import type { AreaJson, LineJson, PlacedJson, StepJson } from './stepschema.ts';
import { lineSchema } from './stepschema.ts';
import { words } from '../../words/words.ts';

/** A line of a journal: a transaction that was done, what followed from it, or that the last one was undone or redone. */
export type Line =
  | { readonly kind: 'do' | 'follow'; readonly transaction: Transaction }
  | { readonly kind: 'undo' | 'redo' };

export function lineToText(change: Pick<Change, 'kind' | 'transaction'>): string {
  const { kind } = change;
  if (kind === 'undo' || kind === 'redo') return JSON.stringify({ kind });
  const { label, steps, go } = change.transaction;
  return JSON.stringify({ kind, label, steps: steps.map(stepToJson), ...(go && { go }) });
}

/** `cutShort` when it is no JSON: then only part of it was written. */
export function lineFromText(
  text: string,
): Line | { readonly reason: string; readonly cutShort?: true } {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { reason: words.bookFile.lineCutShort, cutShort: true };
  }
  const result = v.safeParse(lineSchema, json, { abortEarly: true });
  return result.success ? lineFrom(result.output) : { reason: words.bookFile.lineDamaged };
}

function lineFrom(json: LineJson): Line | { readonly reason: string } {
  if (!('steps' in json)) return json;
  const { kind, label, go } = json;
  const steps: Step[] = [];
  for (const each of json.steps) {
    const step = stepFromJson(each);
    if ('reason' in step) return step;
    steps.push(step);
  }
  return { kind, transaction: { label, steps, ...(go && { go }) } };
}

const writer = {
  formula: formulaToJson,
  under: (under: EntrySettings | undefined) => under,
};

const cellJson = (cell: Cell) => cellToJson(cell, writer);
const areaJson = ({ id, range, quantity }: Area): AreaJson => ({
  id,
  range: referenceToText(range),
  quantity,
});

/** A step as JSON: as it is, but for cells, areas and formulas. */
export function stepToJson(step: Step): object {
  if (step.kind === 'setCells') {
    const cells = step.cells.map((at) => ({ ...at, cell: at.cell && cellJson(at.cell) }));
    return { ...step, cells };
  }
  if (step.kind === 'addSheet') {
    const { content } = step;
    const cells = content.cells.map((at) => ({ ...at, cell: cellJson(at.cell) }));
    return { ...step, content: { ...content, cells, areas: content.areas.map(areaJson) } };
  }
  if (step.kind === 'setAreas') return { ...step, areas: step.areas.map(areaJson) };
  if (step.kind === 'defineName')
    return { ...step, name: { ...step.name, formula: formulaToJson(step.name.formula) } };
  return step;
}

class Damaged extends Error {}

const damagedFormula = { reason: words.bookFile.formulaDamaged };
const reader = {
  formula: (json: FormulaJson) => formulaFromJson(json) ?? damagedFormula,
  under: (json: EntrySettings | undefined) => json && entrySettings(json),
};

function cellFrom(json: PlacedJson['cell']): Cell {
  const cell = cellFromJson<FormulaJson, EntrySettings>(
    json satisfies CellJson<FormulaJson, EntrySettings>,
    reader,
  );
  if ('reason' in cell) throw new Damaged(cell.reason);
  return cell;
}

function areaFrom({ id, range, quantity }: AreaJson): Area {
  const reference = referenceFromText(range);
  if (reference?.kind !== 'range') throw new Damaged(words.bookFile.areaDamaged);
  return { id, range: reference, quantity };
}

function formulaFrom(json: FormulaJson): Formula {
  const formula = formulaFromJson(json);
  if (!formula) throw new Damaged(damagedFormula.reason);
  return formula;
}

/** The step again, from JSON that fits the schema; a reason where a formula in it does not. */
export function stepFromJson(json: StepJson): Step | { readonly reason: string } {
  try {
    return restored(json);
  } catch (fault) {
    if (fault instanceof Damaged) return { reason: fault.message };
    throw fault;
  }
}

function restored(json: StepJson): Step {
  if (json.kind === 'setCells') {
    const cells = json.cells.map((at) => ({ ...at, cell: at.cell && cellFrom(at.cell) }));
    return { ...json, cells };
  }
  if (json.kind === 'addSheet') {
    const { content } = json;
    const cells = content.cells.map((at) => ({ ...at, cell: cellFrom(at.cell) }));
    return { ...json, content: { ...content, cells, areas: content.areas.map(areaFrom) } };
  }
  if (json.kind === 'setAreas') return { ...json, areas: json.areas.map(areaFrom) };
  if (json.kind === 'defineName')
    return { ...json, name: { ...json.name, formula: formulaFrom(json.name.formula) } };
  if (json.kind === 'setShelf') {
    const items = json.items.map(({ id, item }) => ({ id, item: item && { ...item, id } }));
    return { ...json, items };
  }
  return json;
}
