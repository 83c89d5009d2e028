import { html } from 'lit-html';
import { ArrowLeft } from 'lucide-static';
import { sources } from '../../../functions/sources.ts';
import type { WrittenExample } from '../../reference/examples.ts';
import type { FunctionPage, ParameterLine } from '../../reference/page.ts';
import { icon } from '../kit/icon.ts';
import type { Workbook } from '../workbook.ts';
import type { Browse } from './browse.ts';
import { equation } from './equation.ts';
import { toPage } from './to-page.ts';
import { words } from '../../words/words.ts';

/** All that the library says of one function. */
export function functionPage(
  page: FunctionPage,
  here: Browse,
  workbook: Workbook,
  close: () => void,
) {
  const { name, summary, job, signature, result, examples, limits, alike, search } = page;
  const before = here.before.value;
  return html`
    <p class="ways">
      <button class="link to-list" @click=${() => toList(here)}>
        ${icon(ArrowLeft)}${words.reference.all}
      </button>
      ${
        before === undefined
          ? ''
          : html`<button class="link" @click=${() => (here.goBack(), toPage())}>
              ${icon(ArrowLeft)}${words.reference.backTo} ${before}
            </button>`
      }
    </p>
    <h3 class="name">${name}</h3>
    <p class="lead">${summary}</p>
    <p>${job}</p>
    <h4>${words.reference.takes}</h4>
    <p><code>${signature}</code></p>
    <dl class="parameters">
      ${page.parameters.map(parameter)}
      <div>
        <dt>${words.reference.gives}</dt>
        <dd>${result}</dd>
      </div>
    </dl>
    ${equation(page)}
    <h4>${words.reference.forExample}</h4>
    <ul class="examples">
      ${examples.map((one) => example(one, workbook, close))}
    </ul>
    ${held(workbook)}
    <h4>${words.reference.anySpreadsheet}</h4>
    ${plain(page)}
    <h4>${words.reference.ends}</h4>
    <p class="limits">${limits}</p>
    <h4>${words.reference.comesFrom}</h4>
    <ul class="cited">
      ${page.sources.map(
        ({ from, at }) =>
          html`<li>${sources[from].title}${at === undefined ? '' : html` <i>${at}.</i>`}</li>`,
      )}
    </ul>
    ${alike.length > 0 ? html`<h4>${words.reference.alike}</h4>` : ''}
    <ul class="chips">
      ${alike.map(
        (other) =>
          html`<li>
            <button class="chip" @click=${() => (here.follow(other), toPage())}>
              <span>${other}</span>
            </button>
          </li>`,
      )}
    </ul>
    <p class="faint">${words.reference.alsoFound(search.join(', '))}</p>
  `;
}

function toList(here: Browse): void {
  here.reading.value = false;
  document.querySelector<HTMLElement>('.reference-list input')?.focus();
}

function parameter({ name, help, takes, allowed, usual, leftOut }: ParameterLine) {
  const facts = [
    takes,
    allowed,
    usual && words.reference.usually(usual),
    leftOut !== undefined && words.reference.ifLeftOut(leftOut),
  ];
  return html`<div>
    <dt>${name}</dt>
    <dd>${help} <small>${facts.filter(Boolean).join('; ')}</small></dd>
  </div>`;
}

function example(one: WrittenExample, workbook: Workbook, close: () => void) {
  const { formula, alone, cells, result, rounded, why, source } = one;
  const cell = workbook.slip.value.address;
  return html`<li>
    <p>
      <code>${formula}</code
      >${cells.map(({ range, holds }) => html` ${words.reference.withIn(holds, range)}`)}
      ${rounded ? '≈' : '='} <b>${result}</b>
      <span>${why}${source === undefined ? '' : ` (${sources[source].title})`}</span>
    </p>
    ${
      workbook.page.value === 'book'
        ? html`<button
            class="button"
            aria-label=${words.reference.putOneInto(alone, cell)}
            @click=${() => {
              close();
              const taken = workbook.enter(alone, 'stay');
              if (taken !== true) workbook.say(taken);
            }}
          >
            ${words.reference.putInto} ${cell}
          </button>`
        : ''
    }
  </li>`;
}

/** Putting an example into a cell that holds something takes its place. */
function held(workbook: Workbook) {
  const { text } = workbook.entry.value;
  if (workbook.page.value !== 'book' || text === '') return '';
  return html`<p class="faint">
    ${workbook.slip.value.address} ${words.reference.holds} <code>${text}</code>.
    ${words.reference.takesItsPlace}
  </p>`;
}

function plain({ plain: form, equation: text }: FunctionPage) {
  if (!form.expands) return html`<p>${words.reference.noPlain} ${form.reason}</p>`;
  return html`<p><code class="expansion">=${text}</code></p>
    <p class="faint">${words.reference.plainHelp}</p>`;
}
