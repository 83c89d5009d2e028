import { isError } from '../../functions/values.ts';
import { createBook } from '../book/book.ts';
import { exerciseFormula, type Exercise } from '../book/exercises.ts';
import { readBook } from '../book/form/read.ts';
import { writeBook } from '../book/form/write.ts';
import { blank } from '../book/make/entered.ts';
import { spotOf, type Spot } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document } from '../book/types.ts';
import { connectEngine, type Result } from '../engine/index.ts';
import { writeForPeople } from '../../functions/quantities/write.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { words } from '../words/words.ts';
import { Undeliverable } from './undeliverable.ts';

type FormulaJson = Exercise['conditions'][number];

/** A copy of the teacher’s book to work an exercise in: givens go in, formulas are asked. */
export interface Workings {
  readonly document: Document;
  /** Puts these values, in base units, into the cells of the givens, in their order. */
  put(values: readonly number[]): void;
  work(formula: FormulaJson): Result;
  /** What a cell of the book comes to now. */
  at(spot: Spot): Pick<Result, 'value' | 'quantity'>;
  /** A text with what its formulas come to, each as people write it. */
  say(texts: readonly string[], formulas: readonly FormulaJson[]): string;
  /** The same as it is written for people. */
  shown(spot: Spot): string;
  close(): void;
}

export function workingsOf(teachers: Document, exercise: Exercise): Workings {
  const { sheet, givens } = exercise;
  const read = readBook(writeBook(teachers));
  if (!read.ok) throw new Error(read.reason);
  const { document } = read;
  for (const { at } of [...givens, ...exercise.questions])
    if (!spotOf(document, { sheet, ...at })) throw new Undeliverable(words.teach.cellGone);
  const book = createBook(document);
  const engine = connectEngine(book, { fixtures: fixturesIn, spectra: spectraIn });
  const written = new Map<FormulaJson, string>();
  const writing = writingSettings(document.settings);

  function work(formula: FormulaJson): Result {
    const text = written.get(formula) ?? exerciseFormula(document, sheet, formula);
    written.set(formula, text);
    return engine.evaluate(text, sheet);
  }

  return {
    document,
    put(values) {
      const cells = givens.map(({ at }, index) => ({
        ...at,
        cell: withNumber(document.sheet(sheet)?.cell(at.row, at.column) ?? blank, values[index]),
      }));
      const ran = book.run({ label: '', steps: [{ kind: 'setCells', sheet, cells }] });
      if (!ran.ok) throw new Error(ran.reason);
    },
    work,
    at: (spot) => ({ value: engine.valueOf(spot), quantity: engine.quantityOf(spot) }),
    say: (texts, formulas) =>
      texts
        .map((text, index) => {
          const formula = formulas[index];
          if (!formula) return text;
          const { value, quantity } = work(formula);
          return text + (isError(value) ? value.code : said(value, quantity));
        })
        .join(''),
    shown(spot) {
      const value = engine.valueOf(spot);
      if (value === null || isError(value)) return '';
      return said(value, engine.quantityOf(spot));
    },
    close: () => engine.dispose(),
  };

  function said(value: Exclude<Result['value'], object>, quantity: Result['quantity']): string {
    if (typeof value === 'number') return writeForPeople(quantity ?? 'number', value, writing);
    return typeof value === 'string' ? value : words.teach.nothing;
  }
}

/** A cell with a number in it in place of what was typed. */
export function withNumber(
  { typed: _typed, under: _under, ...cell }: typeof blank,
  value: number | undefined,
): typeof blank {
  return { ...cell, content: value === undefined ? { kind: 'blank' } : { kind: 'number', value } };
}
