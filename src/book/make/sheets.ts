import { faultOfSheetName, maxSheetNameLength } from '../../formula/naming.ts';
import { copyOf } from '../content.ts';
import { exerciseOn } from '../exercises.ts';
import { figuresOn, keepFigures, type Figure } from '../figures.ts';
import { emptySheet } from '../newdocument.ts';
import type {
  Document,
  Id,
  Means,
  SheetContent,
  SheetProperties,
  Step,
  Transaction,
} from '../types.ts';
import { exerciseOnCopy, keepExercise, withoutExercisesOf } from './exercises.ts';
import { figuresFor, withoutFiguresOf } from './figures.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

type MadeSheet =
  (Made & { readonly ok: false }) | { ok: true; transaction: Transaction; sheet: Id };

const gone = words.book.sheetGone;

/** A new sheet at a position of the contents; without a name it gets the next free one. */
export function addSheet(
  document: Document,
  means: Pick<Means, 'newId'>,
  properties: Partial<SheetProperties> = {},
  at: number = document.sheets.length,
): MadeSheet {
  const name = properties.name ?? freeSheetName(document, words.book.firstSheet);
  return adding(
    document,
    emptySheet(means.newId(), { ...properties, name }),
    at,
    words.book.addSheet,
  );
}

/** A sheet made elsewhere (a template, an import), under a free name, with its figures. */
export function placeSheet(
  document: Document,
  content: SheetContent,
  at: number = document.sheets.length,
  label = words.book.addSheet,
  figures: readonly Figure[] = [],
): MadeSheet {
  const name = freeSheetName(document, content.properties.name);
  const properties = { ...content.properties, name };
  return adding(document, { ...content, properties }, at, label, figures);
}

/**
 * A copy of a sheet right behind it. Its formulas, its figures and what is asked on it refer to the copy
 * where they referred to itself.
 */
export function duplicateSheet(
  document: Document,
  means: Pick<Means, 'newId'>,
  sheet: Id,
): MadeSheet {
  const copy = copyOf(document, sheet, means.newId());
  if (!copy) return refused(gone);
  const at = document.sheets.findIndex(({ id }) => id === sheet) + 1;
  const figures = figuresFor(figuresOn(document, sheet), means, sheet, copy.id);
  const placed = placeSheet(document, copy, at, words.book.duplicateSheet, figures);
  const exercise = exerciseOn(document, sheet);
  if (!placed.ok || !exercise) return placed;
  const asked = keepExercise(exerciseOnCopy(document, exercise, copy.id, means.newId()));
  const { steps, ...transaction } = placed.transaction;
  return { ...placed, transaction: { ...transaction, steps: [...steps, asked] } };
}

function adding(
  document: Document,
  content: SheetContent,
  at: number,
  label: string,
  figures: readonly Figure[] = [],
): MadeSheet {
  const fault = faultFor(document, content.properties.name);
  if (fault !== undefined) return refused(fault);
  const steps: Step[] = [
    { kind: 'addSheet', content, at },
    ...(figures.length > 0 ? [keepFigures(figures)] : []),
  ];
  return { ok: true, transaction: { label, steps }, sheet: content.id };
}

export function removeSheet(document: Document, sheet: Id): Made {
  if (!document.sheet(sheet)) return refused(gone);
  if (document.sheets.length === 1) return refused(words.book.lastSheet);
  const steps: Step[] = [
    ...withoutFiguresOf(document, sheet),
    ...withoutExercisesOf(document, sheet),
    { kind: 'removeSheet', sheet },
  ];
  return made(words.book.deleteSheet, steps);
}

/** To a position in the contents, counted without the sheet itself, and to another phase if one is said. */
export function moveSheet(
  document: Document,
  sheet: Id,
  to: number,
  phase?: SheetProperties['phase'],
): Made {
  const from = document.sheets.findIndex(({ id }) => id === sheet);
  const before = document.sheets[from]?.properties;
  if (!before) return refused(gone);
  const isOther = phase !== undefined && phase !== before.phase;
  return made(words.book.moveSheet, [
    ...(isOther ? [{ kind: 'setSheet', sheet, properties: { phase } } as const] : []),
    ...(from === to ? [] : [{ kind: 'moveSheet', sheet, to } as const]),
  ]);
}

/** Name, title, purpose, phase, tolerance, freeze. */
export function describeSheet(
  document: Document,
  sheet: Id,
  properties: Partial<SheetProperties>,
  label = properties.name === undefined ? words.book.changeSheet : words.book.renameSheet,
): Made {
  const before = document.sheet(sheet)?.properties;
  if (!before) return refused(gone);
  const { name } = properties;
  const other = name === undefined ? undefined : document.sheetNamed(name);
  const fault =
    name === undefined || other?.id === sheet
      ? name !== undefined && faultOfSheetName(name)?.reason
      : faultFor(document, name);
  if (fault) return refused(fault);
  const keys = Object.keys(properties) as (keyof SheetProperties)[];
  const changes = keys.some((key) => properties[key] !== before[key]);
  return made(label, changes ? [{ kind: 'setSheet', sheet, properties }] : []);
}

/** Keeps the first rows and columns in view. */
export function freeze(document: Document, sheet: Id, rows: number, columns: number): Made {
  const label = rows + columns > 0 ? words.book.freeze : words.book.unfreeze;
  return describeSheet(document, sheet, { frozenRows: rows, frozenColumns: columns }, label);
}

function faultFor(document: Document, name: string): string | undefined {
  const other = document.sheetNamed(name);
  return other ? words.book.sheetThere(other.properties.name) : faultOfSheetName(name)?.reason;
}

/** The name itself, or with the next free number behind it. */
export function freeSheetName(document: Document, wanted: string): string {
  if (!document.sheetNamed(wanted)) return wanted;
  const stem = wanted.replace(/\s*\d+$/, '');
  for (let number = 2; ; number++) {
    const tail = ` ${String(number)}`;
    const name = stem.slice(0, maxSheetNameLength - tail.length) + tail;
    if (!document.sheetNamed(name)) return name;
  }
}
