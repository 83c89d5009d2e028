import { inEveryUnit } from '../../../functions/quantities/everyUnit.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { isError } from '../../../functions/values.ts';
import { cellAtSpot, formulaText, typedText, placeAt } from '../../book/look.ts';
import type { Cell } from '../../book/types.ts';
import type { CellBlock, CellPlace, ExplainedArgument, Explanation } from '../../engine/types.ts';
import { spelled } from '../kit/spelled.ts';
import type { Fact, Link, Links, SlipView, Target, Why } from '../shown.ts';
import { addressFrom, blockAddress } from './address.ts';
import { columnCaption, rowCaption } from '../../check/captions.ts';
import type { Look } from './look.ts';
import { shapeOf } from './points.ts';
import { rowFacts } from './row-facts.ts';
import { say, showCell } from './show.ts';
import { targetFacts } from './target.ts';
import { workedFormula } from './worked.ts';
import { words } from '../../words/words.ts';

/** Units that say more of a calculated number than the one it is shown in; a handful at most. */
const mostUnits = 4;
/** Where a cell comes from or goes to. */
const mostLinks = 12;

export function slipView(look: Look, at: CellPlace): SlipView {
  const { document, engine } = look;
  const { sheet, row, column } = at;
  const cell = cellAtSpot(document, at);
  const explanation = engine.explain(at);
  const { value } = explanation;
  const quantity = engine.quantityOf(at) ?? explanation.quantity;
  const shown = showCell(look, at);
  const isNumber = typeof value === 'number';
  const shape = quantity === 'verdict' ? shapeOf(value) : undefined;
  const why = whyOf(look, explanation);
  return {
    address: blockAddress(at, at, 'cells'),
    role: cell?.role ?? without(cell),
    title: rowCaption(document, sheet, row, column),
    caption: columnCaption(document, sheet, row, column),
    value: shown,
    ...(shape && { shape }),
    facts: [
      ...targetFacts(look, at, cell, quantity),
      ...typedFact(look, at, cell, shown.text),
      ...(isNumber ? unitFacts(look, quantity, value) : []),
      ...receptorFacts(look, cell),
      ...nameFact(look, at),
    ],
    row: rowFacts(look, at),
    ...(why && { why }),
    comesFrom: first(explanation.precedents, (block) => linkTo(look, sheet, targetOf(block))),
    goesTo: first(explanation.dependents, (place) =>
      linkTo(look, sheet, { sheet: place.sheet, from: place }),
    ),
    remarks: look.remarksAt(at),
    note: cell?.note ?? '',
    ...(cell?.photos && { photos: cell.photos }),
  };
}

/** A key that ten thousand formulas look at is not called by all of them each time it is selected. */
const first = <Item>(items: readonly Item[], link: (item: Item) => Link): Links => ({
  links: items.slice(0, mostLinks).map(link),
  more: Math.max(0, items.length - mostLinks),
});

/** What a cell without a role is: only words are neither worked out nor counted with. */
function without(cell: Cell | undefined): SlipView['role'] {
  const kind = cell?.content.kind ?? 'blank';
  if (kind === 'blank') return 'blank';
  return kind === 'text' ? 'words' : 'result';
}

function typedFact(look: Look, at: CellPlace, cell: Cell | undefined, shown: string): Fact[] {
  const place = placeAt(look.document, at);
  const typed = place ? typedText(look.document, place) : '';
  const isFormula = cell?.content.kind === 'formula';
  return typed === '' || typed === spelled(shown) || isFormula
    ? []
    : [{ label: words.slip.typed, text: typed }];
}

function unitFacts({ writing }: Look, quantity: QuantityName | undefined, value: number): Fact[] {
  if (quantity === undefined || quantity === 'number') return [];
  const [, ...others] = inEveryUnit(quantity, value, writing);
  const text = others
    .slice(0, mostUnits)
    .map((written) => written.text)
    .join(' · ');
  return text === '' ? [] : [{ label: words.slip.also, text }];
}

function receptorFacts({ document }: Look, cell: Cell | undefined): Fact[] {
  if (!cell?.receptor && !cell?.pointed && !cell?.taken) return [];
  const { domeConstant, flatConstant } = document.settings;
  const constant = cell.receptor === 'dome' ? domeConstant : flatConstant;
  const metered = cell.receptor ? `${cell.receptor}, C = ${constant}` : '';
  const { date = '', time = '', meter } = cell.taken ?? {};
  const said = [metered, cell.pointed, `${date} ${time}`.trim(), meter];
  return [{ label: words.slip.metered, text: said.filter(Boolean).join(', ') }];
}

function nameFact({ document }: Look, { sheet, row, column }: CellPlace): Fact[] {
  const address = `$${blockAddress({ row, column }, { row, column }, 'cells').replace(/(\d)/, '$$$1')}`;
  const called = document.names.filter(
    ({ formula }) => formulaText(document, formula, sheet) === `=${address}`,
  );
  return called.map(({ name }) => ({ label: words.slip.named, text: name }));
}

function whyOf(look: Look, { call, value }: Explanation): Why | undefined {
  if (!call) return undefined;
  const { definition, args } = call;
  return {
    function: definition.name,
    worked: isError(value) ? [] : workedFormula(definition, args, value, look.writing),
    summary: definition.summary,
    handed: args.filter((one) => one.value !== undefined).map((one) => handed(one, look.writing)),
  };
}

/** What the function was handed, by the name of its parameter. */
function handed(
  { name, value = null, quantity, text, leftOut }: ExplainedArgument,
  writing: WritingSettings,
): Fact {
  const from = leftOut ? words.slip.leftOut : text.replaceAll('$', '');
  return {
    label: [name.replaceAll('_', ' '), from].filter(Boolean).join(', '),
    text: isError(value) || value === null ? '–' : say(value, quantity, writing),
  };
}

const targetOf = ({ sheet, from, to }: CellBlock): Target => ({ sheet, from, to });

function linkTo(look: Look, from: string, target: Target): Link {
  const { document } = look;
  const { sheet } = target;
  const { row, column } = target.from;
  const named =
    columnCaption(document, sheet, row, column) || rowCaption(document, sheet, row, column);
  return { label: [addressFrom(document, from, target), named].filter(Boolean).join(' '), target };
}
