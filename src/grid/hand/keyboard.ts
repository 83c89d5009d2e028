import type { GridEvents, GridModel, Place, RangeKind, Selection } from '../contract.ts';
import * as select from '../select.ts';
import * as travel from '../travel.ts';
import type { Entry } from './entry.ts';
import { actionOf, finishOf, type KeyAction } from './keys.ts';
import type { Surface } from './surface.ts';

/** Held for the key that follows; by themselves they ask for nothing. */
const modifiers: ReadonlySet<string> = new Set(['Shift', 'Control', 'Alt', 'Meta']);

type Travel = Extract<KeyAction, { extend: boolean }>;

/** Keys and clipboard events, which arrive at the text box. */
export class Keyboard {
  private readonly surface: Surface;
  private readonly entry: Entry;
  private readonly model: GridModel;
  private readonly events: GridEvents;

  constructor(
    surface: Surface,
    entry: Entry,
    model: GridModel,
    events: GridEvents,
    signal: AbortSignal,
  ) {
    this.surface = surface;
    this.entry = entry;
    this.model = model;
    this.events = events;
    const { box } = entry.editor;
    box.addEventListener('keydown', (event) => this.pressed(event), { signal });
    box.addEventListener('blur', () => surface.shell.leave(false), { signal });
    // The menu key has been answered by then; the browser's own menu is for text.
    const noMenu = (event: MouseEvent) => {
      if (!entry.isOpen) event.preventDefault();
    };
    box.addEventListener('contextmenu', noMenu, { signal });
    for (const type of ['copy', 'cut', 'paste'] as const) {
      const handUp = (event: ClipboardEvent) => {
        if (entry.isOpen) return;
        event.preventDefault();
        events[type](event, surface.selection);
      };
      box.addEventListener(type, handUp, { signal });
    }
  }

  private pressed(event: KeyboardEvent): void {
    if (event.isComposing || event.key === 'Process' || this.entry.editor.isComposing) return;
    const { isOpen } = this.entry;
    if (this.events.key(event, isOpen)) {
      event.preventDefault();
      return;
    }
    if (isOpen) {
      this.pressedInEntry(event);
      return;
    }
    const { shell } = this.surface;
    if ((event.key === 'Tab' && shell.isLeaving) || modifiers.has(event.key)) return;
    shell.leave(false);
    const action = actionOf(event);
    if (!action) return;
    event.preventDefault();
    this.act(action);
  }

  private pressedInEntry(event: KeyboardEvent): void {
    const { editor } = this.entry;
    if (event.key === 'F2') {
      editor.mode = editor.mode === 'type' ? 'change' : 'type';
      event.preventDefault();
      return;
    }
    const finish = finishOf(event, editor.mode === 'type');
    if (!finish) return;
    event.preventDefault();
    if (finish === 'drop') this.entry.close('drop');
    else this.entry.close('keep', finish, event.key.startsWith('Arrow'));
  }

  private act(action: KeyAction): void {
    const { surface } = this;
    const { focus } = surface.selection;
    switch (action.does) {
      case 'next':
        return surface.advance(action.move, focus);
      case 'row':
        return surface.settle(this.whole('rows'), 'keyboard', focus);
      case 'column':
        return surface.settle(this.whole('columns'), 'keyboard', focus);
      case 'all':
        return surface.settle(this.whole('all'), 'keyboard', focus);
      case 'change':
        return this.entry.change(focus);
      case 'clear':
        return this.events.clear(surface.selection);
      case 'focus':
        return surface.scrollTo(focus);
      case 'menu':
        return this.menu(focus);
      case 'leave':
        surface.shell.leave(true);
        return this.events.escapeGrid?.();
      case 'step':
      case 'edge':
      case 'page':
      case 'home':
      case 'end':
      case 'first':
      case 'last':
        return this.go(action);
    }
  }

  private go(action: Travel): void {
    const { surface, model } = this;
    const { focus, lead } = surface.selection;
    const to = this.target(action, action.extend ? lead : focus);
    const next = action.extend
      ? select.extend(surface.selection, to, model)
      : select.selectCell(to);
    surface.settle(next, 'keyboard', to);
  }

  private target(action: Travel, from: Place): Place {
    const { model, surface } = this;
    switch (action.does) {
      case 'step':
        return travel.stepFrom(from, action.step, model);
      case 'edge':
        return travel.blockEdge(from, action.step, model);
      case 'page': {
        const rows = surface.geometry.page(surface.painter.scroller);
        return travel.stepFrom(from, action.step, model, rows);
      }
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

  /** The rows or columns the last range touches, whole. */
  private whole(kind: RangeKind): Selection {
    const { selection } = this.surface;
    return select.extend(selection, selection.lead, this.model, kind);
  }

  private menu(place: Place): void {
    const rect = this.surface.elementOf(place)?.getBoundingClientRect();
    this.events.menu({ on: 'cell', place, x: rect?.left ?? 0, y: rect?.bottom ?? 0 });
  }
}
