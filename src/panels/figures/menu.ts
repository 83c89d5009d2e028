import type { Shell } from '../frame.ts';
import { openMenu, type MenuItem } from '../kit/menu.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import type { FigureView } from './seam.ts';
import { words } from '../../words/words.ts';

export function openFigureMenu(
  event: Event,
  figure: FigureView,
  workbook: Workbook,
  shell: Shell,
): void {
  const { id, title, made } = figure;
  const all = workbook.figures.shown.value;
  const at = all.findIndex((one) => one.id === id);
  const move = (name: string, keys: string, way: -1 | 1): MenuItem => ({
    name,
    keys: shell.keys(keys),
    ...(!all[at + way] && { unavailable: way < 0 ? words.figures.first : words.figures.last }),
    run: () => workbook.run(verbs.moveFigure, { figure: id, way }),
  });
  const save = (name: string, as: 'svg' | 'png'): MenuItem => ({
    name,
    ...('reason' in made && { unavailable: words.figures.nothingDrawn }),
    run: () => workbook.run(verbs.saveFigure, { figure: id, as }),
  });
  openMenu(event.currentTarget as HTMLElement, words.figures.called(title), [
    {
      name: words.figures.describe,
      keys: shell.keys('F2'),
      run: () => shell.open('figure', id),
    },
    move(words.figures.moveUp, 'Alt+ArrowUp', -1),
    move(words.figures.moveDown, 'Alt+ArrowDown', 1),
    'line',
    save(words.figures.saveSvg, 'svg'),
    save(words.figures.savePng, 'png'),
    'line',
    {
      name: words.figures.remove,
      keys: shell.keys('Delete'),
      run: () => removeFigure(id, workbook),
    },
  ]);
}

/** The same by key, with the button of the menu in focus. */
export function figureKey(
  event: KeyboardEvent,
  { id }: FigureView,
  workbook: Workbook,
  shell: Shell,
): void {
  const way = event.altKey ? ({ ArrowUp: -1, ArrowDown: 1 } as const)[event.key] : undefined;
  if (way !== undefined) {
    const button = event.currentTarget as HTMLElement;
    workbook.run(verbs.moveFigure, { figure: id, way });
    // What is moved in the page loses the focus.
    requestAnimationFrame(() => button.focus());
  } else if (event.key === 'F2') shell.open('figure', id);
  else if (event.key === 'Delete') removeFigure(id, workbook);
  else return;
  event.preventDefault();
  event.stopPropagation();
}

/** The focus goes to the figures that are left, or to the grid. */
function removeFigure(id: string, workbook: Workbook): void {
  workbook.run(verbs.removeFigure, { figure: id });
  requestAnimationFrame(() => {
    const next = document.querySelector<HTMLElement>('.figures:not([hidden]) .figure-list');
    (next ?? document.querySelector<HTMLElement>('.grid [role=grid]'))?.focus();
  });
}
