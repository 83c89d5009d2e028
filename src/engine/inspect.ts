import { cellAtSpot, placeAt, quantityAt } from '../book/look.ts';
import type { Formula } from '../book/types.ts';
import type { Id, Node } from '../formula/types.ts';
import { partText } from './argumenttexts.ts';
import { work } from './evaluate.ts';
import { outermost } from './explain.ts';
import type { Finding } from './findings.ts';
import { fits } from './fits.ts';
import { kindOf, type Reading } from './infer.ts';
import type { Kind } from './kinds.ts';
import { mayBeByConstant } from './loose.ts';
import type { Model } from './model.ts';
import { blockOf, type Placed } from './placed.ts';
import { readValue } from './read.ts';
import { remarksOn } from './remarks.ts';
import type { CellBlock, CellPlace, CellValue, Engine } from './types.ts';

const models = new WeakMap<Engine, Model>();

/** Lets an engine be inspected. */
export function inspectable(engine: Engine, model: Model): Engine {
  models.set(engine, model);
  return engine;
}

/** What does not go together in a cell: in its formula, in what it measures, in its target. */
export function findingsIn(engine: Engine, spot: CellPlace): readonly Finding[] {
  const model = models.get(engine);
  const cell = model && cellAtSpot(model.document, spot);
  if (!cell) return [];
  const findings: Finding[] = [];
  const place = placeAt(model.document, spot);
  const set = place && quantityAt(model.document, place);
  const { content, target, yields } = cell;
  if (content.kind === 'formula') {
    const { reading, tree } = readingOf(model, content.formula, spot, findings);
    const given = kindOf(tree, reading);
    const isOther = set !== undefined && given !== undefined && !fits(set, given);
    if (isOther && !mayBeByConstant(set, given, tree, kindIn(reading)))
      findings.push({ about: 'result', set, given });
  }
  if (typeof target === 'object') {
    const { reading, tree } = readingOf(model, target, spot, findings);
    const given = kindOf(tree, reading);
    // A reading typed with its own unit says what it is by itself: it may be of another kind.
    if (set !== undefined && yields !== true && given !== undefined && !fits(set, given))
      findings.push({ about: 'target', set, given });
  }
  return findings;
}

const kindIn =
  ({ references, ask }: Reading) =>
  (node: Node): Kind =>
    kindOf(node, { references, ask });

function readingOf(
  model: Model,
  formula: Formula,
  { sheet }: CellPlace,
  findings: Finding[],
): { readonly reading: Reading; readonly tree: Node } {
  const reading = {
    references: model.resolver.references(formula),
    ask: model.quantities.ask,
    hear: (finding: Finding) => void findings.push(finding),
    textOf: (node: Node) => partText(model.document, node, formula, sheet),
  };
  return { reading, tree: formula.shape.tree };
}

/** Arguments of a cell's formula outside what a standard recommends, in words. */
export function standardRemarks(engine: Engine, spot: CellPlace): readonly string[] {
  const model = models.get(engine);
  const content = model && cellAtSpot(model.document, spot)?.content;
  if (!model || content?.kind !== 'formula') return [];
  const { formula } = content;
  const references = model.resolver.references(formula);
  return remarksOn(
    formula.shape.tree,
    (part) => valueOf(model, part, references, spot.sheet),
    model.settingsOn(spot.sheet),
  );
}

/** What a part of a formula comes to; the usual cases without a calculation. */
function valueOf(model: Model, part: Node, references: readonly Placed[], own: Id): CellValue {
  if (part.kind === 'number' || part.kind === 'text') return part.value;
  const placed = part.kind === 'reference' ? references[part.slot] : undefined;
  if (placed?.kind !== 'cell') return work(model, part, references, own);
  const { row, column } = placed.at;
  const address = model.address({ sheet: placed.sheet, row: row.index, column: column.index });
  if (!address) return null;
  return readValue(model, model.calculator.getCellValue(address), undefined, own);
}

/** The outermost function of the library in a cell, its arguments worked out only when asked for. */
export interface OuterCall {
  /** The cells that each argument points at, where it is a reference. */
  readonly blocks: readonly (CellBlock | undefined)[];
  /** What the parameter of this name was given; undefined where there is none or it was left out. */
  given(parameter: string): CellValue | undefined;
}

export function outerCall(engine: Engine, spot: CellPlace): OuterCall | undefined {
  const model = models.get(engine);
  if (!model) return undefined;
  const content = cellAtSpot(model.document, spot)?.content;
  if (content?.kind !== 'formula') return undefined;
  const found = outermost(content.formula.shape.tree);
  if (!found) return undefined;
  const { call, definition } = found;
  const references = model.resolver.references(content.formula);
  const placed = (node: Node | null) =>
    node?.kind === 'reference' ? references[node.slot] : undefined;
  return {
    blocks: call.arguments.map((node) => {
      const at = placed(node);
      return at && blockOf(at, model.document);
    }),
    given(parameter) {
      const node =
        call.arguments[definition.parameters.findIndex(({ name }) => name === parameter)];
      return node ? valueOf(model, node, references, spot.sheet) : undefined;
    },
  };
}
