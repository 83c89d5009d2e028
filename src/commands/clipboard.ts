import { copyCells } from '../book/make/copy.ts';
import { cutCells } from '../book/make/cut.ts';
import { enter, type Entry, type Unread } from '../book/make/enter.ts';
import type { Region } from '../book/make/growing.ts';
import { addressAt } from '../book/look.ts';
import { shownText } from '../check/shown.ts';
import { faultIn } from '../files/in/known.ts';
import { joinTable, readTable, split } from '../files/table.ts';
import { done, refused, type Context, type Outcome } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegion, selectedRegions, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

/**
 * Takes the selected block for copying or cutting, and gives it as tab-separated text of what is
 * shown. A cut moves nothing until it is pasted.
 */
export function take(context: Context, how: 'copy' | 'cut'): string {
  const { book, engine, session } = context;
  const regions = selectedRegions(context);
  const { sheet, top, left, height, width } = selectedRegion(context);
  const told = ({ top: first, height: count }: Region) =>
    Array.from({ length: count }, (_, i) =>
      Array.from({ length: width }, (_, j) =>
        shownText(book.document, engine, { sheet, row: first + i, column: left + j }),
      ),
    );
  const stacked = regions.every((one) => one.left === left && one.width === width);
  if (how === 'copy' && regions.length > 1 && stacked) {
    // Pieces with other rows between them are copied as what they show.
    session.hold(null);
    return joinTable(regions.toSorted((a, b) => a.top - b.top).flatMap(told));
  }
  const text = joinTable(told({ sheet, top, left, height, width }));
  const block = {
    from: { row: top, column: left },
    to: { row: top + height - 1, column: left + width - 1 },
  };
  session.hold({ text, sheet, block, how });
  return text;
}

/**
 * Pastes at the selection. What was copied here keeps formulas, formats and roles; text from
 * elsewhere is read cell by cell, as if typed. `values` are the same cells as the other program
 * shows them, where it gave that too: they stand in for formulas that nothing here works out.
 */
export function paste(
  context: Context,
  text: string,
  what: 'all' | 'contents' | 'values' = 'all',
  values: Shown = [],
): Outcome {
  const { clip } = context.session.state;
  const ours =
    clip !== null && sameText(clip.text, text) && context.book.document.sheet(clip.sheet);
  if (!ours || what === 'values') return pasteText(context, text, values);
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

function pasteText(context: Context, text: string, values: Shown): Outcome {
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
  const known = strangeIn(context, entries, target, single ? repeated(values, rows) : values);
  const entered = enter(context.book.document, context.means, known.entries, {
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
  const say = pasted(known.strange, entered.unread);
  return say === '' ? done : { ok: true, say };
}

/** One value that goes to every cell of the selection. */
function repeated([[only = ''] = []]: Shown, rows: Shown): Shown {
  return rows.map((row) => row.map(() => only));
}

type Shown = readonly (readonly string[])[];

/** A formula that nothing here works out, and whether what it showed stands in its place. */
interface Strange {
  readonly entry: Entry;
  readonly fault: string;
  readonly isKept: boolean;
}

function strangeIn(
  { book, means }: Context,
  entries: readonly Entry[],
  { top, left }: Region,
  values: Shown,
): { readonly entries: readonly Entry[]; readonly strange: readonly Strange[] } {
  const sheets = new Set(book.document.sheets.map((one) => one.properties.name.toLowerCase()));
  const strange: Strange[] = [];
  const taken = entries.map((entry): Entry => {
    if (!entry.text.startsWith('=')) return entry;
    const fault = faultIn(entry.text, (name) => means.isFunction(name), sheets);
    if (fault === undefined) return entry;
    const value = values[entry.row - top]?.[entry.column - left] ?? '';
    const isKept = value !== '' && !value.startsWith('=');
    strange.push({ entry, fault, isKept });
    return isKept ? { ...entry, text: value } : entry;
  });
  return { entries: taken, strange };
}

/** What became of a paste where not all of it could be taken; empty where it could. */
function pasted(strange: readonly Strange[], unread: readonly Unread[]): string {
  const { keptValues, noValues, leftAsBefore } = words.commands;
  const isUnread = ({ row, column }: Entry) =>
    unread.some((one) => one.row === row && one.column === column);
  const tell = (
    all: readonly Strange[],
    say: (count: number, address: string, fault: string) => string,
  ) => (all[0] ? [say(all.length, addressAt(all[0].entry), all[0].fault)] : []);
  const [first] = unread;
  return [
    ...(first
      ? [leftAsBefore(unread.length, addressAt(first), first.text.slice(0, 40), first.reason)]
      : []),
    ...tell(
      strange.filter(({ isKept }) => isKept),
      keptValues,
    ),
    ...tell(
      strange.filter(({ isKept, entry }) => !isKept && !isUnread(entry)),
      noValues,
    ),
  ].join(' ');
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
