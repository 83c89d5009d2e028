import { isId } from './ids.ts';
import { shapeFrom } from './read.ts';
import type { Corner, Formula, Id, LineEnd, Reference } from './types.ts';

/** A formula with its ids, as steps carry it. The pieces stand around the references. */
export interface FormulaJson {
  readonly pieces: readonly string[];
  readonly references: readonly string[];
}

export function formulaToJson({ shape, references }: Formula): FormulaJson {
  return { pieces: shape.pieces, references: references.map(referenceToText) };
}

/** `undefined` for what no formula was written as. */
export function formulaFromJson({ pieces, references }: FormulaJson): Formula | undefined {
  const bound = references.map(referenceFromText);
  const shape = pieces.length === references.length + 1 ? shapeFrom(pieces) : undefined;
  if (!shape || 'reason' in shape || !bound.every((reference) => reference !== undefined))
    return undefined;
  return { shape, references: bound };
}

/**
 * One reference as words: the kind, the sheet (`!` before it when it was written out), then lines
 * (`$` before fixed ones): `cell s1 r4 $c2`, `range !s1 r1 c1 r9 c1 :`, `columns s1 c1 c3 :`,
 * `name Key_side`, `lost`. What joins the ends of a range comes last, as it was typed.
 */
export function referenceToText(reference: Reference): string {
  if (reference.kind === 'lost') return 'lost';
  if (reference.kind === 'name') return `name ${reference.name}`;
  const sheet = (reference.explicit ? '!' : '') + reference.sheet;
  const ends =
    reference.kind === 'cell'
      ? cornerText(reference.at)
      : reference.kind === 'range'
        ? `${cornerText(reference.from)} ${cornerText(reference.to)} ${reference.joint}`
        : `${endText(reference.from)} ${endText(reference.to)} ${reference.joint}`;
  return `${reference.kind} ${sheet} ${ends}`;
}

const endText = ({ id, fixed }: LineEnd) => (fixed ? '$' : '') + id;
const cornerText = ({ row, column }: Corner) => `${endText(row)} ${endText(column)}`;

const name = /^name (\S+)$/;
const cell = /^cell (!?)(\S+) (\S+) (\S+)$/;
const range = /^range (!?)(\S+) (\S+) (\S+) (\S+) (\S+) (\s*:\s*)$/;
const lines = /^(columns|rows) (!?)(\S+) (\S+) (\S+) (\s*:\s*)$/;

export function referenceFromText(text: string): Reference | undefined {
  if (text === 'lost') return { kind: 'lost' };
  const named = name.exec(text);
  if (named?.[1]) return { kind: 'name', name: named[1] };
  return readCell(text) ?? readRange(text) ?? readLines(text);
}

function readCell(text: string): Reference | undefined {
  const [, mark, sheet, ...ends] = cell.exec(text) ?? [];
  const at = readCorner(ends[0], ends[1]);
  return sheet && isId(sheet) && at
    ? { kind: 'cell', sheet, explicit: mark === '!', at }
    : undefined;
}

function readRange(text: string): Reference | undefined {
  const [, mark, sheet, top, left, bottom, right, joint = ':'] = range.exec(text) ?? [];
  const from = readCorner(top, left);
  const to = readCorner(bottom, right);
  return sheet && isId(sheet) && from && to
    ? { kind: 'range', sheet, explicit: mark === '!', from, to, joint }
    : undefined;
}

function readLines(text: string): Reference | undefined {
  const [, kind, mark, sheet, low, high, joint = ':'] = lines.exec(text) ?? [];
  const from = readEnd(low);
  const to = readEnd(high);
  return sheet && isId(sheet) && from && to
    ? { kind: kind === 'rows' ? 'rows' : 'columns', sheet, explicit: mark === '!', from, to, joint }
    : undefined;
}

function readCorner(row: string | undefined, column: string | undefined): Corner | undefined {
  const ends = { row: readEnd(row), column: readEnd(column) };
  return ends.row && ends.column ? { row: ends.row, column: ends.column } : undefined;
}

function readEnd(text: string | undefined): LineEnd | undefined {
  const fixed = text?.startsWith('$') ?? false;
  const id: Id = text?.slice(fixed ? 1 : 0) ?? '';
  return isId(id) ? { id, fixed } : undefined;
}
