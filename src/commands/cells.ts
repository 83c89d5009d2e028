import { describeCells, setQuantity, setTarget, type CellPatch } from '../book/make/properties.ts';
import { cellAtSpot } from '../book/look.ts';
import type { Format, QuantityName, Role } from '../book/types.ts';
import { done, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegions, sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

type FormatPatch = { readonly [Key in keyof Format]?: Format[Key] | null };

/** How the selected cells are written; null goes back to what the quantity has. */
export const format: Command<FormatPatch> = {
  id: 'cells.format',
  name: words.commands.numberFormat,
  group: 'cells',
  keys: ['Ctrl+1'],
  search: ['number format', 'decimals', 'unit', 'align', 'bold'],
  run: (context, patch) => describe(context, { format: patch }, words.commands.changeNumberFormat),
};

const describe = (context: Parameters<Command['run']>[0], patch: CellPatch, label: string) =>
  carryOut(
    context,
    describeCells(context.book.document, context.means, selectedRegions(context), patch, label),
  );

const flip = (key: 'bold' | 'italic', name: string, keys: string): Command => ({
  id: `cells.${key}`,
  name,
  group: 'cells',
  keys: [keys],
  run(context) {
    const { focus } = context.session.state.selection;
    const spot = { sheet: sheetInView(context).id, ...focus };
    const now = cellAtSpot(context.book.document, spot)?.format?.[key] === true;
    return describe(context, { format: { [key]: now ? null : true } }, name);
  },
});

export const bold = flip('bold', words.commands.bold, 'Ctrl+B');
export const italic = flip('italic', words.commands.italic, 'Ctrl+I');

/** A note on the selected cell; an empty one takes it away. */
export const note: Command<{ readonly note: string }> = {
  id: 'cells.note',
  name: words.commands.note,
  group: 'cells',
  keys: ['Shift+F2'],
  search: ['comment', 'remark'],
  run(context, { note: text }) {
    const { focus } = context.session.state.selection;
    const sheet = sheetInView(context).id;
    const before = cellAtSpot(context.book.document, { sheet, ...focus })?.note ?? '';
    if (before === text.trim()) return done;
    const region = { sheet, top: focus.row, left: focus.column, height: 1, width: 1 };
    const patch = { note: text.trim() === '' ? null : text.trim() };
    return carryOut(
      context,
      describeCells(
        context.book.document,
        context.means,
        [region],
        patch,
        words.commands.changeNote,
      ),
    );
  },
};

/** What the selected cells measure; null leaves it to what is typed. */
export const quantity: Command<{ readonly quantity: QuantityName | null }> = {
  id: 'cells.quantity',
  name: words.commands.quantity,
  group: 'cells',
  search: ['unit', 'quantity', 'type'],
  run: (context, args) =>
    carryOut(
      context,
      setQuantity(context.book.document, context.means, selectedRegions(context), args.quantity),
    ),
};

const roles: readonly (readonly [Role, string])[] = [
  ['reading', words.commands.markReading],
  ['choice', words.commands.markChoice],
  ['given', words.commands.markGiven],
  ['answer', words.commands.markAnswer],
];

export const roleCommands: readonly Command[] = [
  ...roles.map(([role, name]): Command => ({
    id: `cells.role.${role}`,
    name,
    group: 'cells',
    search: ['role'],
    run: (context) => describe(context, { role }, name),
  })),
  {
    id: 'cells.role.none',
    name: words.commands.markResult,
    group: 'cells',
    search: ['role'],
    run: (context) => describe(context, { role: null }, words.commands.markResult),
  },
];

/** What the selected cell should come to: text or a formula, empty for nothing. */
export const target: Command<{ readonly text: string }> = {
  id: 'cells.target',
  name: words.commands.target,
  group: 'cells',
  search: ['wanted', 'goal'],
  run(context, { text }) {
    const spot = { sheet: sheetInView(context).id, ...context.session.state.selection.focus };
    return carryOut(context, setTarget(context.book.document, context.means, spot, text));
  },
};
