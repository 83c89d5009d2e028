import { html } from 'lit-html';
import { placeOnOpen, roam } from '../kit/popup.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Commands on the book as a whole, then what helps. */
const sections = [
  ['book.start', 'book.new', 'book.open', 'book.import', 'walk.open'],
  ['plan.collect', 'plan.order', 'book.addresses'],
  ['repeat.log', 'repeat.record', 'repeat.records', 'repeat.setOut'],
  ['teach.open'],
  ['versions.show', 'versions.keep'],
  ['book.saveFile', 'book.export', 'book.print', 'book.printAll', 'book.handOver'],
] as const;

export function bookMenu(workbook: Workbook, shell: Shell) {
  const commands = workbook.commands.value;
  const item = (id: string) => {
    const command = commands.find((one) => one.id === id);
    if (!command) return '';
    return html`<button
      role="menuitem"
      ?disabled=${command.unavailable !== undefined}
      title=${command.unavailable ?? ''}
      @click=${() => shell.choose(id)}
    >
      <span>${command.name}</span><kbd>${command.keys[0] ? shell.keys(command.keys[0]) : ''}</kbd>
    </button>`;
  };
  const help = (name: string, keys: string, open: () => void) =>
    html`<button role="menuitem" @click=${open}>
      <span>${name}</span><kbd>${keys ? shell.keys(keys) : ''}</kbd>
    </button>`;
  return html`<div
    id="book-menu"
    class="popup menu"
    popover
    role="menu"
    aria-label=${words.bar.book}
    @toggle=${placeOnOpen}
    @keydown=${roam('[role=menuitem]:not(:disabled)')}
    @click=${(event: Event) => (event.currentTarget as HTMLElement).hidePopover()}
  >
    ${sections.map(
      (ids) =>
        html`${ids.map(item)}
          <hr />`,
    )}
    ${help(words.bar.reference, 'F1', () => shell.open('function'))}
    ${help(words.bar.keyboard, 'Shift+F1', () => shell.open('keyboard'))}
    ${help(words.bar.about, '', () => shell.open('about'))}
  </div>`;
}
