import { html } from 'lit-html';
import type { Settings } from '../../book/types.ts';
import { segments, type Choice } from '../kit/segments.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

type Switched = 'illuminance' | 'length' | 'fNumber' | 'shutter' | 'clock' | 'decimal';

interface Switch<Key extends Switched> {
  readonly title: string;
  /** For screen readers, which hear no layout. */
  readonly legend: string;
  readonly choices: readonly Choice<Settings[Key]>[];
}

const all: { readonly [Key in Switched]: Switch<Key> } = {
  illuminance: {
    title: words.bar.lightLevels,
    legend: words.bar.illuminanceIn,
    choices: [
      { value: 'lx', label: words.bar.lux },
      { value: 'fc', label: words.bar.fc, spoken: words.bar.footcandles },
    ],
  },
  length: {
    title: words.bar.distances,
    legend: words.bar.distancesIn,
    choices: [
      { value: 'm', label: words.bar.m, spoken: words.bar.metres },
      { value: 'ft', label: words.bar.ft, spoken: words.bar.feet },
    ],
  },
  fNumber: {
    title: words.bar.fNumbers,
    legend: words.bar.fNumbersIn,
    choices: [
      { value: 'thirds', label: words.bar.thirds },
      { value: 'halves', label: words.bar.halves },
      { value: 'tenths', label: words.bar.tenths },
      { value: 'decimals', label: words.bar.decimals },
    ],
  },
  shutter: {
    title: words.bar.shutter,
    legend: words.bar.shutterAs,
    choices: [
      { value: 'time', label: words.bar.time },
      { value: 'angle', label: words.bar.angle },
    ],
  },
  clock: {
    title: words.bar.clock,
    legend: words.bar.clockIn,
    choices: [
      { value: '24', label: '14:00', spoken: words.bar.clock24 },
      { value: '12', label: words.bar.clockLabel12, spoken: words.bar.clock12 },
    ],
  },
  decimal: {
    title: words.bar.decimalSign,
    legend: words.bar.decimalIs,
    choices: [
      { value: '.', label: '0.5', spoken: words.bar.point },
      { value: ',', label: '0,5', spoken: words.bar.comma },
    ],
  },
};

const order = ['illuminance', 'length', 'shutter', 'fNumber', 'clock', 'decimal'] as const;

function drawn<Key extends Switched>(
  key: Key,
  workbook: Workbook,
  where: string,
  choices: readonly Choice<Settings[Key]>[] = all[key].choices,
) {
  return segments(
    `${key} ${where}`,
    all[key].legend,
    choices,
    workbook.settings.value[key],
    (value) => workbook.run(verbs.settings, { [key]: value }),
  );
}

/** What is switched all day stands in the bar: of f-numbers thirds and tenths, and what is in force. */
export function switches(workbook: Workbook) {
  const { fNumber } = workbook.settings.value;
  const often = all.fNumber.choices.filter(
    ({ value }) => value === 'thirds' || value === 'tenths' || value === fNumber,
  );
  return [
    drawn('illuminance', workbook, 'in the bar'),
    drawn('length', workbook, 'in the bar'),
    drawn('fNumber', workbook, 'in the bar', often),
  ];
}

/** Every way of writing that people argue about. No number changes, only how it is said. */
export function allSwitches(workbook: Workbook, shell: Shell) {
  return html`<dl>
      ${order.map(
        (key) =>
          html`<div>
            <dt aria-hidden="true">${all[key].title}</dt>
            <dd>${drawn(key, workbook, 'among the units')}</dd>
          </div>`,
      )}
    </dl>
    <button class="link" @click=${() => shell.open('settings')}>${words.bar.allSettings}</button>`;
}
