import { html } from 'lit-html';
import {
  ChevronDown,
  Footprints,
  Moon,
  MoonStar,
  PanelRight,
  Redo2,
  Sun,
  SunMoon,
  TextSearch,
  Undo2,
} from 'lucide-static';
import { icon } from '../kit/icon.ts';
import { placeOnOpen } from '../kit/popup.ts';
import type { Screen, Theme } from '../screen.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import { remarksInWords } from '../views/remarks-view.ts';
import type { Workbook } from '../workbook.ts';
import { mark } from './mark.ts';
import { bookMenu } from './book-menu.ts';
import { allSwitches, switches } from './switches.ts';

/** The line across the top: which book, is it kept, how numbers are said, and one way to find the rest. */
export function bar(workbook: Workbook, screen: Screen, shell: Shell) {
  return html`
    <button
      class="brand"
      popovertarget="book-menu"
      aria-label="Book menu"
      title="Book menu"
      aria-haspopup="menu"
    >
      ${mark()}${icon(ChevronDown)}
    </button>
    ${bookMenu(workbook, shell)}
    <input
      class="book-title"
      aria-label="Title of the book"
      spellcheck="false"
      size=${Math.max(6, workbook.title.value.length)}
      .value=${workbook.title.value}
      @change=${(event: Event) => rename(workbook, event.currentTarget as HTMLInputElement)}
      @keydown=${(event: KeyboardEvent) => leaveOnKey(event, workbook)}
    />
    ${saved(workbook)} ${remarkCount(workbook, shell)}
    <span class="room"></span>
    <div class="switches">${switches(workbook)}</div>
    <button class="button units" popovertarget="units-menu" aria-haspopup="dialog">Units</button>
    <div
      id="units-menu"
      class="popup units-menu"
      popover
      role="dialog"
      aria-label="Units"
      @toggle=${placeOnOpen}
    >
      ${allSwitches(workbook, shell)}
    </div>
    ${undoButtons(workbook)}
    ${
      workbook.foot.value.roles.includes('reading')
        ? html`<button
            class="glyph walk-start"
            aria-label="Walk through the readings"
            title="Walk through the readings"
            @click=${() => workbook.run(verbs.walk)}
          >
            ${icon(Footprints)}
          </button>`
        : ''
    }
    <button class="button find" @click=${() => shell.find()} aria-keyshortcuts="Control+K">
      ${icon(TextSearch)}<span>Find a command</span><kbd>${shell.keys('Ctrl+K')}</kbd>
    </button>
    ${themeButton(screen)}
    <button
      class="glyph slip-toggle"
      aria-label="Slip: what is known about the cell"
      title="Slip: what is known about the cell"
      aria-pressed=${screen.beside.value.slip}
      @click=${() => screen.toggle('slip')}
    >
      ${icon(PanelRight)}
    </button>
  `;
}

function saved(workbook: Workbook) {
  const { state, sentence } = workbook.save.value;
  return html`<p class="saved ${state}" role="status">
    <span class="lamp" aria-hidden="true"></span><span>${sentence}</span>
  </p>`;
}

/** Said only when there is something to say. */
function remarkCount(workbook: Workbook, shell: Shell) {
  const { count } = workbook.remarks.value;
  if (count === 0) return '';
  const words = remarksInWords(count);
  return html`<button
    class="remark-count"
    aria-label="${words}: show them"
    title="Show the remarks (${shell.keys('F7')})"
    @click=${() => shell.open('remarks')}
  >
    <b>${count}</b><span> ${count === 1 ? 'remark' : 'remarks'}</span>
  </button>`;
}

function undoButtons(workbook: Workbook) {
  const button = (id: string, name: string, picture: string) => {
    const command = workbook.commands.value.find((one) => one.id === id);
    const words = command && !command.unavailable ? command.name : `Nothing to ${name}`;
    return html`<button
      class="glyph"
      aria-label=${words}
      title=${words}
      ?disabled=${!command || command.unavailable !== undefined}
      @click=${() => workbook.run(id)}
    >
      ${icon(picture)}
    </button>`;
  };
  return html`<span class="undo"
    >${button(verbs.undo, 'undo', Undo2)}${button(verbs.redo, 'redo', Redo2)}</span
  >`;
}

const themes: Readonly<Record<Theme, { next: Theme; words: string; picture: string }>> = {
  system: { next: 'dark', words: 'Light and dark as the system says', picture: SunMoon },
  dark: { next: 'metering', words: 'Dark, whatever the system says', picture: Moon },
  metering: { next: 'light', words: 'Dimmer than dark, for metering', picture: MoonStar },
  light: { next: 'system', words: 'Light, whatever the system says', picture: Sun },
};

function themeButton(screen: Screen) {
  const { next, words, picture } = themes[screen.theme.value];
  return html`<button
    class="glyph theme"
    aria-label=${words}
    title=${words}
    @click=${() => (screen.theme.value = next)}
  >
    ${icon(picture)}
  </button>`;
}

function rename(workbook: Workbook, input: HTMLInputElement): void {
  const title = input.value.trim();
  if (title === '' || !workbook.run(verbs.setTitle, { title })) input.value = workbook.title.value;
}

function leaveOnKey(event: KeyboardEvent, workbook: Workbook): void {
  const input = event.currentTarget as HTMLInputElement;
  if (event.key === 'Escape') input.value = workbook.title.value;
  if (event.key === 'Enter' || event.key === 'Escape') input.blur();
}
