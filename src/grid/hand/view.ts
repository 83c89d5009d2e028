import type {
  GridEvents,
  GridModel,
  GridView,
  Move,
  Origin,
  Outline,
  Place,
  Range,
  RangeKind,
  Selection,
} from '../contract.ts';
import type { MakePainter, Painter, Spot } from '../painter.ts';
import { fillTarget, samePlace, span, within } from '../range.ts';
import * as select from '../select.ts';
import * as travel from '../travel.ts';
import { Dresser } from './dresser.ts';
import { Editor, type EditorMode } from './editor.ts';
import { Geometry, type Density } from './geometry.ts';
import { actionOf, finishOf, type KeyAction } from './keys.ts';
import { Pointer } from './pointer.ts';
import { Shell } from './shell.ts';

/**
 * The hand of every grid: selection, keys, pointer, editor and clipboard events over whatever painter
 * an adapter brings. A painter paints; what a gesture means is decided here, once.
 */
export class HandView implements GridView {
  private readonly model: GridModel;
  private readonly events: GridEvents;
  private readonly shell: Shell;
  private readonly geometry: Geometry;
  private readonly dresser: Dresser;
  private readonly painter: Painter;
  private readonly editor: Editor;
  private readonly pointer: Pointer;
  private readonly resized: ResizeObserver;
  /** Where a run of Tabs began: Enter goes back to that column. */
  private tabColumn: number | null = null;
  private fill: { from: Range; to: Range | null } | null = null;
  /** The block being pointed at while an entry is open. */
  private pointing: Place | null = null;
  private seen = '';
  private readonly done = new AbortController();

  constructor(host: HTMLElement, model: GridModel, events: GridEvents, make: MakePainter) {
    this.model = model;
    this.events = events;
    this.shell = new Shell(host);
    this.geometry = new Geometry(model, this.shell.density);
    this.dresser = new Dresser(model, select.selectCell({ row: 0, column: 0 }));
    this.painter = make(this.shell.element, this.geometry, this.dresser);
    this.shell.adopt(this.painter.scroller);
    this.editor = new Editor(
      this.shell.element,
      this.painter.scroller.id,
      () => this.shell.density === 'coarse',
      {
        begun: () => this.begin(this.selection.focus, 'type', null),
        changed: (text) => this.changed(text),
      },
    );
    this.shell.ownBox(this.editor.box);
    this.pointer = new Pointer(
      {
        shell: this.shell.element,
        scroller: this.painter.scroller,
        spotOf: (target) => this.dresser.spotOf(target),
        columnWidth: (column) => this.model.columnWidth(column),
      },
      this.gestures(),
    );
    this.listen();
    this.resized = new ResizeObserver(() => this.relaid());
    this.resized.observe(this.shell.element);
    this.refresh();
  }

  // What the host may ask.

  get selection(): Selection {
    return this.dresser.selection;
  }

  paint(places?: Iterable<Place>): void {
    const wanted = places && new Set(Array.from(places, keyOf));
    for (const element of this.shell.cells()) {
      const spot = this.dresser.spotOf(element);
      if (spot?.on !== 'cell') continue;
      if (wanted && !wanted.has(keyOf(spot.place))) continue;
      this.dresser.cell(element, spot.place.row, spot.place.column);
    }
    this.markActive();
  }

  refresh(): void {
    this.geometry.measure();
    const fitted = select.refit(this.selection, this.model);
    const moved = JSON.stringify(fitted) !== JSON.stringify(this.selection);
    this.dresser.selection = fitted;
    this.shell.describe(this.model);
    this.relaid();
    if (moved) this.events.selected(fitted, 'program');
  }

  select(selection: Selection): void {
    const fitted = select.refit(selection, this.model);
    this.settle(fitted, 'program', this.endOf(fitted));
  }

  selectRange(range: Range, kind: RangeKind = 'cells'): void {
    this.select(select.selectBlock(range, kind));
  }

