import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Keys of the grid and the entry line, which are gestures and no commands. */
const moving: readonly (readonly [string, string])[] = [
  ['ArrowUp', words.keyboard.move],
  ['Ctrl+ArrowDown', words.keyboard.toEdge],
  ['Ctrl+Home', words.keyboard.toFirst],
  ['Ctrl+End', words.keyboard.toLast],
  ['Shift+ArrowDown', words.keyboard.grow],
  ['Ctrl+Space', words.keyboard.column],
  ['Shift+Space', words.keyboard.row],
  ['Enter', words.keyboard.finishDown],
  ['Tab', words.keyboard.finishRight],
  ['F2', words.keyboard.type],
  ['Escape', words.keyboard.drop],
  ['Shift+F10', words.keyboard.menu],
];

export function keyboard(workbook: Workbook, shell: Shell): void {
  openDialogBox({ title: words.keyboard.title, className: 'wide-box' }, () => {
    const commands = workbook.commands.value.filter(({ keys }) => keys.length > 0);
    const groups = [...new Set(commands.map(({ group }) => group))];
    const row = (keys: string, said: string) =>
      html`<div>
        <dt>${said}</dt>
        <dd><kbd>${shell.keys(keys)}</kbd></dd>
      </div>`;
    return html`<div
      class="box-body columns"
      tabindex="0"
      role="group"
      aria-label=${words.keyboard.title}
    >
      <section>
        <h3>${words.keyboard.moving}</h3>
        <dl class="keys">${moving.map(([keys, said]) => row(keys, said))}</dl>
      </section>
      ${groups.map(
        (group) =>
          html`<section>
            <h3>${named(group)}</h3>
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

const groupNames: Readonly<Record<string, string>> = words.keyboard.groups;
const named = (group: string) => groupNames[group] ?? group;
