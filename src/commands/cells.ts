import { describeCells, setQuantity, setTarget, type CellPatch } from '../book/make/properties.ts';
import { cellAtSpot } from '../book/look.ts';
import type { Format, QuantityName, Role } from '../book/types.ts';
import { done, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { selectedRegions, sheetInView } from './selected.ts';

type FormatPatch = { readonly [Key in keyof Format]?: Format[Key] | null };

/** How the selected cells are written; null goes back to what the quantity has. */
export const format: Command<FormatPatch> = {
  id: 'cells.format',
  name: 'How it is written',
  group: 'cells',
  keys: ['Ctrl+1'],
  search: ['number format', 'decimals', 'unit', 'align', 'bold'],
  run: (context, patch) => describe(context, { format: patch }, 'Change how it is written'),
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

export const bold = flip('bold', 'Bold', 'Ctrl+B');
export const italic = flip('italic', 'Italic', 'Ctrl+I');

/** A note on the selected cell; an empty one takes it away. */
export const note: Command<{ readonly note: string }> = {
  id: 'cells.note',
  name: 'Note on a cell',
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
      describeCells(context.book.document, context.means, [region], patch, 'Change a note'),
    );
  },
};

/** What the selected cells measure; null leaves it to what is typed. */
export const quantity: Command<{ readonly quantity: QuantityName | null }> = {
  id: 'cells.quantity',
  name: 'What a cell measures',
  group: 'cells',
  search: ['unit', 'quantity', 'type'],
  run: (context, args) =>
    carryOut(
      context,
      setQuantity(context.book.document, context.means, selectedRegions(context), args.quantity),
    ),
};

const roles: readonly (readonly [Role, string])[] = [
  ['reading', 'Mark as a reading'],
  ['choice', 'Mark as a choice'],
  ['given', 'Mark as given'],
  ['answer', 'Mark as an answer'],
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
    name: 'Mark as a result',
    group: 'cells',
    search: ['role'],
    run: (context) => describe(context, { role: null }, 'Mark as a result'),
  },
];

/** What the selected cell should come to: text or a formula, empty for nothing. */
export const target: Command<{ readonly text: string }> = {
  id: 'cells.target',
  name: 'What a cell should come to',
  group: 'cells',
  search: ['wanted', 'goal'],
  run(context, { text }) {
    const spot = { sheet: sheetInView(context).id, ...context.session.state.selection.focus };
    return carryOut(context, setTarget(context.book.document, context.means, spot, text));
  },
};
