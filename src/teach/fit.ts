import { isError } from '../../functions/values.ts';
import type { Exercise } from '../book/exercises.ts';
import { addressAt, spotOf } from '../book/look.ts';
import type { SheetContent } from '../book/types.ts';
import { words } from '../words/words.ts';
import { cellKey } from './cell-key.ts';
import { agree, type Answer } from './judge.ts';
import { Undeliverable } from './undeliverable.ts';
import type { Workings } from './workings.ts';

/** A hand-out is one sheet: what its formulas read elsewhere would not be in it. */
export function standsAlone({ id, cells }: SheetContent): void {
  for (const { cell } of cells)
    if (cell.content.kind === 'formula')
      for (const reference of cell.content.formula.references)
        if (reference.kind === 'name' || ('sheet' in reference && reference.sheet !== id))
          throw new Undeliverable(words.teach.readsElsewhere);
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
