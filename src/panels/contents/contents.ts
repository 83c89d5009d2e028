import { html } from 'lit-html';
import { Ellipsis, PanelLeft, Plus, X } from 'lucide-static';
import { phases, type Phase } from '../../book/types.ts';
import { icon } from '../kit/icon.ts';
import { roam } from '../kit/popup.ts';
import type { Screen } from '../screen.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import { remarksInWords } from '../views/remarks-view.ts';
import type { SheetEntry } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { carry } from './carry.ts';
import { openSheetMenu } from './sheet-menu.ts';
import { stayWith } from './stay-with.ts';
import { neighbour } from './order.ts';
import { words } from '../../words/words.ts';

const order: readonly (Phase | null)[] = [...phases, null];
const heading = (phase: Phase | null) =>
  phase ? words.contents.phases[phase] : words.contents.sheets;

/** The sheets of the book, grouped by the phase of the work they belong to. */
export function contents(workbook: Workbook, screen: Screen, shell: Shell) {
  const sheets = workbook.contents.value;
  const whole = workbook.agreement.value;
  return html`
    <div class="drawer-head">
      <h2>${words.contents.title}</h2>
      <button
        class="glyph"
        aria-label=${words.contents.close}
        @click=${() => screen.toggle('contents')}
      >
        ${icon(X)}
      </button>
    </div>
    <div class="list" @keydown=${roam('.sheet-link')}>
      ${order.map((phase) => {
        const here = sheets.filter((sheet) => sheet.phase === phase);
        if (here.length === 0) return '';
        return html`<section aria-label=${heading(phase)}>
          <h3>${heading(phase)}</h3>
          <ul>
            ${here.map((sheet) => line(sheet, workbook, screen, shell))}
          </ul>
        </section>`;
      })}
    </div>
    ${whole ? html`<p class="whole">${words.contents.inWholeBook(whole)}</p>` : ''}
    <div class="contents-foot">
      <button
        class="glyph"
        @click=${() => shell.open('add-sheet')}
        aria-label=${words.contents.addSheet}
        title=${words.contents.addSheet}
      >
        ${icon(Plus)}
      </button>
      <button
        class="glyph fold"
        aria-label=${words.contents.show}
        title=${words.contents.show}
        aria-pressed=${screen.beside.value.contents}
        @click=${() => screen.toggle('contents')}
      >
        ${icon(PanelLeft)}
      </button>
    </div>
  `;
}

function line(sheet: SheetEntry, workbook: Workbook, screen: Screen, shell: Shell) {
  const show = () => {
    workbook.show(sheet.id);
    screen.drawer.value = null;
  };
  const menu = (event: Event) => {
    event.preventDefault();
    openSheetMenu(event, sheet, workbook, shell);
  };
  return html`<li class=${sheet.shown ? 'shown' : ''}>
    <button
      class="sheet-link"
      data-sheet=${sheet.id}
      aria-current=${sheet.shown ? 'page' : 'false'}
      tabindex=${sheet.shown ? 0 : -1}
      @click=${show}
      @contextmenu=${menu}
      @pointerdown=${(event: PointerEvent) => carry(event, sheet, workbook)}
      @keydown=${(event: KeyboardEvent) => onKey(event, sheet, workbook, shell)}
    >
      <span>${sheet.title}</span>${sheet.count ? html`<i>${sheet.count}</i>` : ''}
      ${sheet.remarks ? html`<small>${remarksInWords(sheet.remarks)}</small>` : ''}
    </button>
    <button
      class="glyph more"
      aria-label=${words.contents.menuFor(sheet.title)}
      aria-haspopup="menu"
      tabindex=${sheet.shown ? 0 : -1}
      @click=${menu}
    >
      ${icon(Ellipsis)}
    </button>
  </li>`;
}

function onKey(event: KeyboardEvent, sheet: SheetEntry, workbook: Workbook, shell: Shell): void {
  const way = event.altKey ? ({ ArrowUp: -1, ArrowDown: 1 } as const)[event.key] : undefined;
  if (way !== undefined) {
    const to = neighbour(workbook.contents.value, sheet.id, way);
    if (to !== undefined) {
      stayWith(sheet.id, event.currentTarget as HTMLElement, workbook);
      workbook.run(verbs.moveSheet, { sheet: sheet.id, to });
    }
  } else if (event.key === 'F2') shell.open('sheet', sheet.id);
  else if (event.key === 'Delete') workbook.run(verbs.deleteSheet, { sheet: sheet.id });
  else if (event.key === 'ContextMenu') openSheetMenu(event, sheet, workbook, shell);
  else return;
  event.preventDefault();
  event.stopPropagation();
}
