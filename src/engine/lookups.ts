import { isWords, together } from './algebra.ts';
import type { Handed, Rule } from './handed.ts';
import { chosen } from './joining.ts';
import { agreed, type Kind } from './kinds.ts';
import { writtenNumber } from './written.ts';

/** Hears when what is looked for is of another kind than what it is looked for among. */
export function sought(handed: Handed, key: number, among: number, kinds: readonly Kind[]): void {
  const kind = handed.kind(key);
  if (kind === undefined || isWords(kind)) return;
  const known = kinds.filter((each) => each !== undefined);
  const [other] = known;
  if (other === undefined || known.some((each) => 'kind' in together(kind, each))) return;
  handed.hear({
    about: 'sought',
    call: handed.call.name,
    key: handed.part(key, kind),
    among: handed.part(among, other),
  });
}

/*
 * One of several cells is found: a list of several kinds is no mistake. Of a list of settings beside
 * their names one is taken, and which one only its value says; so the result is plain there.
 */

/** `VLOOKUP(key, table, column)` and `HLOOKUP(key, table, row)`. */
export const lookUp =
  (axis: 'rows' | 'columns'): Rule =>
  (handed) => {
    sought(handed, 0, 1, handed.line(1, axis, 1));
    const node = handed.node(2);
    const line = node && writtenNumber(node);
    return line === undefined || line === null ? undefined : agreed(handed.line(1, axis, line));
  };

export const match: Rule = (handed) => {
  sought(handed, 0, 1, handed.kinds(1));
  return 'number';
};

export const xLookUp: Rule = (handed) => {
  sought(handed, 0, 1, handed.kinds(1));
  if (agreed(handed.kinds(2)) === undefined) return undefined;
  return chosen(handed, handed.count > 3 ? [2, 3] : [2]);
};

/** Ranges and what is looked for in them, two by two from `start` on. */
export function soughtInPairs(handed: Handed, start: number): void {
  for (let at = start; at + 1 < handed.count; at += 2) sought(handed, at + 1, at, handed.kinds(at));
}

/** `INDEX(table, row, column)`: of the column where it is written. */
export const index: Rule = (handed) => {
  const node = handed.node(2);
  const column = node && writtenNumber(node);
  if (column) return agreed(handed.line(0, 'columns', column));
  return handed.kind(0);
};
