import { draftOf } from '../inside/opened.ts';
import type { Draft } from '../inside/draft.ts';
import type { Lines } from '../inside/lines.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import { inTurn } from '../steps/apply.ts';
import type { AxisName, CellAt, Document, Id, Json, Refusal, Step } from '../types.ts';
import { shelves } from '../types.ts';
import { inKeyOrder } from './openjson.ts';
import { readBook } from './read.ts';
import { lineFromText, lineToText, stepToJson } from './stepjson.ts';
import { writeBook } from './write.ts';
import { words } from '../../words/words.ts';

/**
 * A document as text, with all that later journal lines may build on. The form of the file leaves
 * out deleted lines, but an insertion may stand beside one and a range may still end in one.
 */
export interface Base {
  /** The book in the form of its file. */
  readonly text: string;
  /** What the form leaves out, as one journal line; `null` where it leaves out nothing. */
  readonly remains: string | null;
}

/** `undefined` if the text does not read back. */
export function writeBase(document: Document): Base | undefined {
  const text = writeBook(document);
  const read = readBook(text);
  if (!read.ok) return undefined;
  const steps = stepsBetween(draftOf(read.document), draftOf(document));
  if (steps.length === 0) return { text, remains: null };
  return {
    text,
    remains: lineToText({ kind: 'do', transaction: { label: words.bookFile.remains, steps } }),
  };
}

export function readBase({
  text,
  remains,
}: Base): { readonly ok: true; readonly document: Document } | Refusal {
  const read = readBook(text);
  if (!read.ok || remains === null) return read;
  const line = lineFromText(remains);
  if ('reason' in line || line.kind !== 'do') return damaged;
  const result = inTurn(draftOf(read.document), line.transaction.steps);
  return result.ok ? read : damaged;
}

const damaged: Refusal = { ok: false, reason: words.bookFile.remainsDamaged };

/** The steps that make `from`, read from the file of `to`, the same as `to`. They are taken on the way. */
function stepsBetween(from: Draft, to: Draft): Step[] {
  const taken: Step[] = [];
  const take = (steps: readonly Step[]): void => {
    inTurn(from, steps);
    taken.push(...steps);
  };
  for (const sheet of to.sheets) {
    for (const axis of ['rows', 'columns'] as const)
      for (const step of goneLines(sheet.id, axis, sheet.lines(axis))) take([step]);
  }
  for (const sheet of to.sheets) {
    const twin = from.sheet(sheet.id);
    if (twin) take(sheetSteps(twin, sheet));
  }
  take(
    to.names.flatMap((name): Step[] => {
      const twin = from.nameWithId(name.id);
      const define = { kind: 'defineName', name } as const;
      return twin && same(define, { kind: 'defineName', name: twin }) ? [] : [define];
    }),
  );
  take(
    shelves.flatMap((shelf): Step[] => {
      const twins = new Map(from.shelf(shelf).items.map((item) => [item.id, item]));
      const items = to
        .shelf(shelf)
        .items.filter((item) => writtenInOrder(item) !== writtenInOrder(twins.get(item.id) ?? null))
        .map((item) => ({ id: item.id, item }));
      return items.length > 0 ? [{ kind: 'setShelf', shelf, items }] : [];
    }),
  );
  return taken;
}

const writtenInOrder = (json: Json): string => JSON.stringify(inKeyOrder(json));

/** Deleted lines are put where they were, run by run, and deleted again. */
function* goneLines(sheet: Id, axis: AxisName, lines: Lines): Generator<Step> {
  if (!lines.anyGone) return;
  let run: Id[] = [];
  let after: Id | null = null;
  for (const id of [...lines.entries, null]) {
    if (id !== null && lines.isGone(id)) run.push(id);
    else {
      if (run.length > 0) {
        yield { kind: 'insertLines', sheet, axis, ids: run, after };
        yield { kind: 'removeLines', sheet, axis, ids: run };
        run = [];
      }
      after = id;
    }
  }
}

function sheetSteps(from: DraftSheet, to: DraftSheet): Step[] {
  const { id, properties, areas } = to;
  const cells: CellAt[] = [];
  for (const at of to.cells()) {
    const twin = { row: at.row, column: at.column, cell: from.cell(at.row, at.column) ?? null };
    if (!same(setOne(id, at), setOne(id, twin))) cells.push(at);
  }
  const whole: Step[] = [
    { kind: 'setSheet', sheet: id, properties },
    { kind: 'setAreas', sheet: id, areas },
  ];
  const before: Step[] = [
    { kind: 'setSheet', sheet: id, properties: from.properties },
    { kind: 'setAreas', sheet: id, areas: from.areas },
  ];
  return [
    ...whole.filter((step, i) => !same(step, before[i] ?? step)),
    ...(cells.length > 0 ? [{ kind: 'setCells', sheet: id, cells } as const] : []),
  ];
}

const setOne = (sheet: Id, at: CellAt): Step => ({ kind: 'setCells', sheet, cells: [at] });

const same = (a: Step, b: Step): boolean =>
  JSON.stringify(stepToJson(a)) === JSON.stringify(stepToJson(b));
