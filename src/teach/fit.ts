import { isError } from '../../functions/values.ts';
import type { Exercise } from '../book/exercises.ts';
import { figuresOn } from '../book/figures.ts';
import { addressAt, spotOf } from '../book/look.ts';
import type { Document, SheetContent } from '../book/types.ts';
import type { Reference } from '../formula/types.ts';
import { words } from '../words/words.ts';
import { cellKey } from './cell-key.ts';
import { agree, type Answer } from './judge.ts';
import { Undeliverable } from './undeliverable.ts';
import type { Workings } from './workings.ts';

/** A hand-out is one sheet: what its formulas and figures read elsewhere would not be in it. */
export function standsAlone(document: Document, { id, cells }: SheetContent): void {
  const isElsewhere = (reference: Reference) =>
    reference.kind === 'name' || ('sheet' in reference && reference.sheet !== id);
  for (const { cell } of cells)
    if (cell.content.kind === 'formula' && cell.content.formula.references.some(isElsewhere))
      throw new Undeliverable(words.teach.readsElsewhere);
  for (const { title, ranges } of figuresOn(document, id))
    if (Object.values(ranges).some(isElsewhere))
      throw new Undeliverable(words.teach.drawsElsewhere(title));
}

/** No other cell of the sheet may work out what is asked. */
export function tellsNothing(
  workings: Workings,
  { questions }: Exercise,
  { id, cells }: SheetContent,
  answers: readonly Answer[],
): void {
  const asked = new Set(questions.map(({ at }) => cellKey(at)));
  for (const { row, column, cell } of cells) {
    const spot = spotOf(workings.document, { sheet: id, row, column });
    if (cell.content.kind !== 'formula' || !spot || asked.has(cellKey({ row, column }))) continue;
    const { value, quantity } = workings.at(spot);
    if (typeof value !== 'number' || isError(value)) continue;
    questions.forEach(({ tolerance }, index) => {
      const answer = answers[index];
      if (answer && answer.quantity === quantity && agree(tolerance, quantity, value, answer.value))
        throw new Undeliverable(words.teach.givesAway(addressAt(spot), index + 1));
    });
  }
}