  scrollTo(place: Place): void {
    const { scroller } = this.painter;
    const target = this.geometry.scrollFor(within(place, this.model), scroller);
    if (target.left === scroller.scrollLeft && target.top === scroller.scrollTop) return;
    scroller.scrollLeft = target.left;
    scroller.scrollTop = target.top;
    this.painter.settle();
    this.moved();
  }

  outline(outlines: readonly Outline[]): void {
    this.dresser.outlines = outlines;
    this.remark();
  }

  openEditor(place: Place, initialText?: string): boolean {
    if (!this.closeEditor()) return false;
    this.settle(select.selectCell(within(place, this.model)), 'program');
    const typed = initialText ?? this.model.editText(place.row, place.column);
    return this.begin(place, initialText === undefined ? 'change' : 'type', typed);
  }

  closeEditor(how: 'keep' | 'drop' = 'keep', then: Move = 'stay'): boolean {
    const { place, text } = this.editor;
    if (!place || text === null) return true;
    if (how === 'keep' && text !== this.model.editText(place.row, place.column)) {
      const verdict = this.events.edit(place, text, then);
      if (verdict !== true) {
        this.editor.box.classList.add('refused');
        this.editor.box.setAttribute('aria-invalid', 'true');
        this.shell.say(verdict.reason, this.editor.box);
        return false;
      }
    }
    this.editor.close();
    this.shell.hush();
    this.pointing = null;
    this.events.editing?.(null, '');
    if (how === 'keep') this.go(then, place);
    else this.moved();
    return true;
  }

  get editorText(): string | null {
    return this.editor.text;
  }

  setEditorText(text: string): void {
    if (this.editor.place) this.editor.write(text);
  }

  insertInEditor(text: string, replace = 0): void {
    if (!this.editor.place) return;
    this.editor.insert(text, replace);
    this.changed(this.editor.box.value);
  }

  say(place: Place, sentence: string): void {
    this.scrollTo(place);
    this.shell.say(sentence, this.elementOf(place));
  }

  focus(): void {
    this.editor.box.focus({ preventScroll: true });
  }

  get hasFocus(): boolean {
    return document.activeElement === this.editor.box;
  }

  visible(): Range {
    return this.geometry.visible(this.painter.scroller);
  }

  cellRect(place: Place): DOMRect | null {
    return this.elementOf(place)?.getBoundingClientRect() ?? null;
  }

  setDensity(density: Density): void {
    this.shell.setDensity(density);
    this.geometry.density = density;
    this.refresh();
  }

  dispose(): void {
    this.resized.disconnect();
    this.done.abort();
    this.pointer.dispose();
    this.painter.dispose();
    this.shell.dispose();
  }

  // Selection.

  private settle(selection: Selection, origin: Origin, follow: Place = selection.lead): void {
    this.dresser.selection = selection;
    this.shell.hush();
    this.remark();
    this.scrollTo(follow);
    this.moved();
    this.events.selected(selection, origin);
  }

  /** What to scroll to: whole rows and columns are shown from where the view is. */
  private endOf({ lead, ranges }: Selection): Place {
    const { from } = this.visible();
    const kind = ranges[ranges.length - 1]?.kind;
    return {
      row: kind === 'columns' || kind === 'all' ? from.row : lead.row,
      column: kind === 'rows' || kind === 'all' ? from.column : lead.column,
    };
  }

  private remark(): void {
    this.dresser.remark(this.shell.cells());
    this.markActive();
  }

  /** Screen readers follow the id: it is on the copy of the focus cell that is seen. */
  private markActive(): void {
    this.shell.markActive(this.elementOf(this.selection.focus), this.editor.box);
  }

  /** The element of a cell; of the copies in frozen panes the one on top. */
  private elementOf(place: Place): HTMLElement | null {
    let found: HTMLElement | null = null;
    for (const element of this.shell.cells()) {
      const spot = this.dresser.spotOf(element);
      if (spot?.on === 'cell' && samePlace(spot.place, place)) found = element;
    }
    return found;
  }

