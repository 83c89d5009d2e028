import { keyOf } from '../../book/fixtures.ts';
import { cellAtSpot } from '../../book/look.ts';
import { enter } from '../../book/make/enter.ts';
import type { Made } from '../../book/make/made.ts';
import type { Means } from '../../book/types.ts';
import type { Look } from '../../panels/views/look.ts';
import { words } from '../../words/words.ts';
import { packageOn, packageTemplate, type Need, type Package } from './package.ts';
import { rigsOf, type Rig, type RigItem } from './rigs.ts';

/** A fixture of a rig that the order does not have, or has and does not count there. */
export interface Missing {
  readonly rig: Rig;
  readonly item: RigItem;
}

/** A row counts a rig if its count is read there, or if it is typed and said to be counted on it. */
export const counts = ({ reads, from }: Need, rig: Rig): boolean =>
  reads.has(rig.sheet) || (reads.size === 0 && keyOf(from) === keyOf(rig.title));

export const missingIn = ({ needs, order }: Package, rigs: readonly Rig[]): readonly Missing[] =>
  rigs.flatMap((rig) =>
    rig.items
      .filter(
        ({ key }) =>
          !order.list.has(key) || !needs.list.some((need) => need.key === key && counts(need, rig)),
      )
      .map((item) => ({ rig, item })),
  );

export function missingInWords(missing: readonly Missing[], rigs: readonly Rig[]): string {
  if (rigs.length === 0) return '';
  const said = missing.map(({ rig, item }) =>
    rigs.length > 1 ? words.plan.on(item.name, rig.title) : item.name,
  );
  return said.length === 0 ? words.plan.allThere : words.plan.notThere(said);
}

/** The orders of the book whose sentence about the rigs has to be another, each with that. */
export function sentencesNow(look: Look, means: Means): readonly Made[] {
  return look.document.sheets
    .filter(({ properties }) => properties.template === packageTemplate)
    .flatMap(({ id }): Made[] => {
      const order = packageOn(look, id);
      if (!order?.sentence) return [];
      const rigs = rigsOf(look);
      const text = missingInWords(missingIn(order, rigs), rigs);
      const spot = { sheet: id, ...order.sentence };
      const content = cellAtSpot(look.document, spot)?.content;
      const stands = content?.kind === 'text' ? content.text : '';
      return stands === text ? [] : [enter(look.document, means, [{ ...spot, text }])];
    });
}
