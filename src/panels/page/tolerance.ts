import { html } from 'lit-html';
import { readAs } from '../../../functions/quantities/read.ts';
import { writingSettings } from '../../book/settings.ts';
import { placeOnOpen } from '../kit/popup.ts';
import { written } from '../kit/written.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

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

  const set = (stops: number | null) => {
    document.getElementById('tolerance-menu')?.hidePopover();
    workbook.run(verbs.tolerance, { sheet, tolerance: stops });
  };
  return html`
    <button class="tolerance" popovertarget="tolerance-menu" aria-haspopup="dialog">
      ${words.page.toleranceNow} ${written(stopsInWords(tolerance))} ${words.page.toleranceStop}
    </button>
    <div
      id="tolerance-menu"
      class="popup tolerance-menu"
      popover
      role="dialog"
      aria-label=${words.page.tolerance}
      @toggle=${placeOnOpen}
    >
      <p>${words.page.toleranceHelp}</p>
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
          aria-label=${words.page.toleranceOther}
          placeholder=${words.page.stops}
          inputmode="decimal"
          @change=${(event: Event) => {
            const text = (event.currentTarget as HTMLInputElement).value;
            const reading = readAs('stops', text, writingSettings(workbook.settings.value));
            if (reading.ok && reading.value > 0 && reading.value <= 10) set(reading.value);
            else workbook.say(words.page.toleranceWrong);
          }}
        />
      </div>
      ${
        ownTolerance
          ? html`<button class="link" @click=${() => set(null)}>
              ${words.page.useBookTolerance}
            </button>`
          : html`<p class="faint">${words.page.asBook}</p>`
      }
    </div>
  `;
}
