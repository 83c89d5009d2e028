import { lightQuantities, type QuantityName } from '../../../functions/quantities/names.ts';
import type { Value } from '../../../functions/values.ts';
import { isError, type FunctionError } from '../../../functions/values.ts';
import EVENNESS from '../../../functions/stops/EVENNESS.ts';
import FAVERAGE from '../../../functions/stops/FAVERAGE.ts';
import FCOMBINE from '../../../functions/stops/FCOMBINE.ts';
import FSPREAD from '../../../functions/stops/FSPREAD.ts';
import SPREAD from '../../../functions/stops/SPREAD.ts';
import { cellAtSpot } from '../../book/look.ts';
import type { Role } from '../../book/types.ts';
import type { SheetSelection } from '../../session/session.ts';
import type { Fact, FootView } from '../shown.ts';
import type { Look } from './look.ts';
import { say } from './show.ts';
import { words } from '../../words/words.ts';

/** A selection larger than this is not added up at every move of the pointer. */
const most = 20_000;

/** Things of which a sum means something. */
const adding: ReadonlySet<QuantityName> = new Set<QuantityName>([
  ...lightQuantities,
  ...(['length', 'area', 'time', 'power', 'apparentPower', 'current', 'energy'] as const),
  ...(['charge', 'weight', 'duration', 'money', 'number', 'density'] as const),
]);

interface Numbers {
  /** Lux among f-numbers: nothing of them can be added up. */
  readonly mixed: boolean;
  readonly quantity: QuantityName | undefined;
  readonly values: readonly number[];
  readonly count: number;
}

/** The numbers selected, if they are of one quantity. */
function numbersIn(look: Look, sheet: string, { ranges }: SheetSelection): Numbers {
  const { engine, document } = look;
  const extent = document.sheet(sheet);
  const values: number[] = [];
  const quantities = new Set<QuantityName | undefined>();
  let count = 0;
  for (const { from, to } of ranges) {
    const lastRow = Math.min(to.row, (extent?.rows.length ?? 0) - 1);
    const lastColumn = Math.min(to.column, (extent?.columns.length ?? 0) - 1);
    for (let row = from.row; row <= lastRow; row += 1)
      for (let column = from.column; column <= lastColumn && count < most; column += 1) {
        const value = engine.valueOf({ sheet, row, column });
        if (value === null || isError(value)) continue;
        count += 1;
        if (typeof value !== 'number') continue;
        values.push(value);
        quantities.add(engine.quantityOf({ sheet, row, column }));
      }
  }
  const [quantity] = [...quantities];
  return { mixed: quantities.size > 1, quantity, values, count };
}

type Amount = readonly [label: string, quantity: QuantityName, value: Value | FunctionError];

function lightAmounts(quantity: QuantityName, values: readonly number[]): readonly Amount[] {
  const sum = values.reduce((total, value) => total + value, 0);
  return [
    [words.page.sum, quantity, sum],
    [words.page.averageInLight, quantity, sum / values.length],
    [words.page.spread, 'stops', SPREAD.run(values)],
    [words.page.lowestOverMean, 'ratio', EVENNESS.run(values)],
  ];
}

function readingAmounts(values: readonly number[]): readonly Amount[] {
  return [
    [words.page.combined, 'fNumber', FCOMBINE.run(values)],
    [words.page.averageInLight, 'fNumber', FAVERAGE.run(values)],
    [words.page.spread, 'stops', FSPREAD.run(values)],
  ];
}

function amounts({ quantity = 'number', values }: Numbers, volts: number): readonly Amount[] {
  if (quantity === 'fNumber') return readingAmounts(values);
  if (lightQuantities.some((light) => light === quantity)) return lightAmounts(quantity, values);
  const sum = values.reduce((total, value) => total + value, 0);
  if (quantity === 'power' || quantity === 'apparentPower')
    return [
      [words.page.sum, quantity, sum],
      // Nobody said how much more than its watts a load draws: only tungsten draws no more.
      [
        quantity === 'power' ? words.page.atVoltsPowerFactor(volts) : words.page.atVolts(volts),
        'current',
        sum / volts,
      ],
    ];
  if (adding.has(quantity)) return [[words.page.sum, quantity, sum]];
  return [
    [words.page.lowest, quantity, Math.min(...values)],
    [words.page.highest, quantity, Math.max(...values)],
  ];
}

/** What the selection amounts to, said the way the trade adds such things up. */
export function footFacts(look: Look, sheet: string, selection: SheetSelection): readonly Fact[] {
  const numbers = numbersIn(look, sheet, selection);
  if (numbers.count < 2) return [];
  if (numbers.values.length < 2) return [{ label: words.page.cells, text: String(numbers.count) }];
  const count = { label: words.page.numbers, text: String(numbers.values.length) };
  if (numbers.mixed) return [{ ...count, text: words.page.ofKinds(count.text) }];
  const { writing, document } = look;
  return [
    ...amounts(numbers, document.settings.mainsVolts).map(([label, quantity, value]) => ({
      label,
      // A spread has no direction.
      text: say(value, quantity, writing).replace(/^\+/, ''),
    })),
    count,
  ];
}

const order: readonly Role[] = ['reading', 'choice', 'given', 'answer'];

/** Which marks the sheet uses, for the legend. */
export function rolesOn({ document }: Look, id: string): readonly Role[] {
  const sheet = document.sheet(id);
  if (!sheet) return [];
  const used = new Set<Role | undefined>();
  for (const { cell } of sheet.cells()) used.add(cell.role);
  for (const column of sheet.columns.ids) used.add(sheet.columns.properties(column)?.role);
  return order.filter((role) => used.has(role));
}

export function footView(
  look: Look,
  sheet: string,
  selection: SheetSelection,
  roles: readonly Role[],
): FootView {
  const cell = cellAtSpot(look.document, { sheet, ...selection.focus });
  return {
    facts: footFacts(look, sheet, selection),
    roles,
    hint: cell?.role === 'reading' ? words.page.selectReadings : '',
  };
}
