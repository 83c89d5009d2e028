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
import { words } from '../../words/words.ts';

/** The line across the top: which book, is it kept, how numbers are said, and one way to find the rest. */
export function bar(workbook: Workbook, screen: Screen, shell: Shell) {
  return html`
    <button
      class="brand"
      popovertarget="book-menu"
      aria-label=${words.bar.bookMenu}
      title=${words.bar.bookMenu}
      aria-haspopup="menu"
    >
      ${mark()}${icon(ChevronDown)}
    </button>
    ${bookMenu(workbook, shell)}
    <input
      class="book-title"
      aria-label=${words.bar.bookTitle}
      spellcheck="false"
      size=${Math.max(6, workbook.title.value.length)}
      .value=${workbook.title.value}
      @change=${(event: Event) => rename(workbook, event.currentTarget as HTMLInputElement)}
      @keydown=${(event: KeyboardEvent) => leaveOnKey(event, workbook)}
    />
    ${saved(workbook)} ${remarkCount(workbook, shell)}
    <span class="room"></span>
    <div class="switches">${switches(workbook)}</div>
    <button class="button units" popovertarget="units-menu" aria-haspopup="dialog">
      ${words.bar.units}
    </button>
    <div
      id="units-menu"
      class="popup units-menu"
      popover
      role="dialog"
      aria-label=${words.bar.units}
      @toggle=${placeOnOpen}
    >
      ${allSwitches(workbook, shell)}
    </div>
    ${undoButtons(workbook)}
    ${
      workbook.foot.value.roles.includes('reading')
        ? html`<button
            class="glyph walk-start"
            aria-label=${words.bar.walk}
            title=${words.bar.walk}
            @click=${() => workbook.run(verbs.walk)}
          >
            ${icon(Footprints)}
          </button>`
        : ''
    }
    <button class="button find" @click=${() => shell.find()} aria-keyshortcuts="Control+K">
      ${icon(TextSearch)}<span>${words.bar.find}</span><kbd>${shell.keys('Ctrl+K')}</kbd>
    </button>
    ${themeButton(screen)}
    <button
      class="glyph slip-toggle"
      aria-label=${words.bar.slip}
      title=${words.bar.slip}
      aria-pressed=${screen.beside.value.slip}
      @click=${() => screen.toggle('slip')}
    >
      ${icon(PanelRight)}
    </button>
  `;
}

function saved(workbook: Workbook) {
  const { state, sentence, isElsewhere } = workbook.save.value;
  const [when, ...rest] = sentence.split(', ');
  return html`<p class="saved ${state}" role="status" title=${sentence}>
      <span class="lamp" aria-hidden="true"></span
      ><span>${when}<span class="rest">${rest.map((said) => `, ${said}`)}</span></span>
    </p>
    ${
      isElsewhere
        ? html`<button class="button" @click=${() => workbook.run(verbs.takeOver)}>
            ${words.bar.keepHere}
          </button>`
        : ''
    }`;
}

/** Said only when there is something to say. */
function remarkCount(workbook: Workbook, shell: Shell) {
  const { count } = workbook.remarks.value;
  if (count === 0) return '';

  return html`<button
    class="remark-count"
    aria-label=${words.bar.remarksShow(remarksInWords(count))}
    title=${words.bar.remarksTitle(shell.keys('F7'))}
    @click=${() => shell.open('remarks')}
  >
    <b>${count}</b><span> ${words.bar.remarks(count)}</span>
  </button>`;
}

function undoButtons(workbook: Workbook) {
  const button = (id: string, nothing: string, picture: string) => {
    const command = workbook.commands.value.find((one) => one.id === id);
    const said = command && !command.unavailable ? command.name : nothing;
    return html`<button
      class="glyph"
      aria-label=${said}
      title=${said}
      ?disabled=${!command || command.unavailable !== undefined}
      @click=${() => workbook.run(id)}
    >
      ${icon(picture)}
    </button>`;
  };
  return html`<span class="undo"
    >${button(verbs.undo, words.bar.nothingToUndo, Undo2)}${button(verbs.redo, words.bar.nothingToRedo, Redo2)}</span
  >`;
}

const themes: Readonly<Record<Theme, { next: Theme; said: string; picture: string }>> = {
  system: { next: 'dark', said: words.bar.themeSystem, picture: SunMoon },
  dark: { next: 'metering', said: words.bar.themeDark, picture: Moon },
  metering: { next: 'light', said: words.bar.themeMetering, picture: MoonStar },
  light: { next: 'system', said: words.bar.themeLight, picture: Sun },
};

function themeButton(screen: Screen) {
  const { next, said, picture } = themes[screen.theme.value];
  return html`<button
    class="glyph theme"
    aria-label=${said}
    title=${said}
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
