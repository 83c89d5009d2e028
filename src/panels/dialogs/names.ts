import { html } from 'lit-html';
import { Trash2 } from 'lucide-static';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import { icon } from '../kit/icon.ts';
import { shown } from '../kit/written.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { NameEntry } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** The names of the book: what they mean, what they come to; to change, to delete, to add. */
export function names(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.names.title, className: 'wide-box' }, (close) => {
    const known = workbook.names.value;
    return html`<div class="box-body">
      ${
        known.length > 0
          ? html`<table class="names">
              <thead>
                <tr>
                  <th>${words.names.name}</th>
                  <th>${words.names.means}</th>
                  <th>${words.names.comesTo}</th>
                  <th></th>
                </tr>
              </thead>
              <tbody>
                ${known.map((name) => row(name, workbook, close))}
              </tbody>
            </table>`
          : html`<p class="faint">
              ${words.names.offerBefore} <i>key_side</i> ${words.names.offerAfter}
            </p>`
      }
      ${adding(workbook)}
    </div>`;
  });
}

function row(name: NameEntry, workbook: Workbook, close: () => void) {
  const { target } = name;
  return html`<tr>
    <td>
      <input
        class="input"
        aria-label=${words.names.nameOf(name.name)}
        .value=${name.name}
        @change=${(event: Event) => {
          const input = event.currentTarget as HTMLInputElement;
          if (!workbook.run(verbs.renameName, { id: name.id, name: input.value.trim() }))
            input.value = name.name;
        }}
      />
    </td>
    <td>
      ${
        target
          ? html`<button
              class="link"
              @click=${() => {
                close();
                workbook.jump(target);
              }}
            >
              ${name.meaning}
            </button>`
          : name.meaning
      }
    </td>
    <td>${shown(name.value)}</td>
    <td>
      <button
        class="glyph"
        aria-label=${words.names.delete(name.name)}
        @click=${() => workbook.run(verbs.deleteName, { id: name.id })}
      >
        ${icon(Trash2)}
      </button>
    </td>
  </tr>`;
}

function adding(workbook: Workbook) {
  const add = (event: Event) => {
    const fields = fieldsOf(event);
    const form = event.currentTarget as HTMLFormElement;
    const args = { name: fields.get('name')?.trim(), meaning: fields.get('meaning')?.trim() };
    if (workbook.run(verbs.defineName, args)) form.reset();
  };
  return html`<form class="row" @submit=${add}>
    <label class="field"
      ><span>${words.names.newName}</span
      ><input class="input" name="name" required autocomplete="off" autofocus
    /></label>
    <label class="field"
      ><span>${words.names.for}</span
      ><input
        class="input"
        name="meaning"
        required
        autocomplete="off"
        .value=${workbook.entry.value.address}
    /></label>
    <button class="button lit">${words.names.add}</button>
  </form>`;
}