  /** After Enter, Tab or a finished entry. */
  private go(move: Move, from: Place): void {
    if (move === 'stay') {
      this.moved();
      return;
    }
    if (!select.isSingle(this.selection)) {
      const focus = travel.cycle(this.selection, move);
      this.settle({ ...this.selection, focus }, 'keyboard', focus);
      return;
    }
    const asked = this.events.next?.(from, move);
    const across = move === 'right' || move === 'left';
    const start = across ? (this.tabColumn ?? from.column) : null;
    const back = move === 'down' && this.tabColumn !== null;
    const base = back ? { row: from.row, column: this.tabColumn ?? from.column } : from;
    const to = asked ?? travel.stepFrom(base, travel.steps[move], this.model);
    this.settle(select.selectCell(within(to, this.model)), 'keyboard');
    this.tabColumn = start;
  }

  // The editor.

  private begin(place: Place, mode: EditorMode, text: string | null): boolean {
    const allowed = this.events.mayEdit?.(place) ?? true;
    if (allowed !== true) {
      this.say(place, allowed.reason);
      return false;
    }
    this.scrollTo(place);
    const name = `Entry, ${this.model.columnLabel(place.column)}${this.model.rowLabel(place.row)}`;
    this.editor.open(place, mode, text, name);
    this.shell.hush();
    this.moved();
    this.focus();
    // Text that was caught is told by its own input event.
    if (text !== null) this.events.editing?.(place, this.editor.box.value);
    return true;
  }

  private changed(text: string): void {
    const { place } = this.editor;
    if (!place) return;
    this.pointing = null;
    this.editor.box.classList.remove('refused');
    this.editor.box.removeAttribute('aria-invalid');
    this.shell.hush();
    this.events.editing?.(place, text);
  }

  /** Cells moved on the screen: the box follows, sentences go with it. */
  private moved(): void {
    const element = this.elementOf(this.editor.place ?? this.selection.focus);
    this.shell.layBox(this.editor, element, this.geometry);
    const visible = this.visible();
    const key = JSON.stringify(visible);
    if (key === this.seen) return;
    this.seen = key;
    this.events.scrolled?.(visible);
  }

  private relaid(): void {
    this.painter.draw();
    this.markActive();
    this.moved();
  }

  // Keys and the clipboard.

  private listen(): void {
    const { box } = this.editor;
    const { signal } = this.done;
    box.addEventListener('keydown', (event) => this.keyed(event), { signal });
    box.addEventListener('blur', () => this.shell.leave(false), { signal });
    box.addEventListener(
      'contextmenu',
      (event) => {
        if (!this.editor.place) event.preventDefault();
      },
      { signal },
    );
    for (const type of ['copy', 'cut', 'paste'] as const) {
      const handle = (event: ClipboardEvent) => {
        if (this.editor.place) return;
        event.preventDefault();
        this.events[type](event, this.selection);
      };
      box.addEventListener(type, handle, { signal });
    }
    this.painter.scroller.addEventListener('focus', () => this.focus(), { signal });
    this.painter.scroller.addEventListener('scroll', () => this.moved(), { signal });
    this.shell.onDensity((density) => {
      this.geometry.density = density;
      this.refresh();
    }, signal);
  }

  private keyed(event: KeyboardEvent): void {
    if (event.isComposing || event.key === 'Process' || this.editor.isComposing) return;
    const { place } = this.editor;
    if (this.events.key(event, place !== null)) {
      event.preventDefault();
      return;
    }
    if (place) {
      this.keyedInEditor(event);
      return;
    }
    if (event.key === 'Tab' && this.shell.isLeaving) return;
    if (modifiers.has(event.key)) return;
    this.shell.leave(false);
    const action = actionOf(event);
    if (!action) return;
    event.preventDefault();
    this.act(action);
  }

