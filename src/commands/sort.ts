import { sortRegion } from '../book/make/sort.ts';
import { spotOf } from '../book/look.ts';
import { refused, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegion, sheetInView } from './selected.ts';
import { tableAround } from './table.ts';
import { words } from '../words/words.ts';

const sort = (id: string, name: string, descending: boolean): Command => ({
  id,
  name,
  group: 'edit',
  search: ['order'],
  run(context) {
    const selected = selectedRegion(context);
    const region = selected.height > 1 ? selected : tableAround(sheetInView(context), selected.top);
    if (!region) return refused(words.commands.selectToSort);
    const { document } = context.book;
    const column = Math.max(region.left, context.session.state.selection.focus.column);
    const made = sortRegion(document, region, [{ column, descending }], (place) => {
      const spot = spotOf(document, place);
      return spot && context.engine.valueOf(spot);
    });
    return carryOut(context, made);
  },
});

/** Sorts the selected rows, or the table around a single cell, by the column in which the selection began. */
export const sortUp = sort('edit.sort.up', words.commands.sortLowest, false);
export const sortDown = sort('edit.sort.down', words.commands.sortHighest, true);
