import {
  addFigure,
  changeFigure,
  moveFigure,
  removeFigure,
  type PlannedFigure,
} from '../book/make/figures.ts';
import { enter, type Entry } from '../book/make/enter.ts';
import type { AnyCommand, Command } from './command.ts';
import { carryOut } from './doing.ts';
import { sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

interface OfFigure {
  readonly figure: string;
}

/** A figure of cells of this sheet, under its grid. The dialog asks which kind and which cells. */
export const add: Command<PlannedFigure> = {
  id: 'figures.add',
  name: words.commands.addFigure,
  group: 'figures',
  search: ['chart', 'graph', 'plot', 'diagram', 'ladder', 'falloff'],
  run: (context, planned) =>
    carryOut(
      context,
      addFigure(context.book.document, context.means, sheetInView(context).id, planned),
    ),
};

export const change: Command<OfFigure & { readonly planned: PlannedFigure }> = {
  id: 'figures.change',
  name: words.commands.changeFigure,
  group: 'figures',
  run: (context, { figure, planned }) =>
    carryOut(context, changeFigure(context.book.document, context.means, figure, planned)),
};

/** One up or down among the figures of its sheet. */
export const move: Command<OfFigure & { readonly way: -1 | 1 }> = {
  id: 'figures.move',
  name: words.commands.moveFigure,
  group: 'figures',
  run: (context, { figure, way }) =>
    carryOut(context, moveFigure(context.book.document, figure, way)),
};

export const remove: Command<OfFigure> = {
  id: 'figures.remove',
  name: words.commands.removeFigure,
  group: 'figures',
  run: (context, { figure }) =>
    carryOut(context, removeFigure(context.book.document, figure), words.commands.removedFigure),
};

/** Something was moved in a figure: its cells follow, in one step. */
export const place: Command<{ readonly name: string; readonly entries: readonly Entry[] }> = {
  id: 'figures.place',
  name: words.figures.placeInFigure,
  group: 'figures',
  run({ book, means }, { name, entries }) {
    const label = words.figures.placeOf(name);
    return carryOut({ book }, enter(book.document, means, entries, { label }));
  },
};

export const figureCommands: readonly AnyCommand[] = [add, change, move, remove, place];
