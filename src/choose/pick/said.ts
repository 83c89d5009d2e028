import { stopsInWords } from '../../../functions/stops/verdictWords.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import { writingSettings } from '../../book/settings.ts';
import type { Document } from '../../book/types.ts';
import { words } from '../../words/words.ts';
import type { Picked } from './pick.ts';
import type { Obstacle, Pick as Chosen, Problem } from './problem.ts';

/** "138.00 EUR, surely the cheapest; the next costs 7.00 EUR more." */
export function outcomeInWords(
  { settings }: Pick<Document, 'settings'>,
  { best, second }: Extract<Picked, { kind: 'found' }>,
): string {
  const money = (value: number) => writeQuantity('money', value, writingSettings(settings)).text;
  const cost = money(best.cost);
  const first = best.proven ? words.choose.proven(cost) : unproven(best, cost);
  return second ? words.choose.andNext(first, money(second.cost - best.cost)) : first;
}

/** How far above the least possible it may be, where that is known to be anything. */
function unproven({ cost, least }: Chosen, inWords: string): string {
  if (least <= 0) return words.choose.bestSoFar(inWords);
  return words.choose.bestWithin(inWords, Math.ceil((cost / least - 1) * 100 - 1e-9));
}

/** What stands in the way, by its name. */
export function obstacleInWords({ tolerance }: Problem, obstacle: Obstacle): string {
  if (obstacle.kind === 'circuits') return words.choose.circuitsLack;
  if (obstacle.kind === 'items')
    return words.choose.itemsLack(
      obstacle.lacking.map(([item, more]) => words.choose.lacks(item, more)),
    );
  return words.choose.levelsLack(
    obstacle.off.map(([point, stops]) =>
      stops < -10
        ? words.choose.staysDark(point)
        : words.choose.staysOff(point, stopsInWords(stops), stops < 0),
    ),
    stopsInWords(tolerance),
  );
}
