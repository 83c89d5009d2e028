import type { Place } from '../contract.ts';
import { words } from '../../words/words.ts';

/** `type`: begun by typing over, arrows finish it. `change`: F2 or double click, arrows move the caret. */
export type EditorMode = 'type' | 'change';

export interface EditorListener {
  /** Text arrived though no editor was open: by key, input method, dictation or the emoji list. */
  begun(): boolean;
  changed(text: string): void;
}

/**
 * The text box that always has the grid's focus. Closed, it is unseen and catches text however it
 * arrives (a key, an input method, dictation); open, it lies over its cell.
 */
export class Editor {
  readonly box: HTMLTextAreaElement;
  place: Place | null = null;
  mode: EditorMode = 'type';
  private composing = false;
  private readonly coarse: () => boolean;

  constructor(host: HTMLElement, gridId: string, coarse: () => boolean, listener: EditorListener) {
    const box = document.createElement('textarea');
    box.className = 'entry';
    box.rows = 1;
    box.tabIndex = -1;
    box.autocomplete = 'off';
    box.spellcheck = false;
    box.setAttribute('autocapitalize', 'off');
    box.setAttribute('aria-controls', gridId);
    this.box = box;
    this.coarse = coarse;
    this.rest();
    host.append(box);

    box.addEventListener('compositionstart', () => {
      this.composing = true;
      if (!this.place && !listener.begun()) this.forget();
    });
    box.addEventListener('compositionend', () => {
      this.composing = false;
    });
    box.addEventListener('input', () => {
      if (!this.place && box.value !== '' && !listener.begun()) this.forget();
      if (!this.place) return;
      this.grow();
      listener.changed(box.value);
    });
  }

  get text(): string | null {
    return this.place ? this.box.value : null;
  }

  get isComposing(): boolean {
    return this.composing;
  }

  /** Opens at a place. With `null` the text already caught stays, as it may be half composed. */
  open(place: Place, mode: EditorMode, text: string | null, name: string): void {
    this.place = place;
    this.mode = mode;
    this.box.classList.add('open');
    this.box.removeAttribute('aria-activedescendant');
    this.box.setAttribute('aria-label', name);
    if (this.box.inputMode === 'none') this.raiseKeyboard();
    if (text !== null) this.write(text);
  }

  close(): void {
    this.place = null;
    this.box.classList.remove('open');
    this.allow();
    this.rest();
  }

  /** Shows that the text was not taken, until it changes. */
  refuse(): void {
    this.box.classList.add('refused');
    this.box.setAttribute('aria-invalid', 'true');
  }

  allow(): void {
    this.box.classList.remove('refused');
    this.box.removeAttribute('aria-invalid');
  }

  write(text: string, caret = text.length): void {
    this.box.value = text;
    this.box.setSelectionRange(caret, caret);
    this.grow();
  }

  insert(text: string, replace: number): void {
    const start = Math.max(0, this.box.selectionStart - replace);
    this.box.setRangeText(text, start, this.box.selectionEnd, 'end');
    this.grow();
  }

  /** Lays the box over its cell; `room` is how far it may grow to the right. */
  put(left: number, top: number, width: number, height: number, room: number): void {
    const { style } = this.box;
    style.left = `${left}px`;
    style.top = `${top}px`;
    style.minWidth = `${width}px`;
    style.maxWidth = `${Math.max(width, room)}px`;
    style.height = `${height}px`;
    this.grow();
  }

  private grow(): void {
    if (!this.place) return;
    this.box.style.width = '0';
    this.box.style.width = `${this.box.scrollWidth + 12}px`;
  }

  private rest(): void {
    this.box.value = '';
    this.box.setAttribute('aria-label', words.grid.cell);
    // A finger selects without the keyboard coming up.
    this.box.inputMode = this.coarse() ? 'none' : 'text';
  }

  /** The on-screen keyboard follows `inputMode` only when the focus arrives anew. */
  private raiseKeyboard(): void {
    const hadFocus = document.activeElement === this.box;
    this.box.inputMode = 'text';
    if (!hadFocus) return;
    this.box.blur();
    this.box.focus({ preventScroll: true });
  }

  private forget(): void {
    this.box.value = '';
  }
}
