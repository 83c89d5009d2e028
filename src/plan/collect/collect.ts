import { addressAt } from '../../book/look.ts';
import { enter, type Entry } from '../../book/make/enter.ts';
import { made, refused, type Made } from '../../book/make/made.ts';
import { together } from '../../book/make/together.ts';
import type { Means } from '../../book/types.ts';
import type { Look } from '../../panels/views/look.ts';
import { words } from '../../words/words.ts';
import { goesOut, goingOut } from './goesOut.ts';
import { grow, grown, lacking } from './grow.ts';
import { knownOf } from './known.ts';
import { counts, missingIn, missingInWords, type Missing } from './missing.ts';
import { packageOn, packageTemplate, type Package } from './package.ts';
import { placeOf } from './place.ts';
import { rigsOf } from './rigs.ts';
import { typedInto } from './rows.ts';

/**
 * What the rigs of the book have and its order has not, put into the order: a row that counts it on
 * the rig, and one of the order, and of what goes out, where the item is new. One transaction.
 */
export function collectRigs(
  look: Look,
  means: Means,
  shown: string,
): Made & { readonly says?: string } {
  const orders = look.document.sheets.filter(
    ({ properties }) => properties.template === packageTemplate,
  );
  const sheet = (orders.find(({ id }) => id === shown) ?? orders[0])?.id;
  if (sheet === undefined) return refused(words.plan.noPackage);
  const order = packageOn(look, sheet);
  if (!order) return refused(words.plan.noColumns);
  const rigs = rigsOf(look);
  if (rigs.length === 0) return refused(words.plan.noRigs);
  const missing = missingIn(order, rigs);
  if (missing.length === 0)
    return { ...made(words.plan.collect, []), says: words.plan.nothingToCollect };
  const { needed, fresh } = toCollect(order, missing);
  const wider = lacking(order.needs, needed.length);
  const longer = lacking(order.order, fresh.length);
  // The order stands below: what the needs grow by moves it down.
  const orderRows = grown(order.order, longer).map((row) => row + wider);
  const needRows = grown(order.needs, wider);
  const rowOf = new Map([
    ...[...order.order.list].map(([key, row]): [string, number] => {
      const moved = longer > 0 && row >= order.order.last ? longer : 0;
      return [key, row + moved + wider];
    }),
    ...fresh.map(({ key }, index): [string, number] => [key, orderRows[index] ?? 0]),
  ]);
  const out = goesOut(look, sheet);
  const further = out ? lacking(out, fresh.length) : 0;
  const entries: Entry[] = [
    ...fresh.flatMap((item, index) => {
      const known = Object.fromEntries(knownOf(look, item.key));
      return typedInto(sheet, order.order, orderRows[index] ?? 0, {
        'the order': item.name,
        kind: words.plan.fixture,
        ...known,
      });
    }),
    ...needed.flatMap(({ rig, item }, index) => {
      const row = needRows[index] ?? 0;
      const place = placeOf(order, rig);
      return typedInto(sheet, order.needs, row, {
        needed: `=$A$${(rowOf.get(item.key) ?? 0) + 1}`,
        ...(place && { place: `=$A$${place.row + 1}` }),
        'counted on': rig.title,
        count: `=COUNTIF(${rig.range},$${addressAt({ row, column: 0 })})`,
      });
    }),
    ...(out ? goingOut(look, out, further, { ...order, rows: orderRows }, fresh.length) : []),
    ...(order.sentence ? [{ sheet, ...order.sentence, text: missingInWords([], rigs) }] : []),
  ];
  const joined = together(look.document, words.plan.collect, [
    ...grow(order.order, sheet, means, longer),
    ...grow(order.needs, sheet, means, wider),
    ...(out ? grow(out, out.sheet, means, further) : []),
    (document) => enter(document, means, entries),
  ]);
  if (!joined.ok) return joined;
  const lost = [
    ...new Set(needed.filter(({ rig }) => !placeOf(order, rig)).map(({ rig }) => rig.title)),
  ];
  return {
    ...joined,
    says: [words.plan.collected(missing.length), ...lost.map(words.plan.whichPlace)].join(' '),
  };
}

/** What is counted nowhere yet, and of that what is on no row of the order. */
function toCollect({ needs, order }: Package, missing: readonly Missing[]) {
  const isCounted = ({ rig, item }: Missing) =>
    needs.list.some((need) => need.key === item.key && counts(need, rig));
  const items = missing.flatMap(({ item }) => (order.list.has(item.key) ? [] : [item]));
  return {
    needed: missing.filter((one) => !isCounted(one)),
    fresh: [...new Map(items.map((item) => [item.key, item])).values()],
  };
}
