import { quantityNames } from '../../functions/quantities/names.ts';
import { readFormula } from '../formula/read.ts';
import type { Id, Node } from '../formula/types.ts';
import type { Model } from './model.ts';
import type { Placed } from './placed.ts';
import { readValue } from './read.ts';
import { remarksOn } from './remarks.ts';
import type { CellValue, Result } from './types.ts';

/** Works out a text that is in no cell, as seen from a sheet. */
export function evaluateText(model: Model, text: string, sheet: Id | undefined): Result {
  const own = model.home(sheet);
  const read = readFormula(text.startsWith('=') ? text : `=${text}`);
  if ('reason' in read) {
    return { value: { code: '#ERROR!', message: read.reason }, quantity: undefined, remarks: [] };
  }
  const references = model.resolver.written(read.references, own);
  const { tree } = read.shape;
  return {
    value: work(model, tree, references, own),
    quantity: quantityOf(model, tree, references),
    remarks: remarksOn(
      tree,
      (argument) => work(model, argument, references, own),
      model.settingsOn(own),
    ),
  };
}

/** The value of a formula or a part of one. */
export function work(model: Model, tree: Node, references: readonly Placed[], own: Id): CellValue {
  const number = model.number(own);
  if (number === undefined) throw new Error('The sheet is not in the book.');
  const text = model.writer.write(tree, references, own);
  const [value = null] = [model.calculator.calculateFormula(text, number)].flat(2);
  return readValue(model, value, undefined, own);
}

export function quantityOf(model: Model, tree: Node, references: readonly Placed[]) {
  const quantity = model.quantities.ofFormula(tree, references);
  return quantityNames.find((name) => name === quantity);
}
