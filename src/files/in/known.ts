import { addressAt } from '../../book/look.ts';
import { readFormula } from '../../formula/read.ts';
import type { Node } from '../../formula/types.ts';
import type { PlainBook, PlainCell } from '../plain/types.ts';
import type { Foreign } from './collected.ts';
import { words } from '../../words/words.ts';

/** More than this many are counted and not told one by one. */
const toldAtMost = 50;

/** Keeps the formulas that can be calculated here; of the others the values, each named. */
export function withKnownFormulas(
  { book, leftOut }: Foreign,
  isFunction: (name: string) => boolean,
): Foreign {
  const told: string[] = [];
  let untold = 0;
  const tell = (sentence: string) => {
    if (told.length < toldAtMost) told.push(sentence);
    else untold += 1;
  };
  const sheetNames = new Set(book.sheets.map(({ name }) => name.toLowerCase()));
  const faultOf = (formula: string) => faultIn(formula, isFunction, sheetNames);
  const sheets = book.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell): PlainCell => {
      const fault = cell.formula === undefined ? undefined : faultOf(cell.formula);
      if (fault === undefined) return cell;
      tell(words.files.formulaLeft(sheet.name, addressAt(cell), fault));
      const { formula: _formula, ...rest } = cell;
      return rest;
    }),
  }));
  const names = book.names.filter(({ name, formula }) => {
    const fault = faultOf(formula);
    if (fault !== undefined) tell(words.files.nameLeft(name, fault));
    return fault === undefined;
  });
  if (untold > 0) told.push(words.files.moreLeft(untold));
  const known: PlainBook = { ...book, sheets, names };
  return { book: known, leftOut: [...leftOut, ...told] };
}

/** Why a formula cannot be worked out here; undefined where it can. `sheets` are names in small letters. */
export function faultIn(
  formula: string,
  isFunction: (name: string) => boolean,
  sheets: ReadonlySet<string>,
): string | undefined {
  const read = readFormula(formula);
  if ('reason' in read) return read.reason;
  for (const reference of read.references) {
    if (reference.kind === 'name') continue;
    if (reference.sheet !== undefined && !sheets.has(reference.sheet.toLowerCase()))
      return words.files.noSheet(reference.sheet);
  }
  const unknown = unknownFunction(read.shape.tree, isFunction);
  return unknown === undefined ? undefined : words.files.noFunction(unknown);
}

function unknownFunction(node: Node, isFunction: (name: string) => boolean): string | undefined {
  const parts = partsOf(node);
  if (node.kind === 'call' && !isFunction(node.name)) return node.name;
  for (const part of parts) {
    const unknown = unknownFunction(part, isFunction);
    if (unknown !== undefined) return unknown;
  }
  return undefined;
}

function partsOf(node: Node): readonly Node[] {
  switch (node.kind) {
    case 'call':
      return node.arguments.filter((argument) => argument !== null);
    case 'sign':
    case 'percent':
      return [node.argument];
    case 'binary':
      return [node.left, node.right];
    case 'array':
      return node.rows.flat();
    default:
      return [];
  }
}
