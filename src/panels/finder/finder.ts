import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { computed, signal } from '../kit/signals.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { search, type Found } from './search.ts';
import { words } from '../../words/words.ts';

/** Everything that can be done or gone to, by typing what it is called or what it is for. */
export function finder(workbook: Workbook, shell: Shell): void {
  const typed = signal('');
  const chosen = signal(0);
  const things = computed(() => everything(workbook, shell));
  const found = computed(() => search(typed.value, things.value));
  openDialogBox({ title: words.find.command, className: 'finder' }, (close) => {
    const go = (one: Found | undefined) => {
      if (!one || one.unavailable) return;
      close();
      one.go();
    };
    const onKey = (event: KeyboardEvent) => {
      const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
      const count = found.value.length;
      if (step && count > 0) {
        chosen.value = (chosen.value + step + count) % count;
        document.getElementById(`found-${chosen.value}`)?.scrollIntoView({ block: 'nearest' });
      } else if (event.key === 'Enter') go(found.value[chosen.value]);
      else return;
      event.preventDefault();
    };
    return html`
      <input
        class="finder-text"
        autofocus
        role="combobox"
        aria-label=${words.find.anything}
        aria-expanded="true"
        aria-controls="found"
        aria-activedescendant="found-${chosen.value}"
        autocomplete="off"
        spellcheck="false"
        placeholder=${words.find.examples}
        @input=${(event: Event) => {
          typed.value = (event.currentTarget as HTMLInputElement).value;
          chosen.value = 0;
        }}
        @keydown=${onKey}
      />
      <ul id="found" role="listbox" aria-label=${words.find.found}>
        ${found.value.map(
          (one, index) =>
            html`<li
              id="found-${index}"
              role="option"
              aria-selected=${index === chosen.value}
              aria-disabled=${one.unavailable !== undefined}
              title=${one.unavailable ?? ''}
              @click=${() => go(one)}
            >
              <i>${one.kind}</i><b>${one.label}</b><span>${one.unavailable ?? one.aside}</span>
            </li>`,
        )}
      </ul>
      ${found.value.length === 0 ? html`<p class="box-body faint">${words.find.nothing}</p>` : ''}
    `;
  });
}

function everything(workbook: Workbook, shell: Shell): readonly Found[] {
  const commands = workbook.commands.value.map((one): Found => ({
    kind: words.find.aCommand,
    label: one.name,
    aside: one.keys[0] ? shell.keys(one.keys[0]) : '',
    words: [one.group, ...one.search],
    ...(one.unavailable !== undefined && { unavailable: one.unavailable }),
    go: () => shell.choose(one.id),
  }));
  const sheets = workbook.contents.value.map((one): Found => ({
    kind: words.find.aSheet,
    label: one.title,
    aside: one.count ?? '',
    words: [one.phase ?? ''],
    go: () => workbook.show(one.id),
  }));
  const names = workbook.names.value.map((one): Found => ({
    kind: words.find.aName,
    label: one.name,
    aside: one.meaning,
    words: [],
    go: () => (one.target ? workbook.jump(one.target) : shell.open('names')),
  }));
  const functions = workbook.functions.value.map((one): Found => ({
    kind: words.find.aFunction,
    label: one.name,
    aside: one.summary,
    words: [one.summary, ...one.search],
    go: () => shell.open('function', one.name),
  }));
  return [...commands, ...sheets, ...names, ...functions];
}
