import { html } from 'lit-html';
import { shape } from '../kit/shape.ts';
import type { Shell } from '../frame.ts';
import type { Point, Shape, Workbook } from '../workbook.ts';
import { toleranceMenu } from './tolerance.ts';

/** More points than this would crowd the strip out of the head. */
const stripHolds = 48;

/** The head of the page: what the sheet is for, and how the light stands against the plan. */
export function head(workbook: Workbook, shell: Shell) {
  const { title, purpose, points, sheet } = workbook.head.value;
  return html`
    <div class="about">
      <h1>
        <button title="Title, purpose, phase" @click=${() => shell.open('sheet', sheet)}>
          ${title}
        </button>
      </h1>
      ${purpose ? html`<p>${purpose}</p>` : ''}
    </div>
    <div class="sum">
      ${points.length > 0 ? summary(points) : ''} ${strip(points, workbook)}
      ${toleranceMenu(workbook)}
    </div>
  `;
}

const isOff = ({ shape: kind }: Point) => kind === 'over' || kind === 'under' || kind === 'clips';

function summary(points: readonly Point[]) {
  const count = (test: (point: Point) => boolean) => points.filter(test).length;
  const off = count(isOff);
  const waits = count((point) => point.shape === 'waits');
  const rest = [off > 0 && `${off} off`, waits > 0 && `${waits} ${waits === 1 ? 'waits' : 'wait'}`];
  return html`<p>
    <b>${count((point) => point.shape === 'agrees')} of ${points.length} agree</b>${rest
      .filter(Boolean)
      .map((words) => html` · ${words}`)}
  </p>`;
}

const spoken: Readonly<Record<Shape, string>> = {
  over: 'over',
  under: 'under',
  agrees: 'agrees',
  waits: 'waits',
  clips: 'clips',
};

/** Every verdict as its shape, in the sheet's order: the whole set at a glance, each a way to its cell. */
function strip(points: readonly Point[], workbook: Workbook) {
  if (points.length === 0 || points.length > stripHolds) return '';
  return html`<div class="strip" role="group" aria-label="Verdicts, in the sheet’s order">
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
