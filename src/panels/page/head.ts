import { html } from 'lit-html';
import { shape } from '../kit/shape.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Point, Shape } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { toleranceMenu } from './tolerance.ts';
import { words } from '../../words/words.ts';

/** More points than this would crowd the strip out of the head. */
const stripHolds = 48;

/** The head of the page: what the sheet is for, and how the light stands against the plan. */
export function head(workbook: Workbook, shell: Shell) {
  const { title, purpose, points, agreement, sheet, filtered, isHeld } = workbook.head.value;
  return html`
    <div class="about">
      <h1>
        <button title=${words.page.describe} @click=${() => shell.open('sheet', sheet)}>
          ${title}
        </button>
      </h1>
      ${purpose ? html`<p>${purpose}</p>` : ''} ${filtered ? filteredLine(workbook, filtered) : ''}
    </div>
    <div class="sum">
      ${agreement ? summary(agreement) : ''} ${strip(points, workbook)}
      ${isHeld ? toleranceMenu(workbook) : ''}
    </div>
    ${walkButton(workbook, shell)} ${exerciseButton(workbook)}
  `;
}

/** Rows that are out of view must be said, or their light is missed. */
const filteredLine = (workbook: Workbook, filtered: string) =>
  html`<p class="filtered">
    <span>${filtered}</span>
    <button class="link" @click=${() => workbook.run(verbs.showAllRows)}>
      ${words.filter.showAll}
    </button>
  </p>`;

/** Only where there are readings to take. On a phone it stands in the bar. */
function walkButton(workbook: Workbook, shell: Shell) {
  const keys = workbook.commands.value.find(({ id }) => id === verbs.walk)?.keys[0];
  return workbook.foot.value.roles.includes('reading')
    ? html`<button
        class="button lit walk-start"
        title=${words.page.walkThrough(keys ? shell.keys(keys) : '')}
        @click=${() => workbook.run(verbs.walk)}
      >
        ${words.page.walk}
      </button>`
    : '';
}

/** Only where there is something to answer. */
const exerciseButton = (workbook: Workbook) =>
  workbook.foot.value.roles.includes('answer')
    ? html`<button class="button lit" @click=${() => workbook.run(verbs.exercise)}>
        ${words.page.exercise}
      </button>`
    : '';

/** "5 of 7 points agree" is what one looks for; how the rest stands comes after it. */
function summary(agreement: string) {
  const [agree, ...rest] = agreement.split(', ');
  return html`<p><b>${agree}</b>${rest.map((said) => `, ${said}`)}</p>`;
}

const spoken: Readonly<Record<Shape, string>> = {
  over: words.page.over,
  under: words.page.under,
  agrees: words.page.agrees,
  waits: words.page.waits,
  clips: words.page.clips,
};

/** Every verdict as its shape, in the sheet's order: the whole set at a glance, each a way to its cell. */
function strip(points: readonly Point[], workbook: Workbook) {
  if (points.length === 0 || points.length > stripHolds) return '';
  return html`<div class="strip" role="group" aria-label=${words.page.verdicts}>
    ${points.map(
      (point) =>
        html`<button
          title="${point.label}: ${point.words}"
          aria-label="${point.label}: ${point.words || spoken[point.shape]}"
          @click=${() => workbook.jump(point.target)}
        >
          ${shape(point.shape)}
        </button>`,
    )}
  </div>`;
}
