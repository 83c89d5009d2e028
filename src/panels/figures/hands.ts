import { html, svg } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { Hand } from '../../figures/figure.ts';
import type { Drawing } from '../../figures/kit/element.ts';
import { placeInWords, type Holding } from './hold.ts';
import { heldBack, stepOf, type At, type Step } from './place.ts';
import type { FigureView } from './seam.ts';
import { words } from '../../words/words.ts';

interface Parts {
  readonly figure: FigureView;
  readonly drawing: Drawing;
  readonly hands: readonly Hand[];
  readonly holding: Holding;
  readonly writing: WritingSettings;
  say(sentence: string): void;
}

/**
 * What lies over a drawing so that things in it can be taken: by finger and mouse, and by arrow keys
 * once they have the focus. It stays while the drawing under it is drawn anew.
 */
export function handsOver(parts: Parts) {
  const { figure, drawing, hands, writing } = parts;
  const { held, width, height } = drawing;
  if (!held || hands.length === 0) return '';
  const box = `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`;
  const known = new Map(hands.map((hand) => [hand.id, hand]));
  const spots = held.hands.flatMap(({ id, x, y }) => {
    const hand = known.get(id);
    return hand ? [{ id, x, y, hand }] : [];
  });
  const step = (name: Step) => placeText(stepOf(writing, name), writing);
  return html`<svg class="hands" viewBox=${box} role="group" aria-label=${words.figures.hands}>
      ${repeat(
        spots,
        ({ id }) => id,
        ({ x, y, hand }) => handle(hand, x, y, parts),
      )}
    </svg>
    <p class="hint" id="hands-${figure.id}">
      ${words.figures.handsHint(step('usual'), step('fine'), step('far'))}
    </p>`;
}

const placeText = (metres: number, { length }: WritingSettings): string =>
  length === 'm' ? `${Math.round(metres * 100)} cm` : `${Number((metres / 0.0254).toFixed(1))} in`;

const ways: Readonly<Record<string, At>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const stepBy = (event: MouseEvent | KeyboardEvent): Step =>
  event.shiftKey ? 'fine' : event.ctrlKey || event.metaKey ? 'far' : 'usual';

function handle(hand: Hand, x: number, y: number, parts: Parts) {
  const { figure, drawing, holding, writing, say } = parts;
  const at = holding.at(figure, hand);
  const refuse = () => {
    const reason = heldBack(hand);
    if (reason !== undefined) say(reason);
    return reason !== undefined && hand.cells.every(({ formula }) => formula !== undefined);
  };
  return svg`<g
    class="hand"
    data-hand=${hand.id}
    tabindex="0"
    role="slider"
    aria-label=${hand.name}
    aria-valuemin=${-1e6}
    aria-valuemax=${1e6}
    aria-valuenow=${at[0]}
    aria-valuetext=${placeInWords(hand, at, writing)}
    aria-describedby="hands-${figure.id}"
    transform="translate(${x.toFixed(2)} ${y.toFixed(2)})"
    @pointerdown=${(event: PointerEvent) => {
      if (event.button === 0 && !refuse()) drag(event, hand, drawing, parts);
    }}
    @keydown=${(event: KeyboardEvent) => {
      const way = ways[event.key];
      if (event.key === 'Escape' && holding.now.value) holding.drop();
      else if (!way) return;
      else if (event.repeat || !refuse()) {
        const step = stepBy(event);
        const size = stepOf(writing, step);
        const [across, up] = holding.at(figure, hand);
        holding.move(figure, hand, [across + way[0] * size, up + way[1] * size], step);
      }
      event.preventDefault();
      event.stopPropagation();
    }}
    @keyup=${(event: KeyboardEvent) => {
      if (ways[event.key]) holding.keep();
    }}
    @blur=${() => {
      holding.keep();
    }}
  ><title>${hand.name}</title><circle r="15"></circle></g>`;
}

/** From press to release; a frame of the screen at most draws once. */
function drag(event: PointerEvent, hand: Hand, drawing: Drawing, parts: Parts): void {
  const { figure, holding } = parts;
  const target = event.currentTarget as SVGGElement;
  const root = target.ownerSVGElement;
  const metre = drawing.held?.metre ?? 0;
  if (!root || metre === 0) return;
  const scale = (drawing.width / root.getBoundingClientRect().width) * (1 / metre);
  const start = { x: event.clientX, y: event.clientY, at: holding.at(figure, hand) };
  let last = event;
  let asked = 0;
  const follow = () => {
    asked = 0;
    const [across, up] = start.at;
    const to: At = [
      across + (last.clientX - start.x) * scale,
      up - (last.clientY - start.y) * scale,
    ];
    holding.move(figure, hand, to, last.shiftKey ? 'fine' : 'usual');
  };
  const ended = new AbortController();
  const { signal } = ended;
  const end = (keep: boolean) => {
    cancelAnimationFrame(asked);
    ended.abort();
    if (keep) {
      // What lies within a few pixels was a press and no move.
      if (last !== event) follow();
      holding.keep();
    } else holding.drop();
  };
  target.setPointerCapture(event.pointerId);
  target.focus();
  target.addEventListener(
    'pointermove',
    (moved) => {
      last = moved;
      asked ||= requestAnimationFrame(follow);
    },
    { signal },
  );
  target.addEventListener('pointerup', () => end(true), { signal });
  target.addEventListener('pointercancel', () => end(false), { signal });
  target.addEventListener(
    'keydown',
    (pressed) => {
      if (pressed.key === 'Escape') end(false);
    },
    { signal },
  );
  event.preventDefault();
}