  private keyedInEditor(event: KeyboardEvent): void {
    if (event.key === 'F2') {
      this.editor.mode = this.editor.mode === 'type' ? 'change' : 'type';
      event.preventDefault();
      return;
    }
    const finish = finishOf(event, this.editor.mode === 'type');
    if (!finish) return;
    event.preventDefault();
    if (finish === 'drop') this.closeEditor('drop');
    else this.closeEditor('keep', finish);
  }

  private act(action: KeyAction): void {
    const { selection, model } = this;
    const { focus, lead } = selection;
    if (action.does === 'next') {
      this.go(action.move, focus);
      return;
    }
    this.tabColumn = null;
    switch (action.does) {
      case 'row':
        return this.settle(this.whole('rows'), 'keyboard', focus);
      case 'column':
        return this.settle(this.whole('columns'), 'keyboard', focus);
      case 'all':
        return this.settle(this.whole('all'), 'keyboard', focus);
      case 'change':
        this.begin(focus, 'change', model.editText(focus.row, focus.column));
        return;
      case 'clear':
        return this.events.clear(selection);
      case 'focus':
        return this.scrollTo(focus);
      case 'menu': {
        const rect = this.cellRect(focus);
        this.events.menu({ on: 'cell', place: focus, x: rect?.left ?? 0, y: rect?.bottom ?? 0 });
        return;
      }
      case 'leave':
        this.shell.leave(true);
        return this.events.escapeGrid?.();
    }
    const from = action.extend ? lead : focus;
    const to = this.target(action, from);
    this.settle(
      action.extend ? select.extend(selection, to, model) : select.selectCell(to),
      'keyboard',
    );
  }

  /** The rows or columns the last range touches, whole. */
  private whole(kind: RangeKind): Selection {
    return select.extend(this.selection, this.selection.lead, this.model, kind);
  }

  private target(action: Extract<KeyAction, { extend: boolean }>, from: Place): Place {
    const { model } = this;
    switch (action.does) {
      case 'step':
        return travel.stepFrom(from, action.step, model);
      case 'edge':
        return travel.blockEdge(from, action.step, model);
      case 'page':
        return travel.stepFrom(from, action.step, model, this.geometry.page(this.painter.scroller));
      case 'home':
        return { row: from.row, column: 0 };
      case 'end':
        return { row: from.row, column: travel.lastUsed(model).column };
      case 'first':
        return { row: 0, column: 0 };
      case 'last':
        return travel.lastUsed(model);
    }
  }

  // The pointer.

  private gestures(): ConstructorParameters<typeof Pointer>[1] {
    return {
      press: (spot, how) => this.press(spot, how),
      drag: (spot) => this.dragged(spot),
      open: (spot) => {
        if (spot.on === 'cell' && !this.editor.place) this.openAt(spot.place);
      },
      menu: (spot, x, y, touch) => this.menuAt(spot, x, y, touch),
      fillBegin: () => {
        this.fill = { from: select.lastRange(this.selection), to: null };
      },
      fillTo: (spot) => {
        if (!this.fill || spot.on !== 'cell') return;
        this.fill.to = fillTarget(this.fill.from, spot.place);
        const preview: Outline[] = this.fill.to ? [{ range: this.fill.to, as: 'reference' }] : [];
        this.dresser.outlines = preview;
        this.remark();
      },
      fillEnd: () => this.filled(),
      resize: (column, width, done) => {
        this.shell.guide(done ? null : this.columnRect(column), width);
        if (done && width !== this.model.columnWidth(column))
          this.events.resizeColumn(column, width);
      },
      fit: (column) => this.events.fitColumn?.(column),
    };
  }

  private openAt(place: Place): void {
    this.begin(place, 'change', this.model.editText(place.row, place.column));
  }

