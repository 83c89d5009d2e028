import { html } from 'lit-html';
import type { Settings } from '../../book/types.ts';
import { segments, type Choice } from '../kit/segments.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

type Switched = 'illuminance' | 'length' | 'fNumber' | 'shutter' | 'clock' | 'decimal';

interface Switch<Key extends Switched> {
  readonly title: string;
  /** For screen readers, which hear no layout. */
  readonly legend: string;
  readonly choices: readonly Choice<Settings[Key]>[];
}

const all: { readonly [Key in Switched]: Switch<Key> } = {
  illuminance: {
    title: 'Light levels',
    legend: 'Illuminance is shown in',
    choices: [
      { value: 'lx', label: 'lux' },
      { value: 'fc', label: 'fc', spoken: 'footcandles' },
    ],
  },
  length: {
    title: 'Distances',
    legend: 'Distances are shown in',
    choices: [
      { value: 'm', label: 'm', spoken: 'metres' },
      { value: 'ft', label: 'ft', spoken: 'feet' },
    ],
  },
  fNumber: {
    title: 'f-numbers',
    legend: 'f-numbers are shown in',
    choices: [
      { value: 'thirds', label: 'thirds' },
      { value: 'halves', label: 'halves' },
      { value: 'tenths', label: 'tenths' },
      { value: 'decimals', label: 'decimals' },
    ],
  },
  shutter: {
    title: 'Shutter',
    legend: 'The shutter is shown as',
    choices: [
      { value: 'time', label: 'time' },
      { value: 'angle', label: 'angle' },
    ],
  },
  clock: {
    title: 'Clock',
    legend: 'Times of day are shown in',
    choices: [
      { value: '24', label: '14:00', spoken: '24 hours' },
      { value: '12', label: '2:00 pm', spoken: '12 hours' },
    ],
  },
  decimal: {
    title: 'Decimal sign',
    legend: 'The decimal sign is a',
    choices: [
      { value: '.', label: '0.5', spoken: 'point' },
      { value: ',', label: '0,5', spoken: 'comma' },
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
    <button class="link" @click=${() => shell.open('settings')}>All settings of the book</button>`;
}
