import type { Outcome } from '../commands/command.ts';
import type { Action } from './actions.ts';
import { words } from '../words/words.ts';

export interface FigureHands {
  /** Moves the focus there; false if the sheet in view has no figures. */
  showFigures(): boolean;
  /** Moves the focus back into the grid. */
  showCells(): void;
  saveFigure(id: string, as: 'svg' | 'png'): Promise<Outcome>;
}

/** What can be done with figures besides changing the book. */
export function figureActions(
  hands: FigureHands,
  needsBook: () => string | undefined,
): readonly Action[] {
  return [
    {
      id: 'view.figures',
      name: words.app.toFigures,
      group: 'view',
      keys: ['Ctrl+Alt+F'],
      search: ['chart', 'ladder'],
      unavailable: needsBook,
      run: () => (hands.showFigures() ? { ok: true } : { ok: false, reason: words.app.noFigures }),
    },
    {
      id: 'view.cells',
      name: words.app.toCells,
      group: 'view',
      keys: ['Ctrl+Alt+G'],
      search: ['grid', 'sheet', 'back'],
      unavailable: needsBook,
      run: () => (hands.showCells(), { ok: true }),
    },
    {
      id: 'figures.save',
      name: words.app.saveFigure,
      group: 'figures',
      unavailable: needsBook,
      run(args) {
        const { figure, as } = args as { figure: string; as: 'svg' | 'png' };
        return hands.saveFigure(figure, as);
      },
    },
  ];
}
