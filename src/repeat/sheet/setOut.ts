import { enter, type Entry } from '../../book/make/enter.ts';
import { refused, type Made } from '../../book/make/made.ts';
import type { Means } from '../../book/types.ts';
import type { Look } from '../../panels/views/look.ts';
import { words } from '../../words/words.ts';
import { stopsInWords, verdictWords } from '../../../functions/stops/verdictWords.ts';
import { advise } from '../advice/advise.ts';
import { adviceInWords } from '../advice/said.ts';
import { readRebuild } from './readRebuild.ts';

/** Writes what to set beside each lamp’s first point, and says what comes first; one undo. */
export function setOut(look: Look, means: Means, sheet: string): Made & { readonly says?: string } {
  const read = readRebuild(look, sheet);
  if (!read.ok) return refused(read.reason);
  const { set, rows, column } = read;
  const { lights, left } = advise(set);
  const told = new Set<number>();
  const entries = set.points.map(({ light }, index): Entry => {
    const advice = lights.find((one) => one.light === light);
    const name = set.lights[light]?.name ?? '';
    const first = !told.has(light);
    told.add(light);
    const text = !advice
      ? ''
      : first
        ? adviceInWords(advice, { name }, set.tolerance, look.writing)
        : words.repeat.withLamp(name);
    return { sheet, row: rows[index] ?? 0, column, text };
  });
  const off = set.points.flatMap(({ name }, index) => {
    const by = left[index] ?? 0;
    return Math.abs(by) > set.tolerance + 1e-9
      ? [words.repeat.stillOff(name, verdictWords(by, 0))]
      : [];
  });
  const asked = lights.filter(({ factor }) => factor !== 1).length;
  const says =
    off.length > 0
      ? words.repeat.cannot(off.join(', '))
      : asked === 0
        ? words.repeat.nothingToDo(stopsInWords(set.tolerance))
        : words.repeat.keyFirst(set.lights[set.points[0]?.light ?? 0]?.name ?? '');
  const made = enter(look.document, means, entries, { label: words.repeat.setOut });
  return made.ok ? { ...made, says } : made;
}
