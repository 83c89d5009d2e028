import { openMenu, type MenuItem, type MenuPlace } from '../kit/menu.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

export type MenuOn = 'cell' | 'row' | 'column' | 'corner';

const clipboard = ['edit.cut', 'edit.copy', 'edit.paste', 'edit.pasteValues'];
const rows = ['rows.insertBefore', 'rows.insertAfter', 'rows.delete'];
const columns = ['columns.insertBefore', 'columns.insertAfter', 'columns.delete'];

/** What is offered where; a dash draws a line. Commands that are not there are left out. */
const offered: Readonly<Record<MenuOn, readonly string[]>> = {
  cell: [
    ...clipboard,
    '-',
    'cells.quantity',
    'cells.format',
    'cells.target',
    'cells.note',
    'names.define',
    'figures.add',
    'rows.onlyAlike',
    '-',
    'cells.role.reading',
    'cells.role.choice',
    'cells.role.given',
    'cells.role.none',
    '-',
    'rows.insertBefore',
    'rows.delete',
    'columns.insertBefore',
    'columns.delete',
    'cells.clear',
  ],
  row: [...clipboard, '-', ...rows, '-', 'rows.moveBack', 'rows.moveOn', '-', 'cells.clear'],
  column: [
    ...clipboard,
    '-',
    ...columns,
    '-',
    'columns.moveBack',
    'columns.moveOn',
    'columns.wider',
    'columns.narrower',
    '-',
    'cells.quantity',
    'cells.format',
    'edit.sort.up',
    'edit.sort.down',
    'rows.filter',
    'rows.showAll',
    '-',
    'cells.clear',
  ],
  corner: [
    'sheet.freeze',
    'sheet.properties',
    'figures.add',
    'edit.find',
    'cells.format',
    'cells.clear',
  ],
};

/** The menu of what was right-clicked, long-pressed or asked for by key. */
export function openCellMenu(on: MenuOn, place: MenuPlace, workbook: Workbook, shell: Shell): void {
  const commands = new Map(workbook.commands.value.map((one) => [one.id, one]));
  const items = offered[on].flatMap((id): MenuItem[] => {
    if (id === '-') return ['line'];
    const command = commands.get(id);
    if (!command) return [];
    const { name, keys, unavailable } = command;
    return [
      {
        name,
        ...(keys[0] !== undefined && { keys: shell.keys(keys[0]) }),
        ...(unavailable !== undefined && { unavailable }),
        run: () => shell.choose(id),
      },
    ];
  });
  openMenu(place, words.page.menuOf(workbook.entry.value.address), withoutLooseLines(items));
}

/** No line first, last, or after another. */
function withoutLooseLines(items: readonly MenuItem[]): readonly MenuItem[] {
  return items.filter(
    (item, index) =>
      item !== 'line' || (index > 0 && index < items.length - 1 && items[index + 1] !== 'line'),
  );
}
