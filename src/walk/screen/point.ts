import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Photo, Receptor } from '../../book/types.ts';
import { photoRow } from '../../panels/kit/photo.ts';
import type { Workbook } from '../../panels/workbook.ts';
import { segments } from '../../panels/kit/segments.ts';
import { shape } from '../../panels/kit/shape.ts';
import { shown, written } from '../../panels/kit/written.ts';
import { valueInList, verdictOn } from '../standing.ts';
import { beside } from './list.ts';
import { scale } from './scale.ts';
import type { Scene } from './scene.ts';
import { words } from '../../words/words.ts';

export interface PointHands {
  draft: string | null;
  problem: string;
  type(text: string): void;
  meter(receptor: Receptor): void;
  mode(quantity: QuantityName): void;
  drop(photo: Photo): void;
}

/** One point: what it is called, what is wanted there, what was read and how that stands. */
export function pointNow(scene: Scene, hands: PointHands, workbook: Workbook) {
  return html`
    <h1>${scene.reading.label}</h1>
    ${about(scene)} ${chips(scene, hands)} ${display(scene, hands)} ${standing(scene, hands)}
    ${photoRow(workbook, scene.photos, (photo) => hands.drop(photo))} ${before(scene)}
  `;
}

function about({ standing: { wanted }, reading, isFirstRound, note, taken }: Scene) {
  const caption = beside(reading);
  return html`<p class="wanted">
      ${isFirstRound ? (caption ? html`<span>${caption}</span>` : '') : html`<b>${caption}</b>`}
      ${wanted.map((part, at) => html`<b>${written(at === 0 ? words.walk.wantedGoal(part) : part)}</b>`)}
    </p>
    ${note ? html`<p class="note-now">${note}</p>` : ''}
    ${taken ? html`<p class="note-now faint">${words.walk.takenAt(taken.time, taken.meter ?? '')}</p>` : ''}`;
}

/** More than these would not be looked at. */
const lookedBackAt = 3;

/** The readings just before this one, the last of them lowest. */
function before({ look, pass, index }: Scene) {
  const last = pass.readings.slice(Math.max(0, index - lookedBackAt), index);
  return html`<ol class="before">
    ${last.map((reading) => {
      const said = verdictOn(look, reading);
      const mark = look.engine.valueOf(reading.spot) === null ? 'waits' : said?.shape;
      return html`<li>
        <span>${mark ? shape(mark) : ''}</span
        ><span>${[reading.label, beside(reading)].filter(Boolean).join(', ')}</span
        ><span>${written(valueInList(look, reading))}</span>
      </li>`;
    })}
  </ol>`;
}

const modeWords: Partial<Record<QuantityName, { label: string; spoken: string }>> = {
  fNumber: { label: 'f', spoken: words.walk.fNumber },
  illuminance: { label: 'lx', spoken: words.walk.illuminance },
  luminance: { label: 'cd/m²', spoken: words.walk.luminance },
  ev: { label: 'EV', spoken: words.walk.exposureValue },
};

function chips(scene: Scene, hands: PointHands) {
  const { meter, choices, pad, look } = scene;
  const { illuminance, luminance } = look.writing;
  const label = (quantity: QuantityName) =>
    (({ illuminance, luminance }) as Partial<Record<QuantityName, string>>)[quantity] ??
    modeWords[quantity]?.label ??
    quantity;
  if (!meter && choices.length < 2) return '';
  return html`<div class="how">
    ${meter?.chosen ? receptors(meter.says as Receptor, hands) : meter ? html`<span>${meter.says}</span>` : ''}
    ${
      choices.length > 1
        ? segments(
            'walk-mode',
            words.walk.meterSays,
            choices.map((value) => ({
              value,
              label: label(value),
              spoken: modeWords[value]?.spoken ?? value,
            })),
            pad.quantity ?? 'fNumber',
            (value) => hands.mode(value),
          )
        : ''
    }
  </div>`;
}

function receptors(now: Receptor, { meter }: PointHands) {
  return segments(
    'walk-receptor',
    words.walk.meteredWith,
    [
      { value: 'dome', label: words.walk.dome },
      { value: 'flat', label: words.walk.flat },
    ],
    now,
    meter,
  );
}

/** What is seen is set large, with its fraction; what takes the typing lies over it, unseen. */
function display({ reading, standing: { value }, pad }: Scene, hands: PointHands) {
  const { draft, problem } = hands;
  const blank = draft === null ? value.text === '' : draft === '';
  const empty = pad.quantity === 'fNumber' ? 'f/–' : `– ${pad.unit}`;
  return html`<div class="display ${draft === null ? '' : 'typing'} ${blank ? 'blank' : ''}">
    <span aria-hidden="true" class="figure"
      >${blank ? empty : draft === null ? shown(value) : written(draft)}</span
    >
    <input
      class="entry-now"
      inputmode="none"
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      aria-label="${reading.label}, ${reading.caption || words.walk.reading}"
      aria-invalid=${String(problem !== '')}
      aria-describedby="walk-problem"
      .value=${live(draft ?? '')}
      @input=${(event: Event) => hands.type((event.currentTarget as HTMLInputElement).value)}
    />
  </div>`;
}

function standing({ standing: now }: Scene, { problem, draft }: PointHands) {
  const { verdict, also, closes, off, tolerance, value } = now;
  const stale = draft !== null || value.text === '';
  return html`<p id="walk-problem" class="problem" role="alert">${problem}</p>
    <div class="came ${stale ? 'stale' : ''}">
      ${
        stale || !verdict
          ? ''
          : html`<p class="verdict ${verdict.shape ?? ''}">
              ${verdict.shape ? shape(verdict.shape) : ''}<span>${written(verdict.words)}</span>
            </p>`
      }
      ${
        stale || !also
          ? ''
          : html`<p class="also ${also.shape ?? ''}">
              ${also.shape ? shape(also.shape) : ''}<span>${written(also.words)}</span>
            </p>`
      }
      ${stale || closes === '' ? '' : html`<p class="closes">${written(closes)}</p>`}
      ${stale || off === undefined ? '' : scale(off, tolerance)}
    </div>`;
}
