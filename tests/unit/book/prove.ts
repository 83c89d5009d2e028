import { expect } from 'vitest';
import { lineFromText, lineToText, stepToJson } from '../../../src/book/form/stepjson.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { draftOf } from '../../../src/book/inside/opened.ts';
import { inTurn } from '../../../src/book/steps/apply.ts';
import type { Made } from '../../../src/book/make/made.ts';
import type { Step, Transaction } from '../../../src/book/types.ts';
import type { Enterings } from '../../../src/book/make/enter.ts';
import type { Stage } from './stage.ts';

/** The kinds of steps that were proven, theirs and those that take them back. */
export const proven = new Set<Step['kind']>();

/**
 * Proves a change on a stage that is built anew each time: its result (`after` looks at it), that
 * undo and redo restore the book byte by byte, that it means the same read from a journal, and that
 * the steps that take it back are themselves proper steps that can be written, done and undone.
 */
export function prove(
  build: () => Stage,
  make: (stage: Stage) => Made | Enterings,
  after: (stage: Stage) => void,
): void {
  const first = build();
  const before = writeBook(first.document);
  const transaction = transactionOf(make(first));
  const read = throughJson(transaction);

  expect(first.book.run(transaction).ok).toBe(true);
  after(first);
  const done = writeBook(first.document);
  expect(done, 'the change shows in the file').not.toBe(before);
  first.book.undo();
  expect(writeBook(first.document), 'undo').toBe(before);
  first.book.redo();
  expect(writeBook(first.document), 'redo').toBe(done);

  const second = build();
  expect(second.book.run(read).ok).toBe(true);
  expect(writeBook(second.document), 'read from a journal').toBe(done);

  const third = build();
  const result = inTurn(draftOf(third.document), transaction.steps);
  if (!result.ok) throw new Error(result.reason);
  const back = throughJson({ label: 'back', steps: result.inverse });
  expect(third.book.run(back)).toHaveProperty('ok', true);
  expect(writeBook(third.document), 'taken back by its inverse').toBe(before);
  third.book.undo();
  expect(writeBook(third.document), 'the inverse undone').toBe(done);
  third.book.redo();
  expect(writeBook(third.document), 'the inverse redone').toBe(before);

  for (const { kind } of [...transaction.steps, ...result.inverse]) proven.add(kind);
}

function transactionOf(made: Made | Enterings): Transaction {
  if (!made.ok) throw new Error(made.reason);
  return made.transaction;
}

function throughJson(transaction: Transaction): Transaction {
  const line = lineFromText(lineToText({ kind: 'do', transaction }));
  if ('reason' in line || line.kind !== 'do') throw new Error(JSON.stringify(line));
  expect(line.transaction.steps.map(stepToJson)).toEqual(transaction.steps.map(stepToJson));
  return line.transaction;
}
