import { html } from 'lit-html';
import { X } from 'lucide-static';
import { icon } from './icon.ts';
import { mount } from './mount.ts';
import { words } from '../../words/words.ts';

export interface DialogOptions {
  readonly title: string;
  readonly className?: string;
  /** Beside the work and not before it: the page stays in reach. */
  readonly modeless?: boolean;
  /** However it was closed. */
  readonly closed?: () => void;
}

/**
 * Opens a dialog that draws `view` until it is closed; focus goes back where it was. It begins at what
 * asks for it (`autofocus`), else at the dialog itself: never at the button that closes it.
 */
export function openDialogBox(options: DialogOptions, view: (close: () => void) => unknown): void {
  const { title, className = '', modeless = false, closed } = options;
  document.querySelector<HTMLDialogElement>(`dialog[data-title="${CSS.escape(title)}"]`)?.close();
  const box = document.createElement('dialog');
  const goBack = wayBack();
  box.className = `box ${className}`;
  box.dataset['title'] = title;
  box.setAttribute('aria-label', title);
  box.tabIndex = -1;
  document.body.append(box);
  const close = () => box.close();
  const stop = mount(
    box,
    () => html`
      <header role="presentation">
        <h2>${title}</h2>
        <button class="glyph" aria-label=${words.kit.close} @click=${close}>${icon(X)}</button>
      </header>
      ${view(close)}
    `,
  );
  box.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && modeless) close();
    event.stopPropagation();
  });
  box.addEventListener('pointerdown', (event) => {
    if (event.target === box && !modeless) close();
  });
  box.addEventListener('close', () => {
    stop();
    closed?.();
    box.remove();
    goBack();
  });
  if (modeless) box.show();
  else box.showModal();
  (box.querySelector<HTMLElement>('[autofocus]') ?? box).focus();
}

/** Leads back to what has the focus now, with the caret where it stands. */
function wayBack(): () => void {
  const before = document.activeElement as HTMLElement | null;
  const field = before instanceof HTMLInputElement || before instanceof HTMLTextAreaElement;
  const caret = field ? ([before.selectionStart, before.selectionEnd] as const) : undefined;
  return () => {
    const now = document.activeElement;
    if (now !== document.body && now !== before) return;
    // The browser gives the focus back, but no caret where the focus was on a text to read.
    if (now === before) before?.blur();
    before?.focus();
    if (field && caret && caret[0] !== null) before.setSelectionRange(...caret);
  };
}

/** The fields of a form by name, as text; unticked boxes are missing. */
export function fieldsOf(event: Event): ReadonlyMap<string, string> {
  event.preventDefault();
  const data = new FormData(event.currentTarget as HTMLFormElement);
  return new Map(
    [...data].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value]] : [])),
  );
}
