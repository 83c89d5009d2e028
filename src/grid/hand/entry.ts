import type { GridEvents, GridModel, Move, Place } from '../contract.ts';
import type { Spot } from '../painter.ts';
import { span, within } from '../range.ts';
import * as select from '../select.ts';
import { Editor, type EditorMode } from './editor.ts';
import type { Surface } from './surface.ts';
import { words } from '../../words/words.ts';

/** An entry from its first letter until the host has taken it. */
export class Entry {
  readonly editor: Editor;
  private readonly surface: Surface;
  private readonly model: GridModel;
  private readonly events: GridEvents;
  /** The block being pointed at becomes a reference in the text. */
  private pointing: Place | null = null;

  constructor(surface: Surface, model: GridModel, events: GridEvents) {
    this.surface = surface;
    this.model = model;
    this.events = events;
    const { shell, painter } = surface;
    const coarse = () => shell.density === 'coarse';
    this.editor = new Editor(shell.element, painter.scroller.id, coarse, {
      begun: () => this.begin(surface.selection.focus, 'type', null),
      changed: (text) => this.changed(text),
    });
    shell.ownBox(this.editor.box);
    surface.follow = () => {
      const cell = surface.elementOf(this.editor.place ?? surface.selection.focus);
      shell.layBox(this.editor, cell, surface.geometry);
    };
  }

  get isOpen(): boolean {
    return this.editor.place !== null;
  }

  get isPointing(): boolean {
    return this.pointing !== null;
  }

  focus(): void {
    this.editor.box.focus({ preventScroll: true });
  }

  /** Opens on what was typed before. */
  change(place: Place): void {
    this.begin(place, 'change', this.model.editText(place.row, place.column));
  }

  open(place: Place, initialText?: string): boolean {
    if (!this.close()) return false;
    this.surface.settle(select.selectCell(within(place, this.model)), 'program');
    const text = initialText ?? this.model.editText(place.row, place.column);
    return this.begin(place, initialText === undefined ? 'change' : 'type', text);
  }

  /** With no text, what the box has caught stays in it. */
  private begin(place: Place, mode: EditorMode, text: string | null): boolean {
    const allowed = this.events.mayEdit?.(place) ?? true;
    if (allowed !== true) {
      this.surface.say(place, allowed.reason);
      return false;
    }
    this.surface.scrollTo(place);
    const name = words.grid.entry(
      this.model.columnLabel(place.column),
      this.model.rowLabel(place.row),
    );
    this.editor.open(place, mode, text, name);
    this.surface.shell.hush();
    this.surface.moved();
    this.focus();
    // Text that was caught is told by its own input event.
    if (text !== null) this.events.editing?.(place, this.editor.box.value);
    return true;
  }

  changed(text: string): void {
    const { place } = this.editor;
    if (!place) return;
    this.pointing = null;
    this.editor.allow();
    this.surface.shell.hush();
    this.events.editing?.(place, text);
  }

  close(how: 'keep' | 'drop' = 'keep', then: Move = 'stay', byArrow = false): boolean {
    const { place, text } = this.editor;
    if (!place || text === null) return true;
    if (how === 'keep' && text !== this.model.editText(place.row, place.column)) {
      const verdict = this.events.edit(place, text, then);
      if (verdict !== true) {
        this.editor.refuse();
        this.surface.shell.say(verdict.reason, this.editor.box);
        return false;
      }
    }
    this.editor.close();
    this.pointing = null;
    this.surface.shell.hush();
    this.surface.markActive();
    this.events.editing?.(null, '');
    this.surface.advance(how === 'keep' ? then : 'stay', place, byArrow);
    return true;
  }

  insert(text: string, replace: number): void {
    if (!this.isOpen) return;
    this.editor.insert(text, replace);
    this.changed(this.editor.box.value);
  }

  /** A click may mean a reference, in this entry or in one of the host's. True if it took it as one. */
  point(spot: Spot, again: boolean): boolean {
    if (spot.on !== 'cell' || !this.events.point) return false;
    const start = again && this.pointing ? this.pointing : spot.place;
    const taken = this.events.point(span(start, spot.place), again);
    this.pointing = taken ? start : null;
    return taken;
  }
}
