import { byName } from '../../functions/index.ts';
import type { AnyDefinition, Parameter } from '../../functions/define.ts';
import { quantityNames, type QuantityName } from '../../functions/quantities/names.ts';
import { cellAt, dependentsOf, placeAt, spotOf } from '../book/look.ts';
import type { Formula } from '../book/types.ts';
import type { Call, Id, Node } from '../formula/types.ts';
import { argumentTexts } from './argumenttexts.ts';
import { quantityOf, work } from './evaluate.ts';
import type { Model } from './model.ts';
import { blockOf, type Placed } from './placed.ts';
import { remarksOn } from './remarks.ts';
import type { CellBlock, CellPlace, CellValue, ExplainedArgument, Explanation } from './types.ts';

/** Why a cell is what it is: its function with what went in, what it reads, and who reads it. */
export function explainCell(model: Model, spot: CellPlace, value: CellValue): Explanation {
  const { document } = model;
  const place = placeAt(document, spot);
  const content = place && cellAt(document, place)?.content;
  const dependents = place ? dependentsOf(document, place) : [];
  const about = {
    value,
    quantity: model.quantities.of(spot),
    dependents: dependents
      .filter(({ kind }) => kind === 'formula')
      .flatMap(({ place: reader }) => spotOf(document, reader) ?? [])
      .toSorted((a, b) => a.row - b.row || a.column - b.column),
  };
  if (content?.kind !== 'formula') return { ...about, precedents: [], remarks: [] };
  const { formula } = content;
  const references = model.resolver.references(formula);
  const { tree } = formula.shape;
  const call = outermost(tree);
  return {
    ...about,
    ...(call && { call: explainCall(model, call, formula, references, spot.sheet) }),
    precedents: blocksOf(model, references),
    remarks: remarksOn(
      tree,
      (node) => work(model, node, references, spot.sheet),
      model.settingsOn(spot.sheet),
    ),
  };
}

export interface LibraryCall {
  readonly definition: AnyDefinition;
  readonly call: Call;
}

/** The first function of the library from the outside in: of `ROUND(STOPS(B2,C2),1)`, STOPS. */
export function outermost(node: Node): LibraryCall | undefined {
  if (node.kind === 'call') {
    const definition = byName.get(node.name);
    return definition ? { definition, call: node } : firstOf(node.arguments);
  }
  if (node.kind === 'binary') return firstOf([node.left, node.right]);
  return node.kind === 'sign' || node.kind === 'percent' ? outermost(node.argument) : undefined;
}

function firstOf(nodes: readonly (Node | null)[]): LibraryCall | undefined {
  for (const node of nodes) {
    const found = node && outermost(node);
    if (found) return found;
  }
  return undefined;
}

function explainCall(
  model: Model,
  { definition, call }: LibraryCall,
  formula: Formula,
  references: readonly Placed[],
  own: Id,
): NonNullable<Explanation['call']> {
  const { parameters } = definition;
  const texts = argumentTexts(model.document, call, formula, own);
  const count = Math.max(parameters.length, call.arguments.length);
  const args = Array.from({ length: count }, (_, index): ExplainedArgument => {
    const parameter = parameters[Math.min(index, parameters.length - 1)];
    const node = call.arguments[index];
    const name = parameter?.name ?? String(index + 1);
    if (!node) return leftOut(model, name, parameter, own);
    const placed = node.kind === 'reference' ? references[node.slot] : undefined;
    const block = placed && blockOf(placed, model.document);
    return {
      name,
      quantity: quantityOf(model, node, references) ?? nameOf(parameter),
      text: texts[index] ?? '',
      value: block && isLarge(block) ? undefined : work(model, node, references, own),
      ...(block && { block }),
    };
  });
  return { definition, args };
}

function leftOut(
  model: Model,
  name: string,
  parameter: Parameter | undefined,
  own: Id,
): ExplainedArgument {
  const fromBook = parameter?.fromBook && model.settingsOn(own).book[parameter.fromBook];
  const value = fromBook ?? parameter?.default;
  return { name, quantity: nameOf(parameter), text: '', value, leftOut: true };
}

function nameOf(parameter: Parameter | undefined): QuantityName | undefined {
  return quantityNames.find((quantity) => quantity === parameter?.quantity);
}

function isLarge({ from, to }: CellBlock): boolean {
  return from.row !== to.row || from.column !== to.column;
}

function blocksOf(model: Model, references: readonly Placed[]): readonly CellBlock[] {
  const blocks = new Map<string, CellBlock>();
  for (const placed of references) {
    if (placed.kind === 'expression') {
      for (const block of blocksOf(model, placed.references)) blocks.set(keyOf(block), block);
    }
    const block = blockOf(placed, model.document);
    if (block) blocks.set(keyOf(block), block);
  }
  return [...blocks.values()];
}

function keyOf({ sheet, from, to }: CellBlock): string {
  return [sheet, from.row, from.column, to.row, to.column].join(' ');
}
