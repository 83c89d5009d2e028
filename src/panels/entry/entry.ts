import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { fixAtCaret } from '../../formula/fix.ts';
import { tokensOf } from '../../formula/tokens.ts';
import { mount } from '../kit/mount.ts';
import { computed, signal } from '../kit/signals.ts';
import { shown } from '../kit/written.ts';
import type { EntryLine, Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { helper, type HelperState } from './helper.ts';
import { nameBox } from './name-box.ts';
import { accept, stemAt, suggest } from './suggest.ts';
import { words } from '../../words/words.ts';

type Then = Parameters<Workbook['enter']>[1];

/** Where formulas and readings are written, with what the words could mean and what it comes to. */
export function entryLine(host: HTMLElement, workbook: Workbook, shell: Shell): EntryLine {
  const caret = signal(0);
  const chosen = signal(0);
  const dismissed = signal('');
  const reason = signal('');

  const field = () => host.querySelector<HTMLInputElement>('.entry-text');

  const state = computed<HelperState>(() => {
    const { text, typing } = workbook.entry.value;
    // While the cell itself is typed in, the caret is taken to be at the end.
    const here = document.activeElement === field();
    const at = here ? Math.min(caret.value, text.length) : text.length;
    const stem = typing && dismissed.value !== text ? stemAt(text, at) : undefined;
    const suggestions = stem
      ? suggest(stem.words, workbook.functions.value, workbook.names.value)
      : [];
    return {
      text,
      typing,
      caret: at,
      stem,
      suggestions,
      chosen: chosen.value,
      reason: reason.value,
    };
  });

  const type = (text: string, at: number) => {
    caret.value = at;
    chosen.value = 0;
    reason.value = '';
    workbook.type(text, at);
  };
  const take = (index: number): boolean => {
    const { suggestions, stem, text, caret: at } = state.value;
    const suggestion = suggestions[index];
    if (!stem || !suggestion) return false;
    const next = accept(text, at, stem, suggestion);
    type(next.text, next.caret);
    const input = field();
    if (document.activeElement === input) input?.setSelectionRange(next.caret, next.caret);
    return true;
  };
  const end = (then: Then): boolean => {
    const taken = workbook.enter(workbook.entry.value.text, then);
    reason.value = taken === true ? '' : taken;
    return taken === true;
  };
  const caretNow = () => Math.min(caret.value, workbook.entry.value.text.length);
  /** Text and caret at once, also where they were not typed here. */
  const write = (text: string, at: number) => {
    type(text, at);
    field()?.setSelectionRange(at, at);
  };
  /** The next `$` in the reference at the caret. */
  const fix = (): boolean => {
    const next = fixAtCaret(workbook.entry.value.text, field()?.selectionStart ?? 0);
    if (next) write(next.text, next.caret);
    return next !== undefined;
  };

  /** Arrows, Tab, Enter and Escape belong to the suggestions while there are any. */
  const onSuggestionKey = (event: KeyboardEvent): boolean => {
    const { suggestions, text } = state.value;
    if (suggestions.length === 0 || event.isComposing) return false;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step) chosen.value = (chosen.value + step + suggestions.length) % suggestions.length;
    else if (event.key === 'Escape') dismissed.value = text;
    else if (event.key !== 'Tab' && event.key !== 'Enter') return false;
    else return take(chosen.value);
    return true;
  };

  const endings: Readonly<Record<string, readonly [plain: Then, shifted: Then]>> = {
    Enter: ['down', 'up'],
    Tab: ['right', 'left'],
  };
  const onKey = (event: KeyboardEvent) => {
    const { typing } = workbook.entry.value;
    const ending = endings[event.key];
    if (onSuggestionKey(event)) void 0;
    else if (event.isComposing) return;
    else if (ending && (typing || event.key === 'Enter')) end(ending[event.shiftKey ? 1 : 0]);
    else if (event.key === 'F4' && fix()) void 0;
    else if (event.key === 'Escape') {
      reason.value = '';
      workbook.cancel();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const onInput = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    type(input.value, input.selectionStart ?? input.value.length);
  };
  const onCaret = (event: Event) => {
    caret.value = (event.currentTarget as HTMLInputElement).selectionStart ?? 0;
  };
  const onScroll = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const lit = input.previousElementSibling;
    if (lit) lit.scrollLeft = input.scrollLeft;
  };

  mount(host, () => {
    const { text, result, label, typing } = workbook.entry.value;
    const { suggestions } = state.value;
    return html`
      ${nameBox(workbook)}
      <div class="entry-field">
        <div class="entry-lit" aria-hidden="true">${colours(text)}</div>
        <input
          class="entry-text"
          aria-label=${words.entry.whatIsIn(workbook.entry.value.address, label)}
          role="combobox"
          aria-autocomplete="list"
          aria-expanded=${suggestions.length > 0}
          aria-controls="entry-suggestions"
          aria-activedescendant=${suggestions.length > 0 ? `suggestion-${chosen.value}` : ''}
          aria-invalid=${reason.value !== ''}
          aria-describedby="entry-help"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          .value=${live(text)}
          @input=${onInput}
          @keydown=${onKey}
          @keyup=${onCaret}
          @click=${onCaret}
          @scroll=${onScroll}
        />
      </div>
      <output class="entry-result" aria-label=${words.entry.result}>
        ${typing || text.startsWith('=') ? shown(result) : ''}
      </output>
      ${helper(state.value, workbook, shell, take)}
    `;
  });

  return {
    suggest: onSuggestionKey,
    get caret() {
      return caretNow();
    },
    insert(words, replace) {
      const { text } = workbook.entry.value;
      const start = Math.max(0, caretNow() - replace);
      write(text.slice(0, start) + words + text.slice(caretNow()), start + words.length);
    },
    focus(at = caretNow()) {
      caret.value = at;
      field()?.focus();
      field()?.setSelectionRange(at, at);
    },
    end: () => end('stay'),
  };
}

/** The entry in its parts; what is no formula has none. */
function colours(text: string) {
  if (!text.startsWith('=')) return html`<span>${text}</span>`;
  return tokensOf(text).map((token) => html`<span class=${token.kind}>${token.text}</span>`);
}
