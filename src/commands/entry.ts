import { withEntry } from '../book/make/entered.ts';
import { enter } from '../book/make/enter.ts';
import { addressAt } from '../book/look.ts';
import type { CellAt } from '../book/types.ts';
import { rowCaption } from '../check/captions.ts';
import type { Spot } from '../session/session.ts';
import { done, refused, type Command } from './command.ts';
import { doSteps } from './doing.ts';
import { selectedCells, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

/** What was typed into one cell, in the cell or in the entry line. */
export const type: Command<{
  /** The sheet in view, when not said. */
  readonly sheet?: string;
  readonly spot: Spot;
  readonly text: string;
}> = {
  id: 'cells.type',
  name: words.commands.type,
  group: 'edit',
  run(context, { sheet = sheetInView(context).id, spot, text }) {
    const { document } = context.book;
    const place = { sheet, ...spot };
    const named = rowCaption(document, sheet, spot.row, spot.column);
    const about = named === '' ? addressAt(spot) : `${named} (${addressAt(spot)})`;
    const entered = enter(document, context.means, [{ ...place, text }], {
      label: text === '' ? words.commands.clearOne(about) : words.commands.typeIn(about),
    });
    if (!entered.ok) return refused(entered.reason);
    const ran = context.book.run(entered.transaction);
    if (!ran.ok) return refused(ran.reason);
    const [hint] = entered.hints;
    return hint ? { ok: true, say: hint.hint } : done;
  },
};

/** Empties the selected cells; what they measure, their role and their format stay. */
export const clear: Command = {
  id: 'cells.clear',
  name: words.commands.clear,
  group: 'edit',
  keys: ['Delete', 'Backspace'],
  search: ['delete', 'empty'],
  run(context) {
    const cells = selectedCells(context)
      .filter(({ cell }) => cell.content.kind !== 'blank')
      .map(({ row, column, cell }): CellAt => ({
        row,
        column,
        cell: withEntry(cell, { content: { kind: 'blank' } }),
      }));
    if (cells.length === 0) return done;
    const label = words.commands.clearCells(cells.length);
    return doSteps(context, label, [{ kind: 'setCells', sheet: sheetInView(context).id, cells }]);
  },
};
