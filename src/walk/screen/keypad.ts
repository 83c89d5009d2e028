import { html, nothing } from 'lit-html';
import { Delete } from 'lucide-static';
import { icon } from '../../panels/kit/icon.ts';
import { written } from '../../panels/kit/written.ts';
import { isLit, press, type Pad, type PadKey } from '../pad.ts';
import { words } from '../../words/words.ts';

/** The keys under the thumb. A press leaves the focus where it is, so that a keyboard goes on typing. */
export function keypad(pad: Pad, draft: string | null, kept: string, set: (text: string) => void) {
  const now = draft ?? kept;
  const spoken = (key: PadKey) => (key.does === 'mark' ? `f/${key.says}` : key.says);
  const draw = (key: PadKey) =>
    html`<button
      class="key ${key.does}-key ${'text' in key && key.text === '0' ? 'zero' : ''}"
      type="button"
      aria-label=${spoken(key)}
      aria-pressed=${key.does === 'mark' || key.does === 'part' || key.does === 'unit' ? String(isLit(now, key)) : nothing}
      @pointerdown=${(event: Event) => event.preventDefault()}
      @click=${() => set(press(draft ?? '', kept, key))}
    >
      ${face(key)}
    </button>`;
  return html`<div
    class="keypad ${pad.wheel ? 'wheel' : 'digits'}"
    role="group"
    aria-label=${pad.wheel ? words.walk.wholeStops : words.walk.digits}
  >
    ${pad.rows.map((row) => html`<div class="keys of-${Math.max(row.length, pad.columns)}">${row.map(draw)}</div>`)}
  </div>`;
}

function face(key: PadKey): unknown {
  if (key.does === 'erase') return icon(Delete);
  if (key.does === 'sign') return '±';
  return html`<span>${key.does === 'type' ? key.text : written(key.says)}</span>`;
}
