import { html } from 'lit-html';
import type { Settings } from '../../book/types.ts';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

type Choices<Key extends keyof Settings> = readonly (readonly [Settings[Key], string])[];

/** What holds for the whole book. Each change shows at once; no number changes, only how it is said. */
export function settings(workbook: Workbook, _shell: Shell): void {
  const set = (part: Partial<Settings>) => workbook.run(verbs.settings, part);
  const number = (
    key: 'domeConstant' | 'flatConstant' | 'reflectedConstant' | 'mainsVolts' | 'continuousShare',
    label: string,
    help = '',
  ) =>
    html`<label class="field"
      ><span>${label}</span
      ><input
        class="input"
        inputmode="decimal"
        .value=${String(workbook.settings.value[key])}
        @change=${(event: Event) => {
          const input = event.currentTarget as HTMLInputElement;
          const value = Number(input.value.replace(',', '.'));
          if (!(value > 0) || !set({ [key]: value })) {
            input.value = String(workbook.settings.value[key]);
            workbook.say(`${label} is a number above 0.`);
          }
        }}
      />${help ? html`<small>${help}</small>` : ''}</label
    >`;
  const pick = <
    Key extends 'decimal' | 'illuminance' | 'length' | 'shutter' | 'fNumber' | 'receptor' | 'page',
  >(
    key: Key,
    label: string,
    choices: Choices<Key>,
  ) =>
    html`<label class="field"
      ><span>${label}</span
      ><select
        class="input"
        @change=${(event: Event) =>
          set({ [key]: (event.currentTarget as HTMLSelectElement).value })}
      >
        ${choices.map(
          ([value, words]) =>
            html`<option value=${value} ?selected=${workbook.settings.value[key] === value}>
              ${words}
            </option>`,
        )}
      </select></label
    >`;
  openDialogBox(
    { title: 'Settings of the book', className: 'wide-box' },
    () => html`
      <div class="box-body">
        <h3>how numbers are written</h3>
        <div class="pair">
          ${pick('decimal', 'Decimal sign', [
            ['.', 'point: 0.5'],
            [',', 'comma: 0,5'],
          ])}
          ${pick('illuminance', 'Light levels', [
            ['lx', 'lux, cd/m²'],
            ['fc', 'footcandles, footlamberts'],
          ])}
          ${pick('length', 'Distances', [
            ['m', 'metres'],
            ['ft', 'feet and inches'],
          ])}
          ${pick('shutter', 'Shutter', [
            ['time', 'time'],
            ['angle', 'angle'],
          ])}
          ${pick('fNumber', 'f-numbers', [
            ['thirds', 'marks and thirds'],
            ['halves', 'marks and halves'],
            ['tenths', 'whole stops and tenths'],
            ['decimals', 'decimals'],
          ])}
          ${pick(
            'page',
            'Paper',
            (['A4', 'A3', 'Letter', 'Legal', 'Tabloid'] as const).map(
              (size) => [size, size] as const,
            ),
          )}
        </div>
        <h3>meter</h3>
        <div class="pair">
          ${pick('receptor', 'Readings that do not say', [
            ['dome', 'dome'],
            ['flat', 'flat'],
          ])}
          ${number('domeConstant', 'Dome, constant C', 'ISO 2720: 320 to 540')}
          ${number('flatConstant', 'Flat, constant C', 'ISO 2720: 240 to 400')}
          ${number('reflectedConstant', 'Spot, constant K', 'ISO 2720: 10.6 to 13.4')}
        </div>
        <h3>power</h3>
        <div class="pair">
          <label class="field"
            ><span>Mains frequency</span
            ><select
              class="input"
              @change=${(event: Event) =>
                set({ mainsHertz: Number((event.currentTarget as HTMLSelectElement).value) })}
            >
              ${[50, 60].map(
                (hertz) =>
                  html`<option
                    value=${hertz}
                    ?selected=${workbook.settings.value.mainsHertz === hertz}
                  >
                    ${hertz} Hz
                  </option>`,
              )}
            </select></label
          >
          ${number('mainsVolts', 'Mains voltage')}
          ${number('continuousShare', 'Share of a breaker for hours', 'A local rule, 0.8 in many places')}
        </div>
      </div>
    `,
  );
}
