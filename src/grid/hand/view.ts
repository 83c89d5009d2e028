import type {
  GridEvents,
  GridModel,
  GridView,
  Move,
  Outline,
  Place,
  Range,
  RangeKind,
  Selection,
} from '../contract.ts';
import type { MakePainter } from '../painter.ts';
import * as select from '../select.ts';
import { Entry } from './entry.ts';
import { Gestures } from './gestures.ts';
import type { Density } from './geometry.ts';
import { Keyboard } from './keyboard.ts';
import { Pointer } from './pointer.ts';
import { Surface } from './surface.ts';

/**
 * The hand of every grid: selection, keys, pointer, editor and clipboard events over whatever painter
 * an adapter brings. A painter paints; what a gesture means is decided here, once.
 */
export class HandView implements GridView {
  private readonly model: GridModel;
  private readonly surface: Surface;
  private readonly entry: Entry;
  private readonly pointer: Pointer;
  private readonly resized: ResizeObserver;
  private readonly done = new AbortController();

  constructor(host: HTMLElement, model: GridModel, events: GridEvents, make: MakePainter) {
    const { signal } = this.done;
    const surface = new Surface(host, model, events, make);
    const entry = new Entry(surface, model, events);
    new Keyboard(surface, entry, model, events, signal);
    this.pointer = new Pointer(
      {
        shell: surface.shell.element,
        scroller: surface.painter.scroller,
        spotOf: (target) => surface.spotOf(target),
        columnWidth: (column) => model.columnWidth(column),
      },
      new Gestures(surface, entry, model, events),
    );
    this.model = model;
    this.surface = surface;
    this.entry = entry;
    const { scroller } = surface.painter;
    scroller.addEventListener('focus', () => entry.focus(), { signal });
    scroller.addEventListener('scroll', () => surface.moved(), { signal });
    surface.shell.onDensity((density) => surface.setDensity(density), signal);
    this.resized = new ResizeObserver(() => surface.relay());
    this.resized.observe(surface.shell.element);
    surface.refresh();
  }

  get selection(): Selection {
    return this.surface.selection;
  }

  paint(places?: Iterable<Place>): void {
    this.surface.paint(places);
  }

  refresh(): void {
    this.surface.refresh();
  }

  select(selection: Selection): void {
    this.surface.settle(select.refit(selection, this.model), 'program');
  }

  selectRange(range: Range, kind: RangeKind = 'cells'): void {
    this.select(select.selectBlock(range, kind));
  }

  scrollTo(place: Place): void {
    this.surface.scrollTo(place);
  }

  outline(outlines: readonly Outline[]): void {
    this.surface.outline(outlines);
  }

  openEditor(place: Place, initialText?: string): boolean {
    return this.entry.open(place, initialText);
  }

  closeEditor(how?: 'keep' | 'drop', then?: Move): boolean {
    return this.entry.close(how, then);
  }

  get editorText(): string | null {
    return this.entry.editor.text;
  }

  get editorCaret(): number {
    return this.entry.isOpen ? this.entry.editor.box.selectionStart : 0;
  }

  setEditorText(text: string, caret?: number): void {
    if (this.entry.isOpen) this.entry.editor.write(text, caret);
  }

  insertInEditor(text: string, replace = 0): void {
    this.entry.insert(text, replace);
  }

  say(place: Place, sentence: string): void {
    this.surface.say(place, sentence);
  }

  focus(): void {
    this.entry.focus();
  }

  get hasFocus(): boolean {
    return document.activeElement === this.entry.editor.box;
  }

  visible(): Range {
    return this.surface.visible();
  }

  cellRect(place: Place): DOMRect | null {
    return this.surface.elementOf(place)?.getBoundingClientRect() ?? null;
  }

  setDensity(density: Density): void {
    this.surface.shell.setDensity(density);
    this.surface.setDensity(density);
  }

  dispose(): void {
    this.resized.disconnect();
    this.done.abort();
    this.pointer.dispose();
    this.surface.painter.dispose();
    this.surface.shell.dispose();
  }
}
