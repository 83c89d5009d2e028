import { insertLines, moveLines, removeLines, sizeLines } from '../book/make/lines.ts';
import type { AxisName } from '../book/types.ts';
import type { AnyCommand, Command, CommandGroup, Context } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedLines, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

interface Kind {
  readonly axis: AxisName;
  readonly group: CommandGroup;
  readonly keysBefore: readonly string[];
  readonly keysDelete: readonly string[];
  readonly keysBack: readonly string[];
  readonly keysOn: readonly string[];
}

const kinds: readonly Kind[] = [
  {
    axis: 'rows',
    group: 'rows',
    keysBefore: ['Ctrl+Alt+='],
    keysDelete: ['Ctrl+Alt+-'],
    keysBack: ['Alt+Shift+ArrowUp'],
    keysOn: ['Alt+Shift+ArrowDown'],
  },
  {
    axis: 'columns',
    group: 'columns',
    keysBefore: [],
    keysDelete: [],
    keysBack: ['Alt+Shift+ArrowLeft'],
    keysOn: ['Alt+Shift+ArrowRight'],
  },
];

function commandsFor(kind: Kind): readonly AnyCommand[] {
  const { axis, group } = kind;
  const insert = (context: Context, at: number, count: number) =>
    carryOut(
      context,
      insertLines(context.book.document, context.means, sheetInView(context).id, axis, at, count),
    );
  const carry = (context: Context, lines: readonly number[], to: number) => {
    const { document } = context.book;
    return carryOut(
      context,
      moveLines(document, context.means, sheetInView(context).id, axis, lines, to),
    );
  };
  /** Moves the selected lines one place, and the selection with them. */
  const move = (context: Context, way: -1 | 1) => {
    const lines = selectedLines(context, axis);
    const [first = 0, last = 0] = [lines[0], lines.at(-1)];
    if (way < 0 && first === 0) return { ok: false, reason: words.commands.nothingBefore } as const;
    const outcome = carry(context, lines, way < 0 ? first - 1 : last + 2);
    if (outcome.ok) follow(context, axis, way);
    return outcome;
  };
  /** Lines next to each other, dragged before the line that is at `to`; they stay selected. */
  const moveTo: Command<{ readonly from: number; readonly last: number; readonly to: number }> = {
    id: `${axis}.moveTo`,
    name: words.commands.moveLines(axis),
    group,
    run(context, { from, last, to }) {
      const count = last - from + 1;
      const lines = Array.from({ length: count }, (_, at) => from + at);
      const outcome = carry(context, lines, to);
      if (outcome.ok) follow(context, axis, to > last ? to - count - from : to - from);
      return outcome;
    },
  };
  return [
    {
      id: `${axis}.insertBefore`,
      name: words.commands.insertBefore(axis),
      group,
      keys: kind.keysBefore,
      search: ['add'],
      run: (context) => {
        const lines = selectedLines(context, axis);
        return insert(context, lines[0] ?? 0, lines.length);
      },
    },
    {
      id: `${axis}.insertAfter`,
      name: words.commands.insertAfter(axis),
      group,
      search: ['add'],
      run: (context) => {
        const lines = selectedLines(context, axis);
        return insert(context, (lines.at(-1) ?? 0) + 1, lines.length);
      },
    },
    {
      id: `${axis}.delete`,
      name: words.commands.deleteLines(axis),
      group,
      keys: kind.keysDelete,
      search: ['remove'],
      run: (context) =>
        carryOut(
          context,
          removeLines(
            context.book.document,
            sheetInView(context).id,
            axis,
            selectedLines(context, axis),
          ),
        ),
    },
    {
      id: `${axis}.moveBack`,
      name: words.commands.moveBack(axis),
      group,
      keys: kind.keysBack,
      run: (context) => move(context, -1),
    },
    {
      id: `${axis}.moveOn`,
      name: words.commands.moveOn(axis),
      group,
      keys: kind.keysOn,
      run: (context) => move(context, 1),
    },
    moveTo,
  ];
}

function follow({ session }: Context, axis: AxisName, way: number): void {
  const block = session.state.selection.ranges.at(-1);
  if (!block) return;
  const moved = (spot: { row: number; column: number }) => ({
    row: spot.row + (axis === 'rows' ? way : 0),
    column: spot.column + (axis === 'columns' ? way : 0),
  });
  session.selectBlock({ from: moved(block.from), to: moved(block.to) }, block.kind);
}

/** Width of columns in pixels: of one that was dragged, else of the selected ones; null: as usual. */
export const setWidth: Command<{ readonly column?: number; readonly width: number | null }> = {
  id: 'columns.width',
  name: words.commands.columnWidth,
  group: 'columns',
  run: (context, { column, width }) =>
    carryOut(
      context,
      sizeLines(
        context.book.document,
        context.means,
        sheetInView(context).id,
        'columns',
        column === undefined ? selectedLines(context, 'columns') : [column],
        width === null ? null : Math.round(Math.min(600, Math.max(24, width))),
      ),
    ),
};

const widen = (id: string, name: string, by: number, keys: readonly string[]): Command => ({
  id,
  name,
  group: 'columns',
  keys,
  run: (context) => {
    const sheet = sheetInView(context);
    const [first = 0] = selectedLines(context, 'columns');
    const id = sheet.columns.idAt(first);
    const now = (id !== undefined && sheet.columns.properties(id)?.size) || usualWidth;
    return setWidth.run(context, { width: now + by });
  },
});

/** Width of a column that says nothing about itself, in pixels. */
export const usualWidth = 96;

export const lineCommands: readonly AnyCommand[] = [
  ...kinds.flatMap(commandsFor),
  setWidth,
  widen('columns.wider', words.commands.widen, 16, ['Alt+Shift+.']),
  widen('columns.narrower', words.commands.narrow, -16, ['Alt+Shift+,']),
];
