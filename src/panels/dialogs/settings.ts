import { html } from 'lit-html';
import { writingSettings } from '../../book/settings.ts';
import type { Settings } from '../../book/types.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal } from '../kit/signals.ts';
import { segments, type Choice } from '../kit/segments.ts';
import type { Shell } from '../frame.ts';
import type { Theme } from '../screen.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { picks, written, type Picked, type Written } from './settings-fields.ts';
import { words } from '../../words/words.ts';

type Field = Picked | keyof typeof written;

const sections: readonly (readonly [heading: string, fields: readonly Field[]])[] = [
  [words.settings.writing, ['illuminance', 'length', 'shutter', 'fNumber', 'clock', 'decimal']],
  [
    words.settings.meter,
    ['receptor', 'domeConstant', 'flatConstant', 'reflectedConstant', 'tolerance'],
  ],
  [words.settings.power, ['mainsVolts', 'mainsHertz', 'continuousShare', 'currency']],
  [words.settings.place, ['zone', 'page']],
];

const isPicked = (field: Field): field is Picked => field in picks;

/** What holds for the whole book. Each change shows at once and is one step back. */
export function settings(workbook: Workbook, _shell: Shell): void {
  /** What was written and not taken: it stays in its field until it is put right. */
  const refused = signal<ReadonlySet<Field>>(new Set());
  const field = (name: Field) =>
    isPicked(name)
      ? picked(name, workbook)
      : typed(name, written[name], workbook, refused.value.has(name), (isRefused) => {
          const now = new Set(refused.value);
          if (isRefused) now.add(name);
          else now.delete(name);
          refused.value = now;
        });
  openDialogBox(
    { title: words.settings.title, className: 'wide-box' },
    () =>
      html`<div class="box-body settings">
        ${sections.map(
          ([heading, fields]) =>
            html`<section aria-label=${heading}>
              <h3>${heading}</h3>
              <div class="pair">${fields.map(field)}</div>
            </section>`,
        )}
        <section aria-label=${words.settings.screen}>
          <h3>${words.settings.screen}</h3>
          ${segments('theme', words.settings.theme, themes, themeNow(), (theme) =>
            workbook.run(`view.theme.${theme}`),
          )}
          ${segments('keys', words.settings.keys, keys, keysNow(), () =>
            workbook.run(verbs.readingsOnly),
          )}
        </section>
      </div>`,
  );
}

/** Not of the book: each screen has its own. */
const themes: readonly Choice<Theme>[] = [
  { value: 'system', label: words.settings.asSystem },
  { value: 'dark', label: words.settings.dark },
  { value: 'metering', label: words.settings.metering, spoken: words.settings.meteringSpoken },
  { value: 'light', label: words.settings.light },
];

/** Where Tab and Enter go. */
const keys: readonly Choice<'cells' | 'readings'>[] = [
  { value: 'cells', label: words.settings.keysCells },
  { value: 'readings', label: words.settings.keysReadings },
];

const keysNow = () =>
  document.documentElement.hasAttribute('data-readings-only') ? 'readings' : 'cells';

function themeNow(): Theme {
  const { theme } = document.documentElement.dataset;
  return themes.find(({ value }) => value === theme)?.value ?? 'system';
}

function picked(name: Picked, workbook: Workbook) {
  const { label, help } = picks[name];
  const choices: readonly (readonly [Settings[Picked], string])[] = picks[name].choices;
  const now = workbook.settings.value[name];
  // A book from elsewhere may be set to what is not offered here.
  const offered = choices.some(([value]) => value === now)
    ? choices
    : [...choices, [now, String(now)] as const];
  const choose = (event: Event) => {
    const chosen = offered[(event.currentTarget as HTMLSelectElement).selectedIndex]?.[0];
    if (chosen !== undefined) workbook.run(verbs.settings, { [name]: chosen });
  };
  return html`<div class="field">
    <label for="setting-${name}">${label}</label>
    <select
      class="input"
      id="setting-${name}"
      aria-describedby="setting-${name}-help"
      @change=${choose}
    >
      ${offered.map(([value, said]) => html`<option .selected=${value === now}>${said}</option>`)}
    </select>
    <small id="setting-${name}-help">${help}</small>
  </div>`;
}

function typed(
  name: keyof typeof written,
  { label, help, fault, show, read }: Written,
  workbook: Workbook,
  isRefused: boolean,
  refuse: (isRefused: boolean) => void,
) {
  const now = workbook.settings.value;
  const writing = writingSettings(now);
  const shown = show(now, writing);
  const take = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const part = input.value === shown ? {} : read(input.value, writing);
    refuse(!part);
    if (!part) return;
    workbook.run(verbs.settings, part);
    const kept = workbook.settings.value;
    input.value = show(kept, writingSettings(kept));
  };
  return html`<div class="field">
    <label for="setting-${name}">${label}</label>
    <input
      class="input"
      id="setting-${name}"
      inputmode=${name === 'zone' || name === 'currency' ? 'text' : 'decimal'}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${isRefused}
      aria-describedby="setting-${name}-help"
      .value=${shown}
      @change=${take}
    />
    <small id="setting-${name}-help" class=${isRefused ? 'wrong' : ''}
      >${isRefused ? fault : help}</small
    >
  </div>`;
}
