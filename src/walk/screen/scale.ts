import { html, svg } from 'lit-html';
import { stopsInWords } from '../../../functions/stops/verdictWords.ts';
import { words } from '../../words/words.ts';

/** Stops to either side; what is farther off stands at the end with an arrow. */
const reach = 2;
const width = 320;
const margin = 22;
const line = 34;

const at = (stops: number) =>
  width / 2 + (Math.max(-reach, Math.min(reach, stops)) / reach) * (width / 2 - margin);

/** How far the reading is from what is wanted, in stops, and how far it may be. */
export function scale(off: number, tolerance: number) {
  const ticks = Array.from({ length: reach * 6 + 1 }, (_, third) => third / 3 - reach);
  const isWhole = (stops: number) => Math.abs(stops - Math.round(stops)) < 0.01;
  const beyond = Math.abs(off) > reach;
  const here = at(off);
  return html`<svg
    class="off-scale"
    viewBox="0 0 ${width} 60"
    role="img"
    aria-label=${words.walk.offScale(stopsInWords(off), off < 0)}
  >
    ${svg`<rect class="agrees-band" x=${at(-tolerance)} y=${line - 7} width=${at(tolerance) - at(-tolerance)} height="14" rx="3" />
    <path class="axis" d="M${at(-reach)} ${line}H${at(reach)}" />
    ${ticks.map(
      (stops) => svg`<path class="tick" d="M${at(stops)} ${line}v${isWhole(stops) ? 8 : 4}" />`,
    )}
    ${[-2, -1, 1, 2].map(
      (stops) =>
        svg`<text class="number" x=${at(stops)} y=${line + 22}>${stops > 0 ? '+' : '−'}${Math.abs(stops)}</text>`,
    )}
    <text class="number" x=${at(0)} y=${line + 22}>${words.walk.wanted}</text>
    <circle class="wanted" cx=${at(0)} cy=${line} r="6" />
    <path class="stem" d="M${here} ${line}V17" />
    ${
      beyond
        ? svg`<path class="here" d="M${here} ${line - 6}v12l${off < 0 ? -9 : 9} -6Z" />`
        : svg`<circle class="here" cx=${here} cy=${line} r="5.5" />`
    }
    <text class="label" x=${here} y="12">${words.walk.here}</text>`}
  </svg>`;
}
