import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';

/** Keys of the grid and the entry line, which are gestures and no commands. */
const moving: readonly (readonly [string, string])[] = [
  ['ArrowUp', 'Up, down, left, right'],
  ['Ctrl+ArrowDown', 'To the edge of what is written'],
  ['Ctrl+Home', 'To the first cell'],
  ['Ctrl+End', 'To the last written cell'],
  ['Shift+ArrowDown', 'Grow the selection'],
  ['Ctrl+Space', 'Select the column'],
  ['Shift+Space', 'Select the row'],
  ['Enter', 'Finish and go down, or start typing'],
  ['Tab', 'Finish and go right'],
  ['F2', 'Type in the cell'],
  ['Escape', 'Drop what was typed; then Tab leaves the grid'],
  ['Shift+F10', 'Menu of the cell'],
];

export function keyboard(workbook: Workbook, shell: Shell): void {
  openDialogBox({ title: 'Keyboard', className: 'wide-box' }, () => {
    const commands = workbook.commands.value.filter(({ keys }) => keys.length > 0);
    const groups = [...new Set(commands.map(({ group }) => group))];
    const row = (keys: string, words: string) =>
      html`<div>
        <dt>${words}</dt>
        <dd><kbd>${shell.keys(keys)}</kbd></dd>
      </div>`;
    return html`<div class="box-body columns">
      <section>
        <h3>moving and typing</h3>
        <dl class="keys">${moving.map(([keys, words]) => row(keys, words))}</dl>
      </section>
      ${groups.map(
        (group) =>
          html`<section>
            <h3>${group}</h3>
            <dl class="keys">
              ${commands
                .filter((one) => one.group === group)
                .map((one) => row(one.keys[0] ?? '', one.name))}
            </dl>
          </section>`,
      )}
    </div>`;
  });
}
