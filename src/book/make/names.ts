import { mapReferences } from '../../formula/adjust.ts';
import { formulaFrom } from '../../formula/bind.ts';
import type { NameFault } from '../../formula/naming.ts';
import { faultOfName } from '../../formula/naming.ts';
import type { Formula, Reference } from '../../formula/types.ts';
import { shapeFrom } from '../../formula/read.ts';
import type { Document, Id, Means } from '../types.ts';
import type { Region } from './growing.ts';
import { Growing, beyondSheet } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

/** Why a name would not do, with a name that would where there is one. */
export type MadeName = Exclude<Made, { ok: false }> | ({ readonly ok: false } & NameFault);

/** Whether a cell may get this name now; `except` is the id of a name that is about to change. */
export function faultOfNewName(
  document: Document,
  means: Pick<Means, 'isFunction'>,
  name: string,
  except?: Id,
): NameFault | undefined {
  const other = document.named(name);
  if (other && other.id !== except) return { reason: words.book.nameTaken(other.name) };
  return faultOfName(name, (text) => means.isFunction(text));
}

/**
 * Gives a cell, a range or a formula (`=1.5`, `=Walk!B4*2`) a name. References without a sheet mean
 * `own`; they are fixed to their place.
 */
export function defineName(
  document: Document,
  means: Pick<Means, 'newId' | 'isFunction'>,
  name: string,
  meaning: Region | { readonly text: string; readonly own: Id },
  id: Id = means.newId(),
): MadeName {
  const fault = faultOfNewName(document, means, name, id);
  if (fault) return { ok: false, ...fault };
  const growing = new Growing(document, means);
  const formula = 'text' in meaning ? fromText(meaning, growing) : toRegion(meaning, growing);
  if ('reason' in formula) return refused(formula.reason);
  return made(words.book.name(name), [
    ...growing.steps,
    { kind: 'defineName', name: { id, name, formula } },
  ]);
}

function fromText({ text, own }: { text: string; own: Id }, growing: Growing) {
  const formula = formulaFrom(text, own, growing);
  return 'reason' in formula ? formula : mapReferences(formula, pinned);
}

/** With its sheet and fixed, so that it means the same wherever it is used. */
function pinned(reference: Reference): Reference {
  const fix = <T extends { id: Id }>(end: T) => ({ ...end, fixed: true });
  if (reference.kind === 'name' || reference.kind === 'lost') return reference;
  const corner = <T extends { row: { id: Id }; column: { id: Id } }>(at: T) => ({
    row: fix(at.row),
    column: fix(at.column),
  });
  if (reference.kind === 'cell') return { ...reference, explicit: true, at: corner(reference.at) };
  return reference.kind === 'range'
    ? { ...reference, explicit: true, from: corner(reference.from), to: corner(reference.to) }
    : { ...reference, explicit: true, from: fix(reference.from), to: fix(reference.to) };
}

function toRegion(region: Region, growing: Growing): Formula | { readonly reason: string } {
  const block = growing.block(region);
  const shape = shapeFrom(['=', '']);
  const first = block && { row: block.rows[0], column: block.columns[0] };
  const last = block && { row: block.rows.at(-1), column: block.columns.at(-1) };
  const from = first && cornerAt(first.row, first.column);
  const to = last && cornerAt(last.row, last.column);
  if (!from || !to || 'reason' in shape) return { reason: beyondSheet };
  const where = { sheet: region.sheet, explicit: true };
  const single = region.height === 1 && region.width === 1;
  const reference: Reference = single
    ? { kind: 'cell', ...where, at: from }
    : { kind: 'range', ...where, from, to, joint: ':' };
  return { shape, references: [reference] };
}

function cornerAt(row: Id | undefined, column: Id | undefined) {
  return row === undefined || column === undefined
    ? undefined
    : { row: { id: row, fixed: true }, column: { id: column, fixed: true } };
}

/** Formulas that use the name are rewritten. */
export function renameName(
  document: Document,
  means: Pick<Means, 'isFunction'>,
  id: Id,
  name: string,
): MadeName {
  const before = document.names.find((each) => each.id === id);
  if (!before) return refused(words.book.nameGone);
  const fault = faultOfNewName(document, means, name, id);
  if (fault) return { ok: false, ...fault };
  return made(
    words.book.renameName(before.name),
    before.name === name ? [] : [{ kind: 'renameName', id, name }],
  );
}

/** Formulas that use the name read `#NAME?`. */
export function removeName(document: Document, id: Id): Made {
  const name = document.names.find((each) => each.id === id);
  return name
    ? made(words.book.removeName(name.name), [{ kind: 'removeName', id }])
    : refused(words.book.nameGone);
}
