import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import type { AnyDefinition } from '../../../functions/define.ts';
import type { Browse, Group } from './browse.ts';
import { toPage } from './to-page.ts';
import { words } from '../../words/words.ts';

const idOf = (name: string) => `reference-${name}`;

/** The search and what it finds; without words every function, by family. */
export function list(here: Browse) {
  const { words: asked, groups, page } = here;
  return html`<div class="reference-list">
    <input
      class="finder-text"
      autofocus
      role="combobox"
      aria-label=${words.reference.find}
      aria-expanded="true"
      aria-controls="reference-functions"
      aria-activedescendant=${page.value ? idOf(page.value.name) : ''}
      autocomplete="off"
      spellcheck="false"
      placeholder=${words.reference.examples}
      .value=${live(asked.value)}
      @input=${(event: Event) => (asked.value = (event.currentTarget as HTMLInputElement).value)}
      @keydown=${(event: KeyboardEvent) => onKey(event, here)}
    />
    <div
      id="reference-functions"
      role="listbox"
      aria-label=${words.reference.functions}
      tabindex="-1"
    >
      ${groups.value.map((one, index) => group(one, index, here))}
    </div>
    ${
      groups.value.length === 0
        ? html`<p class="faint" role="status">${words.reference.nothing}</p>`
        : ''
    }
  </div>`;
}

function group({ title, functions }: Group, index: number, here: Browse) {
  return html`<div role="group" aria-labelledby="reference-group-${index}">
    <h3 id="reference-group-${index}" role="presentation">${title}</h3>
    ${functions.map((one) => option(one, here))}
  </div>`;
}

function option({ name, summary }: AnyDefinition, here: Browse) {
  return html`<div
    id=${idOf(name)}
    role="option"
    aria-selected=${here.page.value?.name === name}
    @click=${() => {
      here.open(name);
      read(here);
    }}
  >
    <b>${name}</b><span>${summary}</span>
  </div>`;
}

function onKey(event: KeyboardEvent, here: Browse): void {
  const way = ({ ArrowDown: 1, ArrowUp: -1 } as const)[event.key];
  if (way) {
    here.step(way);
    showInList(here, 'nearest');
  } else if (event.key === 'Enter') {
    const first = here.groups.value[0]?.functions[0];
    const listed = here.groups.value.some(({ functions }) =>
      functions.some(({ name }) => name === here.page.value?.name),
    );
    if (!listed && first) here.open(first.name);
    if (here.page.value) read(here);
  } else return;
  event.preventDefault();
}

/** Brings the function that is open into view. */
export function showInList(here: Browse, block: ScrollLogicalPosition): void {
  const name = here.page.value?.name;
  if (name !== undefined) document.getElementById(idOf(name))?.scrollIntoView({ block });
}

/** From the list to the function that is open. */
function read(here: Browse): void {
  here.reading.value = true;
  toPage();
}
