import { copyCells } from '../book/make/copy.ts';
import { cutCells } from '../book/make/cut.ts';
import { enter, type Entry } from '../book/make/enter.ts';
import type { Region } from '../book/make/growing.ts';
import { addressAt } from '../book/look.ts';
import { shownText } from '../check/shown.ts';
import { joinTable, readTable, split } from '../files/table.ts';
import { done, refused, type Context, type Outcome } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegion, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

/**
 * Takes the selected block for copying or cutting, and gives it as tab-separated text of what is
 * shown. A cut moves nothing until it is pasted.
 */
export function take(context: Context, how: 'copy' | 'cut'): string {
  const { book, engine, session } = context;
  const { sheet, top, left, height, width } = selectedRegion(context);
  const rows = Array.from({ length: height }, (_, i) =>
    Array.from({ length: width }, (_, j) =>
      shownText(book.document, engine, { sheet, row: top + i, column: left + j }),
    ),
  );
  const text = joinTable(rows);
  const block = {
    from: { row: top, column: left },
    to: { row: top + height - 1, column: left + width - 1 },
  };
  session.hold({ text, sheet, block, how });
  return text;
}

/**
 * Pastes at the selection. What was copied here keeps formulas, formats and roles; text from
 * elsewhere is read cell by cell, as if typed.
 */
export function paste(
  context: Context,
  text: string,
  what: 'all' | 'contents' | 'values' = 'all',
): Outcome {
  const { clip } = context.session.state;
  const ours =
    clip !== null && sameText(clip.text, text) && context.book.document.sheet(clip.sheet);
  if (!ours || what === 'values') return pasteText(context, text);
  const from: Region = {
    sheet: clip.sheet,
    top: clip.block.from.row,
    left: clip.block.from.column,
    height: clip.block.to.row - clip.block.from.row + 1,
    width: clip.block.to.column - clip.block.from.column + 1,
  };
  const target = selectedRegion(context);
  const { document } = context.book;
  const to = { sheet: target.sheet, row: target.top, column: target.left };
  const made =
    clip.how === 'cut'
      ? cutCells(document, context.means, from, to)
      : copyCells(document, context.means, from, target, { what });
  const outcome = carryOut(context, made);
  if (!outcome.ok) return outcome;
  if (clip.how === 'cut') context.session.hold(null);
  const repeats =
    clip.how === 'copy' && target.height % from.height === 0 && target.width % from.width === 0;
  select(context, target, repeats ? target : from);
  return outcome;
}

/** Some systems put other line ends on the clipboard than they were given. */
function sameText(ours: string, given: string): boolean {
  return ours === given.replace(/\r\n?/g, '\n').replace(/\n$/, '') || ours === given;
}

function pasteText(context: Context, text: string): Outcome {
  const table = cellsOf(text);
  const sheet = sheetInView(context);
  const target = selectedRegion(context);
  const [[only = ''] = []] = table.rows;
  const single = table.rows.length === 1 && table.rows[0]?.length === 1;
  const rows = single
    ? Array.from({ length: target.height }, () => Array.from({ length: target.width }, () => only))
    : table.rows;
  const under = table.decimal === undefined ? {} : { under: { decimal: table.decimal } };
  const entries = rows.flatMap((row, i) =>
    row.map((cell, j): Entry => ({
      sheet: sheet.id,
      row: target.top + i,
      column: target.left + j,
      text: cell,
      ...under,
    })),
  );
  if (entries.length === 0) return done;
  const entered = enter(context.book.document, context.means, entries, {
    keepGoing: true,
    label: words.commands.pasteCells(entries.length),
  });
  if (!entered.ok) return refused(entered.reason);
  const ran = context.book.run(entered.transaction);
  if (!ran.ok) return refused(ran.reason);
  select(context, target, {
    height: rows.length,
    width: Math.max(...rows.map((row) => row.length)),
  });
  const { unread } = entered;
  const [first] = unread;
  if (!first) return done;
  const start = first.text.slice(0, 40);
  return {
    ok: true,
    say: words.commands.leftAsBefore(unread.length, addressAt(first), start, first.reason),
  };
}

function select({ session }: Context, at: Region, size: { height: number; width: number }): void {
  session.selectBlock({
    from: { row: at.top, column: at.left },
    to: { row: at.top + size.height - 1, column: at.left + size.width - 1 },
  });
}

interface PastedCells {
  readonly rows: readonly (readonly string[])[];
  readonly decimal?: '.' | ',';
}

/** Tabs separate columns; without any, several lines that are a table are taken as one. */
function cellsOf(text: string): PastedCells {
  if (text.includes('\t')) return { rows: split(text, '\t') };
  const several = text.trimEnd().includes('\n');
  const table = several ? readTable(text) : undefined;
  if (table) return { rows: table.rows, decimal: table.decimal };
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n$/, '').split('\n');
  return { rows: lines.map((line) => [line]) };
}
