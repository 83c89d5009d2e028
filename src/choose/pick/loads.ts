import { enter } from '../../book/make/enter.ts';
import { refused, type Made } from '../../book/make/made.ts';
import type { Means } from '../../book/types.ts';
import { words } from '../../words/words.ts';
import { pack } from './pack.ts';
import { firstRow, reach, readers, Unread, type Ground } from './read.ts';

/** By these words the tables of a sheet of power are found; the template sets them. */
const captions = {
  circuit: 'Circuit',
  free: 'Free',
  ours: 'Ours',
  fixture: 'Fixture',
  current: 'Current',
} as const;

/**
 * Hangs the loads of a sheet of power on its circuits, none split and none over what a circuit may
 * carry for hours: one step for undo, or why there is no way.
 */
export function packLoads(ground: Ground, means: Means): Made {
  const { text, number } = readers(ground);
  const headOf = (caption: string) => firstRow((row) => text(row, 0) === caption);
  const [circuitsHead, loadsHead] = [headOf(captions.circuit), headOf(captions.fixture)];
  const columnOf = (head: number, caption: string): number | undefined => {
    for (let column = 1; column < reach.columns; column += 1)
      if (text(head, column) === caption) return column;
    return undefined;
  };
  const missing = (caption: string): Made => refused(words.choose.noLoads(caption));
  if (circuitsHead === undefined) return missing(captions.circuit);
  if (loadsHead === undefined) return missing(captions.fixture);
  const [free, ours] = [captions.free, captions.ours].map((one) => columnOf(circuitsHead, one));
  const [current, hangs] = [captions.current, captions.circuit].map((one) =>
    columnOf(loadsHead, one),
  );
  if (free === undefined || ours === undefined) return missing(captions.free);
  if (current === undefined || hangs === undefined) return missing(captions.current);
  const rowsBelow = (head: number): number[] => {
    const rows: number[] = [];
    for (let row = head + 1; text(row, 0) !== ''; row += 1) rows.push(row);
    return rows;
  };
  try {
    const circuits = rowsBelow(circuitsHead).map((row) => ({
      name: text(row, 0),
      amps: (number(row, free) ?? 0) + (number(row, ours) ?? 0),
    }));
    const loads = rowsBelow(loadsHead).map((row) => ({ row, amps: number(row, current) ?? 0 }));
    const hung = pack(
      { options: loads, circuits },
      loads.map(() => 1),
    );
    if (!hung) {
      const sum = (all: readonly { readonly amps: number }[]) =>
        all.reduce((total, { amps }) => total + amps, 0).toFixed(1);
      return refused(words.choose.loadsLack(sum(loads), sum(circuits)));
    }
    const entries = loads.map(({ row }, index) => {
      const circuit = circuits[hung[index]?.indexOf(1) ?? -1];
      return { sheet: ground.sheet, row, column: hangs, text: circuit?.name ?? '' };
    });
    return enter(ground.document, means, entries, { label: words.choose.packLoads });
  } catch (fault) {
    if (fault instanceof Unread) return refused(fault.message);
    throw fault;
  }
}
