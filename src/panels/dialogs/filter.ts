import { html } from 'lit-html';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Which rows of a table stay in view, by what they show in one column. */
export function filter(workbook: Workbook, _shell: Shell): void {
  const here = workbook.filterHere();
  if (!here) return workbook.say(words.filter.noTable);
  const { caption, values } = here;
  openDialogBox({ title: words.filter.title(caption) }, (close) => {
    const keep = (event: Event) => {
      const ticked = fieldsOf(event);
      const hides = values.filter((_, at) => !ticked.has(String(at))).map(({ text }) => text);
      if (hides.length === values.length) return workbook.say(words.filter.nothingLeft);
      if (workbook.run(verbs.filterRows, { hides })) close();
    };
    const tick = (event: Event, on: (text: string) => boolean) => {
      const form = (event.currentTarget as HTMLElement).closest('form');
      const boxes = form?.querySelectorAll<HTMLInputElement>('input[type=checkbox]') ?? [];
      for (const [at, box] of [...boxes].entries()) box.checked = on(values[at]?.text ?? '');
    };
    const tickWith = (event: Event) => {
      const part = (event.currentTarget as HTMLInputElement).value.trim().toLowerCase();
      tick(event, (text) => text.toLowerCase().includes(part));
    };
    return html`<form class="box-body stack" @submit=${keep}>
      <p class="faint">${words.filter.help}</p>
      <div class="row">
        <button type="button" class="button" @click=${(event: Event) => tick(event, () => true)}>
          ${words.filter.all}
        </button>
        <button type="button" class="button" @click=${(event: Event) => tick(event, () => false)}>
          ${words.filter.none}
        </button>
        <input
          class="input"
          autofocus
          autocomplete="off"
          aria-label=${words.filter.containing}
          placeholder=${words.filter.containing}
          @input=${tickWith}
        />
      </div>
      <div class="ticks">
        ${values.map(
          ({ text, count, shown }, at) =>
            html`<label
              ><input type="checkbox" name=${String(at)} ?checked=${shown} /><span
                >${text || words.filter.blank}</span
              ><small>${words.filter.rows(count)}</small></label
            >`,
        )}
      </div>
      <div class="row end"><button class="button lit">${words.filter.apply}</button></div>
    </form>`;
  });
}
