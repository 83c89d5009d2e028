import type { Shell } from '../frame.ts';
import { openMenu, type MenuItem } from '../kit/menu.ts';
import { verbs } from '../verbs.ts';
import type { SheetEntry, Workbook } from '../workbook.ts';
import { neighbour } from './order.ts';

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
        unavailable: `It is the ${way < 0 ? 'first' : 'last'} of its phase.`,
      }),
      run: () => workbook.run(verbs.moveSheet, { sheet: sheet.id, to }),
    };
  };
  openMenu(event.currentTarget as HTMLElement, `Sheet ${sheet.title}`, [
    {
      name: 'Title, purpose, phase',
      keys: shell.keys('F2'),
      run: () => shell.open('sheet', sheet.id),
    },
    {
      name: 'Copy the sheet',
      run: () => workbook.run(verbs.duplicateSheet, { sheet: sheet.id }),
    },
    move('Move up', 'Alt+ArrowUp', -1),
    move('Move down', 'Alt+ArrowDown', 1),
    'line',
    {
      name: 'Delete the sheet',
      keys: shell.keys('Delete'),
      ...(sheets.length === 1 && { unavailable: 'A book has at least one sheet.' }),
      run: () => workbook.run(verbs.deleteSheet, { sheet: sheet.id }),
    },
  ]);
}
