import { html } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { repeat } from 'lit-html/directives/repeat.js';
import { ChevronDown, ChevronUp, Ellipsis, Maximize2, Minimize2, Plus } from 'lucide-static';
import { pageTheme } from '../../figures/kit/theme.ts';
import { writingSettings } from '../../book/settings.ts';
import type { Made, Size, Undrawn } from '../../figures/figure.ts';
import type { Drawing } from '../../figures/kit/element.ts';
import type { Shell } from '../frame.ts';
import { broken } from '../kit/broken.ts';
import { icon } from '../kit/icon.ts';
import { mount } from '../kit/mount.ts';
import { signal } from '../kit/signals.ts';
import { written } from '../kit/written.ts';
import type { Workbook } from '../workbook.ts';
import { figureKey, openFigureMenu } from './menu.ts';
import { handsOver } from './hands.ts';
import { createHolding, type Holding } from './hold.ts';
import type { FigureView } from './seam.ts';
import { furtherSentences } from './sentences.ts';
import { setStand, stand } from './stand.ts';
import { svgOf } from './svg.ts';
import { unbroken } from './unbroken.ts';
import { words } from '../../words/words.ts';

/** Letters of figures against those of the page. */
const share = 0.875;
/** What is printed is drawn for paper: as wide as A4 upright allows, with letters of 8 points. */
const paper: Size = { width: 700, letters: 11 };

/** The figures of the sheet in view, under its grid. */
export function figuresPanel(host: HTMLElement, workbook: Workbook, shell: Shell): void {
  const size = signal<Size>({ width: 0, letters: 13 });
  const printing = signal(false);
  const writing = () => writingSettings(workbook.settings.value);
  const holding = createHolding(workbook, writing);
  const measure = () => {
    const list = host.querySelector('.figure-list');
    if (!list) return;
    const width = Math.floor(list.clientWidth);
    const letters = share * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const { value } = size;
    if (width > 0 && (width !== value.width || letters !== value.letters))
      size.value = { width, letters };
  };
  new ResizeObserver(measure).observe(host);
  addEventListener('beforeprint', () => (printing.value = true));
  addEventListener('afterprint', () => (printing.value = false));
  mount(host, () => {
    const { value: figures } = workbook.figures.shown;
    host.hidden = figures.length === 0;
    host.className = `figures ${stand().value}`;
    if (figures.length === 0) return '';
    requestAnimationFrame(measure);
    return view(figures, printing.value ? paper : size.value, workbook, shell, holding);
  });
}

function view(
  figures: readonly FigureView[],
  size: Size,
  workbook: Workbook,
  shell: Shell,
  holding: Holding,
) {
  const how = stand().value;
  const tall = how === 'tall';
  return html`
    <header>
      <button
        class="fold"
        aria-expanded=${how !== 'shut'}
        aria-controls="figure-list"
        @click=${() => setStand(how === 'shut' ? 'open' : 'shut')}
      >
        ${icon(how === 'shut' ? ChevronUp : ChevronDown)}
        <h2>${words.figures.title}</h2>
        <i>${how === 'shut' ? figures.map(({ title }) => title).join(' · ') : figures.length}</i>
      </button>
      <button
        class="glyph"
        aria-label=${words.figures.add}
        title=${words.figures.add}
        @click=${() => shell.open('figure')}
      >
        ${icon(Plus)}
      </button>
      <button
        class="glyph"
        aria-label=${words.figures.wholePage}
        title=${words.figures.wholePage}
        aria-pressed=${tall}
        @click=${() => setStand(tall ? 'open' : 'tall')}
      >
        ${icon(tall ? Minimize2 : Maximize2)}
      </button>
    </header>
    <div
      class="figure-list"
      id="figure-list"
      tabindex=${how === 'shut' ? -1 : 0}
      role="group"
      aria-label=${words.figures.ofSheet}
    >
      ${repeat(
        figures,
        ({ id }) => id,
        (figure) => card(figure, size, workbook, shell, holding),
      )}
      <p class="unseen" role="status">${holding.told.value}</p>
    </div>
  `;
}

/** Drawn once for each size, however often the page around it is laid anew. */
const drawings = new WeakMap<Made, { readonly size: Size; readonly drawing: Drawing }>();

function drawingOf(made: Made, size: Size): Drawing | Undrawn {
  const known = drawings.get(made);
  if (known?.size === size) return known.drawing;
  return unbroken(() => {
    const drawing = made.draw(pageTheme, size);
    drawings.set(made, { size, drawing });
    return drawing;
  });
}

/** Built, or what stands in the place of what could not be. */
function built(drawing: Drawing, label: string): unknown {
  const svg = unbroken(() => svgOf(drawing, label));
  return 'cause' in svg ? broken(svg.reason, svg.cause) : svg;
}

function card(figure: FigureView, size: Size, workbook: Workbook, shell: Shell, holding: Holding) {
  const { id, title, kindName } = figure;
  const hold = holding.now.value;
  // While something in it is held, the figure is as it would be.
  const made = hold?.figure === id && hold.from === figure.made ? hold.made : figure.made;
  const [lead = '', ...rest] = 'reason' in made ? [made.reason] : made.sentences;
  const last = 'reason' in made ? hold?.from : made;
  const shown = last && size.width > 0 ? drawingOf(last, size) : undefined;
  const drawing = shown && 'children' in shown ? shown : undefined;
  return html`<figure class="figure" data-figure=${id}>
    <figcaption>
      <div>
        <h3>${title}</h3>
        <p class=${'reason' in made ? 'faint' : ''}>${written(lead)}</p>
      </div>
      <button
        class="glyph more"
        aria-label=${words.figures.menuOf(title)}
        aria-haspopup="menu"
        @click=${(event: Event) => openFigureMenu(event, figure, workbook, shell)}
        @keydown=${(event: KeyboardEvent) => figureKey(event, figure, workbook, shell)}
      >
        ${icon(Ellipsis)}
      </button>
    </figcaption>
    ${'cause' in made ? broken('', made.cause) : ''}
    ${shown && 'reason' in shown ? broken(shown.reason, shown.cause) : ''}
    ${drawing ? guard([drawing], () => built(drawing, `${kindName}: ${title}. ${lead}`)) : ''}
    ${
      drawing
        ? handsOver({
            ...{ figure, drawing, holding },
            hands: last?.hands ?? [],
            writing: writingSettings(workbook.settings.value),
            say: workbook.say,
          })
        : ''
    }
    ${furtherSentences(rest)}
  </figure>`;
}
