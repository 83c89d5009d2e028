import { fillCells, type Direction } from '../book/make/fill.ts';
import type { Region } from '../book/make/growing.ts';
import type { Block } from '../session/session.ts';
import { refused, type Command, type Context, type Outcome } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegion, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

function fillOn(context: Context, from: Region, direction: Direction, count: number): Outcome {
  return carryOut(context, fillCells(context.book.document, context.means, from, direction, count));
}

/** The fill handle was dragged from one block over another that contains it. */
export const fill: Command<{ readonly from: Block; readonly to: Block }> = {
  id: 'edit.fill',
  name: words.commands.fill,
  group: 'edit',
  run(context, { from, to }) {
    const region: Region = {
      sheet: sheetInView(context).id,
      top: from.from.row,
      left: from.from.column,
      height: from.to.row - from.from.row + 1,
      width: from.to.column - from.from.column + 1,
    };
    const ways: readonly (readonly [Direction, number])[] = [
      ['down', to.to.row - from.to.row],
      ['up', from.from.row - to.from.row],
      ['right', to.to.column - from.to.column],
      ['left', from.from.column - to.from.column],
    ];
    const way = ways.find(([, count]) => count > 0);
    if (!way) return refused(words.commands.nothingToFill);
    const outcome = fillOn(context, region, ...way);
    if (outcome.ok) context.session.selectBlock(to);
    return outcome;
  },
};

const fillFromEdge = (direction: 'down' | 'right', keys: string): Command => ({
  id: `edit.fill.${direction}`,
  name: words.commands.fillTo(direction),
  group: 'edit',
  keys: [keys],
  search: ['copy', 'continue', 'repeat'],
  run(context) {
    const region = selectedRegion(context);
    const along = direction === 'down' ? 'height' : 'width';
    if (region[along] < 2) return refused(words.commands.selectToFill(direction));
    return fillOn(context, { ...region, [along]: 1 }, direction, region[along] - 1);
  },
});

export const fillDown = fillFromEdge('down', 'Ctrl+D');
export const fillRight = fillFromEdge('right', 'Ctrl+R');
