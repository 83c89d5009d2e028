import { formulaText } from '../../book/look.ts';
import type { NameEntry } from '../shown.ts';
import { firstExtent, targetOf } from './extents.ts';
import type { Look } from './look.ts';
import { show } from './show.ts';

/** The names of the book: what each means and comes to. */
export function namesOf({ document, engine, writing }: Look): readonly NameEntry[] {
  return document.names.map(({ id, name, formula }) => {
    const result = engine.evaluate(name);
    const extent = firstExtent(document, formula);
    return {
      id,
      name,
      meaning: formulaText(document, formula, null).replace(/^=/, '').replaceAll('$', ''),
      value: show(result.value, result.quantity, writing),
      ...(extent && { target: targetOf(extent) }),
    };
  });
}
