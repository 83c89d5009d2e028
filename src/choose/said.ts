import type { QuantityName } from '../../functions/quantities/names.ts';
import { writeQuantity } from '../../functions/quantities/write.ts';
import { writeNumber } from '../../functions/quantities/writing/number.ts';
import { addressAt } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import { words } from '../words/words.ts';
import type { SolvePlan } from './plans.ts';
import type { Answers } from './solve.ts';
import type { Reader } from './values.ts';

/** More answers than anyone chooses among. */
const shown = 12;

export interface Said {
  readonly answers: readonly { readonly at: number; readonly sentence: string }[];
  readonly says: readonly string[];
}

/** What was found between the bounds, in words. */
export function answersInWords(plan: SolvePlan, found: Answers): Said {
  const { changing, result, changed, comes, search } = plan;
  const [cell, made] = [addressAt(changing), addressAt(result)];
  const at = (value: number) => said(value, changed);
  const value = (number: number) => said(number, comes);
  const { answers, jumps, nearest, tried, without } = found;
  const nothing = without === tried;
  return {
    answers: answers.slice(0, shown).map((one) => ({
      at: one.at,
      sentence: words.choose.is(cell, at(one.at), made, value(one.value)),
    })),
    says: [
      ...(nearest
        ? [
            words.choose.noneNearest(
              at(search.from),
              at(search.to),
              at(nearest.at),
              value(nearest.value),
            ),
          ]
        : []),
      ...jumps
        .slice(0, 3)
        .map(({ before, after }) =>
          words.choose.jumps(value(before.value), value(after.value), at(after.at)),
        ),
      ...(nothing ? [words.choose.nothing(made)] : []),
      ...(without > 0 && !nothing ? [words.choose.without(without, tried)] : []),
    ],
  };
}

function said(value: number, { quantity, settings }: Reader): string {
  const writing = writingSettings(settings);
  const plain: QuantityName = 'number';
  return quantity === undefined || quantity === plain
    ? writeNumber(Number(value.toPrecision(6)), writing)
    : writeQuantity(quantity, value, writing).text;
}