  private press(spot: Spot, how: { shift: boolean; ctrl: boolean; touch: boolean }): boolean {
    if (this.editor.place && this.pointed(spot, false)) return true;
    if (!this.closeEditor()) return false;
    this.tabColumn = null;
    const { model, selection } = this;
    const kind = kindOf(spot);
    const place = this.placeOf(spot);
    const next = how.shift
      ? select.extend(selection, place, model, kind)
      : how.ctrl
        ? select.beginAnother(selection, place, kind, model)
        : select.begin(place, kind, model);
    this.settle(next, how.touch ? 'touch' : 'mouse', this.followed(spot));
    this.focus();
    return true;
  }

  /** A click while an entry is open may mean a reference. */
  private pointed(spot: Spot, again: boolean): boolean {
    if (spot.on !== 'cell' || !this.events.point) return false;
    const start = again && this.pointing ? this.pointing : spot.place;
    const taken = this.events.point(span(start, spot.place), again);
    this.pointing = taken ? start : null;
    return taken;
  }

  private dragged(spot: Spot): void {
    if (this.editor.place) {
      if (this.pointing) this.pointed(spot, true);
      return;
    }
    const { model, selection } = this;
    const kind = select.lastRange(selection).kind;
    if (kind !== 'cells' && kind !== kindOf(spot) && spot.on !== 'cell') return;
    const lead = this.placeOf(spot);
    if (samePlace(lead, selection.lead)) return;
    this.settle(select.extend(selection, lead, model), 'mouse', this.followed(spot));
  }

  private menuAt(spot: Spot, x: number, y: number, touch: boolean): void {
    if (!this.closeEditor()) return;
    const place = this.placeOf(spot);
    const kind = kindOf(spot);
    const within = this.selection.ranges.some(
      ({ from, to, kind: ranged }) =>
        (kind === 'cells' || kind === ranged) &&
        place.row >= from.row &&
        place.row <= to.row &&
        place.column >= from.column &&
        place.column <= to.column,
    );
    if (!within) {
      const origin = touch ? 'touch' : 'mouse';
      this.settle(select.begin(place, kind, this.model), origin, this.followed(spot));
    }
    this.focus();
    this.events.menu({ on: spot.on, place, x, y });
  }

  private filled(): void {
    const { fill } = this;
    this.fill = null;
    this.dresser.outlines = [];
    this.remark();
    if (!fill?.to) return;
    this.settle(select.selectBlock(fill.to), 'mouse', fill.to.from);
    this.events.fill({ from: fill.from.from, to: fill.from.to }, fill.to);
  }

  private placeOf(spot: Spot): Place {
    const { from } = this.visible();
    if (spot.on === 'cell') return spot.place;
    if (spot.on === 'row')
      return { row: spot.row, column: this.firstInView('column', from.column) };
    if (spot.on === 'column')
      return { row: this.firstInView('row', from.row), column: spot.column };
    return { row: 0, column: 0 };
  }

  private firstInView(along: 'row' | 'column', seen: number): number {
    const { rows, columns } = this.model.frozen;
    return (along === 'row' ? rows : columns) > 0 ? 0 : seen;
  }

  /** Selecting a whole row or column does not scroll along it. */
  private followed(spot: Spot): Place {
    return spot.on === 'corner' ? this.visible().from : this.placeOf(spot);
  }

  private columnRect(column: number): DOMRect | null {
    return this.shell.headingRect((target) => {
      const spot = this.dresser.spotOf(target);
      return spot?.on === 'column' && spot.column === column;
    });
  }
}

/** Held for the key that follows; by themselves they ask for nothing. */
const modifiers: ReadonlySet<string> = new Set(['Shift', 'Control', 'Alt', 'Meta']);

function keyOf(place: Place): number {
  return place.row * 16384 + place.column;
}

function kindOf(spot: Spot): RangeKind {
  return ({ cell: 'cells', row: 'rows', column: 'columns', corner: 'all' } as const)[spot.on];
}
