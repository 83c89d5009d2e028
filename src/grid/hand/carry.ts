import type { GridEvents, SelectedRange, Selection } from '../contract.ts';
import type { Spot } from '../painter.ts';
import type { Surface } from './surface.ts';

/** A place between lines: before or after the one that the pointer is over. */
export interface Between {
  readonly line: number;
  readonly after: boolean;
}

/** Whole rows or columns that are dragged by their headings to another place among the others. */
export class Carry {
  private readonly surface: Surface;
  private readonly events: GridEvents;
  private lines: SelectedRange | null = null;
  private to: number | null = null;

  constructor(surface: Surface, events: GridEvents) {
    this.surface = surface;
    this.events = events;
  }

  /** Whether a drag from here moves lines: they are selected whole, so the drag cannot mean selecting. */
  canBegin(spot: Spot): boolean {
    return this.events.moveLines !== undefined && wholeAt(this.surface.selection, spot) !== null;
  }

  begin(spot: Spot): void {
    this.lines = wholeAt(this.surface.selection, spot);
    this.to = null;
    this.surface.shell.element.classList.add('carrying');
  }

  /** Shows where the lines would go. Beside themselves they stay where they are. */
  over({ line, after }: Between): void {
    const { lines, surface } = this;
    if (!lines) return;
    const axis = lines.kind === 'rows' ? 'rows' : 'columns';
    const to = line + (after ? 1 : 0);
    const [first, last] =
      axis === 'rows' ? [lines.from.row, lines.to.row] : [lines.from.column, lines.to.column];
    this.to = to >= first && to <= last + 1 ? null : to;
    const rect = this.to === null ? null : surface.headingRect(axis, line);
    if (!rect) return surface.shell.guide(null);
    const [before, behind] = axis === 'rows' ? [rect.top, rect.bottom] : [rect.left, rect.right];
    surface.shell.guide({ axis, at: after ? behind : before });
  }

  end(how: 'keep' | 'drop'): void {
    const { lines, to } = this;
    this.lines = null;
    this.to = null;
    this.surface.shell.guide(null);
    this.surface.shell.element.classList.remove('carrying');
    if (how === 'keep' && lines && to !== null) this.events.moveLines?.(lines, to);
  }
}

/** The selected rows or columns that this heading is one of. */
function wholeAt({ ranges }: Selection, spot: Spot): SelectedRange | null {
  const found = ranges.findLast(({ kind, from, to }) => {
    if (spot.on === 'row') return kind === 'rows' && spot.row >= from.row && spot.row <= to.row;
    if (spot.on !== 'column') return false;
    return kind === 'columns' && spot.column >= from.column && spot.column <= to.column;
  });
  return found ?? null;
}
