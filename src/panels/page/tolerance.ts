import { html } from 'lit-html';
import { readAs } from '../../../functions/quantities/read.ts';
import { writingSettings } from '../../book/settings.ts';
import { placeOnOpen } from '../kit/popup.ts';
import { written } from '../kit/written.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

/** What people agree on: a tenth for matching, a third for most work, a whole stop for a plan. */
const usual = [
  { stops: 0.1, words: '1/10' },
  { stops: 1 / 6, words: '1/6' },
  { stops: 0.25, words: '1/4' },
  { stops: 1 / 3, words: '1/3' },
  { stops: 0.5, words: '1/2' },
  { stops: 1, words: '1' },
] as const;

export function stopsInWords(stops: number): string {
  const known = usual.find((one) => Math.abs(one.stops - stops) < 1e-6);
  return known ? known.words : String(Number(stops.toFixed(3)));
}

/** The one place where a sheet's tolerance is seen and changed. */
export function toleranceMenu(workbook: Workbook) {
  const { tolerance, ownTolerance, sheet } = workbook.head.value;
  const words = stopsInWords(tolerance);
  const set = (stops: number | null) => {
    document.getElementById('tolerance-menu')?.hidePopover();
    workbook.run(verbs.tolerance, { sheet, tolerance: stops });
  };
  return html`
    <button class="tolerance" popovertarget="tolerance-menu" aria-haspopup="dialog">
      tolerance ${written(words)} stop
    </button>
    <div
      id="tolerance-menu"
      class="popup tolerance-menu"
      popover
      role="dialog"
      aria-label="Tolerance of this sheet"
      @toggle=${placeOnOpen}
    >
      <p>A reading agrees when it is no further off than this, either way.</p>
      <div class="chips">
        ${usual.map(
          (one) =>
            html`<button
              class="chip"
              aria-pressed=${Math.abs(one.stops - tolerance) < 1e-6}
              @click=${() => set(one.stops)}
            >
              <span>${written(one.words)}</span>
            </button>`,
        )}
        <input
          class="input"
          aria-label="Another tolerance, in stops"
          placeholder="stops"
          inputmode="decimal"
          @change=${(event: Event) => {
            const text = (event.currentTarget as HTMLInputElement).value;
            const reading = readAs('stops', text, writingSettings(workbook.settings.value));
            if (reading.ok && reading.value > 0 && reading.value <= 10) set(reading.value);
            else workbook.say('A tolerance is a number of stops above 0, up to 10: 1/4 or 0.2.');
          }}
        />
      </div>
      ${
        ownTolerance
          ? html`<button class="link" @click=${() => set(null)}>Use the book’s tolerance</button>`
          : html`<p class="faint">As the book has it. A choice here is for this sheet alone.</p>`
      }
    </div>
  `;
}
