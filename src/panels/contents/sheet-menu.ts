import type { Shell } from '../frame.ts';
import { openMenu, type MenuItem } from '../kit/menu.ts';
import { verbs } from '../verbs.ts';
import type { SheetEntry } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { neighbour } from './order.ts';
import { words } from '../../words/words.ts';

export function openSheetMenu(
  event: Event,
  sheet: SheetEntry,
  workbook: Workbook,
  shell: Shell,
): void {
  const sheets = workbook.contents.value;
  const move = (name: string, keys: string, way: -1 | 1): MenuItem => {
    const to = neighbour(sheets, sheet.id, way);
    return {
      name,
      keys: shell.keys(keys),
      ...(to === undefined && {
        unavailable: way < 0 ? words.contents.firstOfPhase : words.contents.lastOfPhase,
      }),
      run: () => workbook.run(verbs.moveSheet, { sheet: sheet.id, to }),
    };
  };
  openMenu(event.currentTarget as HTMLElement, words.contents.sheet(sheet.title), [
    {
      name: words.contents.describe,
      keys: shell.keys('F2'),
      run: () => shell.open('sheet', sheet.id),
    },
    {
      name: words.contents.copy,
      run: () => workbook.run(verbs.duplicateSheet, { sheet: sheet.id }),
    },
    move(words.contents.moveUp, 'Alt+ArrowUp', -1),
    move(words.contents.moveDown, 'Alt+ArrowDown', 1),
    'line',
    {
      name: words.contents.delete,
      keys: shell.keys('Delete'),
      ...(sheets.length === 1 && { unavailable: words.contents.lastSheet }),
      run: () => workbook.run(verbs.deleteSheet, { sheet: sheet.id }),
    },
  ]);
}
