import { html } from 'lit-html';
import { Camera, ChevronLeft, EyeOff, List, MoonStar, StickyNote, Undo2, X } from 'lucide-static';
import { icon } from '../../panels/kit/icon.ts';
import { notice } from '../../panels/notice/notice.ts';
import type { Workbook } from '../../panels/workbook.ts';
import { keypad } from './keypad.ts';
import { keyOf, pointList, type ListHands } from './list.ts';
import { pointNow, type PointHands } from './point.ts';
import type { Scene } from './scene.ts';
import { words } from '../../words/words.ts';

export type Panel = 'point' | 'list' | 'note';

export interface WalkHandles extends ListHands, PointHands {
  readonly panel: Panel;
  readonly metering: boolean;
  /** What a screen reader is told of the point or of what was just kept. */
  readonly told: string;
  readonly undoes: string | undefined;
  leave(): void;
  show(panel: Panel): void;
  dim(): void;
  undo(): void;
  redo(): void;
  unreadable(): void;
  note(text: string): void;
  photo(file: File): void;
  back(): void;
  onward(): void;
  main(): void;
}

/** The whole screen of a walk. What the thumb needs stands at the bottom. */
export function walkView(scene: Scene, hands: WalkHandles, workbook: Workbook) {
  const { panel } = hands;
  return html`
    <header class="walk-head">
      <button
        class="glyph"
        aria-label=${words.walk.leave}
        title=${words.walk.leave}
        @click=${hands.leave}
      >
        ${icon(X)}
      </button>
      <p class="walk-title">${words.walk.heading(scene.title)}</p>
      <button class="count" @click=${() => hands.show(panel === 'list' ? 'point' : 'list')}>
        ${count(scene, hands)}
      </button>
      <button
        class="glyph"
        aria-label=${words.walk.dim}
        title=${words.walk.dim}
        aria-pressed=${String(hands.metering)}
        @click=${hands.dim}
      >
        ${icon(MoonStar)}
      </button>
    </header>
    ${progress(scene)}
    <div class="walk-notice">${notice(workbook)}</div>
    <section class="points" aria-label=${words.walk.points}>${pointList(scene, hands)}</section>
    <section class="now" aria-label=${scene.reading.label}>
      ${pointNow(scene, hands, workbook)}
    </section>
    <section class="under-thumb" aria-label=${words.walk.entry}>
      ${
        panel === 'note'
          ? noteSheet(scene, hands)
          : html`${tools(hands)}
            ${keypad(scene.pad, hands.draft, scene.kept, (text) => hands.type(text))}
            ${onwards(scene, hands)}`
      }
    </section>
    <p class="unseen" role="status" aria-live="polite">${hands.told}</p>
  `;
}

function count(scene: Scene, { skipped }: WalkHandles) {
  const { pass, index, look } = scene;
  const gone = pass.readings.filter(
    (one) => skipped.has(keyOf(one)) && look.engine.valueOf(one.spot) === null,
  ).length;
  return html`<span class="unseen">${words.walk.allPointsLabel} </span
    >${words.walk.count(index + 1, pass.readings.length, gone)}`;
}

function progress({ pass, index, look }: Scene) {
  const taken = pass.readings.map(({ spot }) => look.engine.valueOf(spot) !== null);
  const read = taken.filter(Boolean).length;
  return html`<div
    class="progress"
    role="img"
    aria-label=${words.walk.taken(read, pass.readings.length)}
  >
    ${taken.map((isTaken, at) => html`<i class="${isTaken ? 'taken' : ''} ${at === index ? 'here' : ''}"></i>`)}
  </div>`;
}

/** On a phone this opens the camera. */
function camera({ photo }: WalkHandles) {
  const taken = (event: Event) => {
    const input = event.currentTarget as HTMLInputElement;
    const [file] = input.files ?? [];
    input.value = '';
    if (file) photo(file);
  };
  return html`<label class="tool"
    ><input
      class="unseen"
      type="file"
      accept="image/*"
      capture="environment"
      aria-label=${words.walk.photoOfPoint}
      @change=${taken}
    />${icon(Camera)}<span>${words.walk.photo}</span></label
  >`;
}

function tools(hands: WalkHandles) {
  const { show, unreadable, undo, undoes } = hands;
  const tool = (name: string, picture: string, run: () => void, label = name, off = false) =>
    html`<button class="tool" aria-label=${label} title=${label} ?disabled=${off} @click=${run}>
      ${icon(picture)}<span>${name}</span>
    </button>`;
  return html`<div class="tools">
    ${tool(words.walk.toolPoints, List, () => show('list'), words.walk.allPoints)}
    ${tool(words.walk.toolNote, StickyNote, () => show('note'), words.walk.noteOnPoint)}
    ${camera(hands)} ${tool(words.walk.notReadable, EyeOff, unreadable)}
    ${tool(words.walk.toolUndo, Undo2, undo, undoes ? words.walk.undo(undoes) : words.walk.nothingToUndo, !undoes)}
  </div>`;
}

function onwards(scene: Scene, hands: WalkHandles) {
  const { pass, index, pad, standing } = scene;
  const { draft } = hands;
  const next = pass.readings[index + 1];
  const dirty = draft !== null;
  const where = next ? nameOf(scene, next.label, next.caption) : words.walk.thenAllPoints;
  const onward = standing.value.text === '' ? words.walk.skipTo(where) : words.walk.next(where);
  const keep = draft === '' ? words.walk.takeAway : words.walk.keep(inFull(draft ?? '', pad.unit));
  return html`<div class="onwards" @pointerdown=${(event: Event) => event.preventDefault()}>
    <button
      class="back"
      aria-label=${words.walk.back}
      title=${words.walk.back}
      ?disabled=${index === 0}
      @click=${hands.back}
    >
      ${icon(ChevronLeft)}
    </button>
    <button class="main ${dirty ? 'keep' : ''}" @click=${hands.main}>
      <span>${dirty ? keep : onward}</span>
    </button>
  </div>`;
}

const inFull = (draft: string, unit: string) =>
  unit !== '' && /^[-+−\d.,/ ]+$/.test(draft) ? `${draft} ${unit}` : draft;

/** The next reading of the same point goes by what is read there. */
const nameOf = ({ reading }: Scene, label: string, caption: string) =>
  label === reading.label ? caption.toLowerCase() : label;

function noteSheet({ note }: Scene, hands: WalkHandles) {
  const keep = (event: Event) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    hands.note(form.querySelector('textarea')?.value ?? '');
  };
  return html`<form class="note-sheet" @submit=${keep}>
    <label class="field"
      ><span>${words.walk.noteOnPoint}</span
      ><textarea class="input" rows="3" .value=${note}></textarea>
    </label>
    <div class="onwards">
      <button class="back wide" type="button" @click=${() => hands.show('point')}>
        ${words.walk.cancel}
      </button>
      <button class="main"><span>${words.walk.keepNote}</span></button>
    </div>
  </form>`;
}
