import type { GridModel, Place } from '../contract.ts';
import type { Editor } from './editor.ts';
import type { Density, Geometry } from './geometry.ts';
import { words } from '../../words/words.ts';

/** A line between rows or between columns, in client coordinates. */
export interface Guide {
  readonly axis: 'rows' | 'columns';
  readonly at: number;
}

const coarsePointer = '(pointer: coarse)';
let counted = 0;

/** The element around a grid: what is laid over the cells, who has the focus, what is announced. */
export class Shell {
  readonly element: HTMLElement;
  density: Density;
  isLeaving = false;
  private readonly id: string;
  private readonly sentence: HTMLElement;
  private readonly hint: HTMLElement;
  private readonly line: HTMLElement;
  private scroller: HTMLElement | null = null;
  private box: HTMLTextAreaElement | null = null;
  private active: HTMLElement | null = null;
  private chosenDensity = false;

  constructor(host: HTMLElement) {
    counted += 1;
    this.id = `grid-${counted}`;
    this.density = matchMedia(coarsePointer).matches ? 'coarse' : 'fine';
    this.element = child(host, 'grid-shell');
    this.element.dataset['density'] = this.density;
    this.sentence = child(this.element, 'sentence');
    this.sentence.id = `${this.id}-sentence`;
    this.sentence.setAttribute('role', 'alert');
    this.hint = child(this.element, 'hint');
    this.hint.id = `${this.id}-hint`;
    this.hint.textContent = words.grid.leave;
    this.line = child(this.element, 'guide');
    this.line.hidden = true;
  }

  /** Takes the painter's scroller as the grid that is tabbed to and named. */
  adopt(scroller: HTMLElement): void {
    this.scroller = scroller;
    scroller.id = this.id;
    scroller.tabIndex = 0;
    scroller.setAttribute('role', 'grid');
    scroller.setAttribute('aria-multiselectable', 'true');
    scroller.setAttribute('aria-describedby', this.hint.id);
  }

  /** The box is what has the focus; while it has, the grid is drawn as live. */
  ownBox(box: HTMLTextAreaElement): void {
    this.box = box;
    box.setAttribute('aria-describedby', `${this.hint.id} ${this.sentence.id}`);
    box.addEventListener('focus', () => this.element.classList.add('live'));
    box.addEventListener('blur', () => this.element.classList.remove('live'));
  }

  describe(model: GridModel): void {
    this.scroller?.setAttribute('aria-label', model.name);
    this.scroller?.setAttribute('aria-rowcount', String(model.rowCount + 1));
    this.scroller?.setAttribute('aria-colcount', String(model.columnCount + 1));
  }

  cells(): NodeListOf<HTMLElement> {
    return this.element.querySelectorAll<HTMLElement>('td,th');
  }

  /** The cell's element and its copies in frozen panes. The headings are the first row and column. */
  cellsAt({ row, column }: Place): NodeListOf<HTMLElement> {
    return this.element.querySelectorAll<HTMLElement>(
      `[aria-rowindex='${row + 2}'] > td[aria-colindex='${column + 2}']`,
    );
  }

  headingRect(matches: (target: Element) => boolean | undefined): DOMRect | null {
    const found = Array.from(this.element.querySelectorAll('th')).filter((th) => matches(th));
    return found[found.length - 1]?.getBoundingClientRect() ?? null;
  }

  markActive(element: HTMLElement | null): void {
    this.active?.removeAttribute('id');
    this.active = element;
    if (element) element.id = `${this.id}-active`;
    const name = element && !this.box?.classList.contains('open') ? element.id : null;
    for (const owner of [this.box, this.scroller]) {
      if (name) owner?.setAttribute('aria-activedescendant', name);
      else owner?.removeAttribute('aria-activedescendant');
    }
  }

  /** Out of the tab order the grid lets Shift+Tab pass as well as Tab. */
  leave(leaving: boolean): void {
    this.isLeaving = leaving;
    if (this.scroller) this.scroller.tabIndex = leaving ? -1 : 0;
  }

  /** The box lies over its cell; scrolled out of sight it hides but keeps its text. */
  layBox(editor: Editor, cell: HTMLElement | null, geometry: Geometry): void {
    const outer = this.element.getBoundingClientRect();
    const box = cell?.getBoundingClientRect();
    const scroller = this.scroller;
    if (!box || !scroller) {
      editor.box.classList.add('away');
      return;
    }
    const left = box.left - outer.left;
    const top = box.top - outer.top;
    const right = scroller.clientWidth;
    const inSight =
      top >= geometry.headingHeight - 1 && top < scroller.clientHeight && left < right;
    editor.box.classList.toggle('away', !inSight);
    editor.put(left, top, box.width, box.height, right - left - 2);
    this.placeSentence(editor.box);
  }

  say(sentence: string, at: HTMLElement | null): void {
    this.sentence.textContent = sentence;
    this.sentence.classList.add('shown');
    if (at) this.placeSentence(at);
  }

  hush(): void {
    if (this.sentence.textContent === '') return;
    this.sentence.textContent = '';
    this.sentence.classList.remove('shown');
  }

  /** Below what it speaks of, or above when there is no room. */
  private placeSentence(at: HTMLElement): void {
    if (!this.sentence.classList.contains('shown')) return;
    const outer = this.element.getBoundingClientRect();
    const box = at.getBoundingClientRect();
    const { offsetWidth, offsetHeight } = this.sentence;
    const below = box.bottom - outer.top + 3;
    const top =
      below + offsetHeight > outer.height ? box.top - outer.top - offsetHeight - 3 : below;
    const left = Math.max(2, Math.min(box.left - outer.left, outer.width - offsetWidth - 4));
    this.sentence.style.left = `${left}px`;
    this.sentence.style.top = `${top}px`;
  }

  /** The line that shows where a dragged edge will be, or where dragged lines will go. */
  guide(between: Guide | null): void {
    this.line.hidden = between === null;
    if (!between) return;
    const { left, top } = this.element.getBoundingClientRect();
    const { axis, at } = between;
    this.line.dataset['axis'] = axis;
    this.line.style.left = axis === 'columns' ? `${at - left - 1}px` : '0';
    this.line.style.top = axis === 'rows' ? `${at - top - 1}px` : '0';
  }

  setDensity(density: Density): void {
    this.chosenDensity = true;
    this.density = density;
    this.element.dataset['density'] = density;
  }

  /** Follows the pointer of the device until the app has chosen. */
  onDensity(changed: (density: Density) => void, signal: AbortSignal): void {
    const follow = (event: MediaQueryListEvent) => {
      if (this.chosenDensity) return;
      this.density = event.matches ? 'coarse' : 'fine';
      this.element.dataset['density'] = this.density;
      changed(this.density);
    };
    matchMedia(coarsePointer).addEventListener('change', follow, { signal });
  }

  dispose(): void {
    this.element.remove();
  }
}

function child(parent: HTMLElement, className: string): HTMLElement {
  const element = document.createElement('div');
  element.className = className;
  parent.append(element);
  return element;
}
