import { html } from 'lit-html';
import { fieldsOf } from '../../panels/kit/dialog.ts';
import { segments } from '../../panels/kit/segments.ts';
import { shape } from '../../panels/kit/shape.ts';
import { written } from '../../panels/kit/written.ts';
import type { WalkReading } from '../order.ts';
import { valueInList, verdictOn } from '../standing.ts';
import type { Scene } from './scene.ts';
import { words } from '../../words/words.ts';

export interface ListHands {
  go(reading: WalkReading): void;
  round(name: string): void;
  add(name: string): void;
  useMeter(name: string): void;
  /** The name of the meter that new readings remember; empty for none. */
  readonly meterInUse: string;
  readonly meters: readonly string[];
  readonly skipped: ReadonlySet<string>;
}

/** All points of the round with how far off each is: the way to any of them, and to a new one. */
export function pointList(scene: Scene, hands: ListHands) {
  return html`
    ${meterNow(hands)} ${scene.passes.length > 1 ? rounds(scene, hands) : ''}
    <ol class="readings">
      ${scene.pass.readings.map((reading) => line(scene, reading, hands))}
    </ol>
    <form
      class="add-point"
      @submit=${(event: Event) => {
        const name = (fieldsOf(event).get('name') ?? '').trim();
        if (name === '') return;
        (event.currentTarget as HTMLFormElement).reset();
        hands.add(name);
      }}
    >
      <input
        class="input"
        name="name"
        autocomplete="off"
        aria-label=${words.walk.nameOfNew}
        placeholder=${words.walk.another}
      />
      <button class="button">${words.walk.addPoint}</button>
    </form>
  `;
}

/** Said once: every reading of the walk remembers it. */
function meterNow({ meterInUse, meters, useMeter }: ListHands) {
  return html`<label class="meter-in-use"
    ><span>${words.walk.meterInUse}</span
    ><input
      class="input"
      autocomplete="off"
      maxlength="60"
      list="walk-meters"
      placeholder=${words.walk.meterName}
      .value=${meterInUse}
      @change=${(event: Event) => useMeter((event.currentTarget as HTMLInputElement).value)}
    /><datalist id="walk-meters">
      ${meters.map((one) => html`<option value=${one}></option>`)}
    </datalist>
  </label>`;
}

function rounds({ passes, pass }: Scene, { round }: ListHands) {
  return segments(
    'walk-round',
    words.walk.round,
    passes.map(({ name }) => ({ value: name, label: name || words.walk.readings })),
    pass.name,
    round,
  );
}

/** What is read at a point beside its own reading: "tint". */
export const beside = ({ caption }: WalkReading) =>
  caption.toLowerCase() === 'reading' ? '' : caption.toLowerCase();

export const keyOf = ({ place }: WalkReading) => `${place.row} ${place.column}`;

function line(scene: Scene, reading: WalkReading, { go, skipped }: ListHands) {
  const { look, isFirstRound } = scene;
  const blank = look.engine.valueOf(reading.spot) === null;
  const said = !blank ? verdictOn(look, reading) : undefined;
  const waits = skipped.has(keyOf(reading)) ? words.walk.skipped : words.walk.noReading;
  const out = blank ? waits : (said?.words ?? '');
  const mark = blank ? 'waits' : said?.shape;
  return html`<li>
    <button
      class=${mark ?? ''}
      aria-current=${reading === scene.reading ? 'step' : 'false'}
      @click=${() => go(reading)}
    >
      <span class="mark-of">${mark ? shape(mark) : ''}</span>
      <span class="point-of"
        >${reading.label}${isFirstRound ? html` <small>${beside(reading)}</small>` : ''}</span
      >
      <b>${blank ? '' : written(valueInList(look, reading))}</b>
      ${out === '' ? '' : html`<span class="words-of">${written(out)}</span>`}
    </button>
  </li>`;
}
