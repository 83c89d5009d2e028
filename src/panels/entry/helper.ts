import { html } from 'lit-html';
import type { AnyDefinition, Parameter } from '../../../functions/define.ts';
import { callAtCaret } from '../../formula/caret.ts';
import { measure } from '../kit/quantities.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import type { Stem, Suggestion } from './suggest.ts';
import { words } from '../../words/words.ts';

export interface HelperState {
  readonly text: string;
  readonly typing: boolean;
  readonly caret: number;
  readonly stem: Stem | undefined;
  readonly suggestions: readonly Suggestion[];
  readonly chosen: number;
  /** Why the last try to enter was refused. */
  readonly reason: string;
}

/** Under the entry line while typing: what the words could mean, and what the function wants next. */
export function helper(
  state: HelperState,
  workbook: Workbook,
  shell: Shell,
  take: (index: number) => boolean,
) {
  const call = state.typing ? callAtCaret(state.text, state.caret) : undefined;
  const definition = call
    ? workbook.functions.value.find((one) => one.name === call.name)
    : undefined;
  const empty = state.suggestions.length === 0 && !definition && state.reason === '';
  return html`<div id="entry-help" class="entry-help" ?hidden=${empty}>
    ${state.reason ? html`<p class="wrong" role="alert">${state.reason}</p>` : ''}
    ${definition && call ? hint(definition, call.argument, shell) : ''}
    ${
      state.suggestions.length > 0
        ? html`<ul id="entry-suggestions" role="listbox" aria-label=${words.entry.suggestions}>
            ${state.suggestions.map(
              (suggestion, index) =>
                html`<li
                  id="suggestion-${index}"
                  role="option"
                  aria-selected=${index === state.chosen}
                  @pointerdown=${(event: Event) => {
                    event.preventDefault();
                    take(index);
                  }}
                >
                  <b class=${suggestion.kind}>${suggestion.name}</b>
                  <span>${suggestion.summary}</span>
                </li>`,
            )}
          </ul>`
        : ''
    }
  </div>`;
}

function hint(definition: AnyDefinition, argument: number, shell: Shell) {
  const { parameters } = definition;
  const last = parameters.length - 1;
  const current = argument > last && parameters[last]?.repeats ? last : argument;
  const now = parameters[current];
  return html`<div class="hint">
    <p class="signature">
      <button
        class="link"
        tabindex="-1"
        @pointerdown=${(event: Event) => event.preventDefault()}
        @click=${() => shell.open('function', definition.name)}
      >
        ${definition.name}</button
      >(${parameters.map(
        (one, index) =>
          html`${index > 0 ? ', ' : ''}<span class=${index === current ? 'due' : ''}
              >${one.name}${isOptional(one) ? '?' : ''}</span
            >`,
      )})
    </p>
    ${
      now
        ? html`<p><b>${now.name}</b>, ${measure(now.quantity)}. ${now.help}</p>`
        : html`<p>${words.entry.noMoreArguments(definition.name, parameters.length)}</p>`
    }
  </div>`;
}

export const isOptional = (one: Parameter): boolean =>
  one.optional === true || one.default !== undefined || one.fromBook !== undefined;
