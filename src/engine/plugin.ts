import {
  CellError,
  EmptyValue,
  FunctionArgumentType,
  FunctionPlugin,
  SimpleRangeValue,
  type HyperFormula,
  type ImplementedFunctions,
  type SimpleCellAddress,
} from 'hyperformula';
import { call, type CallSettings } from '../../functions/call.ts';
import type { AnyDefinition, Parameter } from '../../functions/define.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import {
  blank,
  isError,
  type Argument,
  type Blank,
  type FunctionError,
  type Measured,
  type RangeArgument,
  type RangeCell,
  type Value,
} from '../../functions/values.ts';
import { fromCellError, toCellError } from './errors.ts';

/** What our functions need to know while a book calculates; HyperFormula hands it on as `context`. */
export interface CalculatorContext {
  /** What a sheet's functions fall back on. */
  settingsFor(sheet: number): CallSettings;
  readonly clock: (() => Date) | undefined;
  readonly chance: (() => number) | undefined;
  /** A token for a cell, which stands in messages until they are read: see marks.ts. */
  addressFor(cell: SimpleCellAddress): string;
  /** What a cell measures, for functions that take readings of several kinds. */
  quantityAt(cell: SimpleCellAddress): QuantityName | undefined;
}

/** Part of a formula as HyperFormula's parser leaves it. */
export type Ast = Parameters<HyperFormula['evaluator']['runAndForget']>[0];
type Call = Extract<Ast, { readonly procedureName: string }>;

export interface State {
  readonly formulaAddress: SimpleCellAddress;
  readonly arraysFlag: boolean;
}

type Answer = Value | CellError | SimpleRangeValue;

/** One plugin with a method for each function of the library. */
export function pluginFor(definitions: readonly AnyDefinition[]): typeof FunctionPlugin {
  class LightFunctions extends FunctionPlugin {
    static override implementedFunctions: ImplementedFunctions = Object.fromEntries(
      definitions.map((definition) => [definition.name, metadata(definition)]),
    );

    answer(definition: AnyDefinition, ast: Call, state: State): Answer {
      const values = ast.args.map((argument) => this.evaluateAst(argument, state as never));
      if (!values.some((value, index) => isList(value, parameterAt(definition, index))))
        return this.work(definition, ast, values, state);
      // A range where one value is wanted means one call for each cell, as SUMPRODUCT wants it.
      return this.runFunction(
        ast.args,
        state as never,
        metadata(definition),
        (...values: unknown[]) => this.work(definition, ast, values, state),
      ) as Answer;
    }

    private work(
      definition: AnyDefinition,
      ast: Call,
      values: readonly unknown[],
      state: State,
    ): Value | CellError {
      const context = this.config.context as CalculatorContext;
      // Values beyond the arguments are those left out, which HyperFormula fills up.
      const args = ast.args.map((argument, index) =>
        argumentOf(argument, values[index], parameterAt(definition, index), state, context),
      );
      return handBack(call(definition, args, context.settingsFor(state.formulaAddress.sheet)));
    }
  }
  for (const definition of definitions) {
    Object.defineProperty(LightFunctions.prototype, definition.name, {
      value(this: LightFunctions, ast: Call, state: State) {
        return this.answer(definition, ast, state);
      },
    });
  }
  return LightFunctions;
}

function isList(value: unknown, parameter: Parameter | undefined): boolean {
  return value instanceof SimpleRangeValue && parameter?.range !== true;
}

function parameterAt({ parameters }: AnyDefinition, index: number): Parameter | undefined {
  return parameters[Math.min(index, parameters.length - 1)];
}

function metadata({ name, parameters }: AnyDefinition): ImplementedFunctions[string] {
  const repeats = parameters.at(-1)?.repeats === true;
  return {
    method: name,
    parameters: parameters.map(hyperFormulaParameter),
    ...(repeats ? { repeatLastArgs: 1 } : {}),
  };
}

/** HyperFormula only tells ranges from single values; `call` checks the rest, in our words. */
function hyperFormulaParameter(parameter: Parameter) {
  return {
    argumentType: parameter.range ? FunctionArgumentType.ANY : FunctionArgumentType.SCALAR,
    optionalArg: true,
  };
}

function handBack(result: Value | FunctionError): Value | CellError {
  return isError(result) ? toCellError(result) : result;
}

function argumentOf(
  ast: Ast,
  value: unknown,
  parameter: Parameter | undefined,
  state: State,
  context: CalculatorContext,
): Argument {
  if (typeof value === 'number') {
    if (!parameter?.kinds) return value;
    const cell = cellOf(ast, state);
    return cell ? measured(value, cell, context) : value;
  }
  if (isA(ast, 'EMPTY')) return undefined;
  if (value === EmptyValue) {
    const at = placeOf(ast, state, context);
    return at === undefined ? blank : { blank: true, at };
  }
  return value instanceof SimpleRangeValue ? rangeOf(value, parameter, context) : scalarOf(value);
}

/** A number from a cell that knows what it measures. */
function measured(
  value: number,
  cell: SimpleCellAddress,
  context: CalculatorContext,
): number | Measured {
  const quantity = context.quantityAt(cell);
  return quantity === undefined ? value : { measured: quantity, value };
}

function scalarOf(value: unknown): Value | FunctionError {
  if (value instanceof CellError) return fromCellError(value);
  return typeof value === 'object' ? (value as { val: number }).val : (value as Value);
}

/** Where an argument points, if it is a single cell. */
function placeOf(ast: Ast, state: State, context: CalculatorContext): string | undefined {
  if ('expression' in ast) return placeOf(ast.expression, state, context);
  const cell = cellOf(ast, state);
  return cell && context.addressFor(cell);
}

function cellOf(ast: Ast, state: State): SimpleCellAddress | undefined {
  return 'reference' in ast && isA(ast, 'CELL_REFERENCE')
    ? ast.reference.toSimpleCellAddress(state.formulaAddress)
    : undefined;
}

/** The list of types is not exported. */
function isA(ast: Ast, type: 'EMPTY' | 'CELL_REFERENCE'): boolean {
  return String(ast.type) === type;
}

function rangeOf(
  range: SimpleRangeValue,
  parameter: Parameter | undefined,
  context: CalculatorContext,
): RangeArgument {
  const start = range.range?.start;
  const cells: RangeCell[] = [];
  range.data.forEach((row, down) => {
    row.forEach((value, across) => {
      if (start === undefined) {
        cells.push({ value: value === EmptyValue ? blank : scalarOf(value) });
        return;
      }
      const cell = { sheet: start.sheet, row: start.row + down, col: start.col + across };
      cells.push(new CellOfRange(value, cell, parameter, context));
    });
  });
  return { cells, width: range.width() };
}

/** Says where it is only when asked: most ranges are read without a word about their cells. */
class CellOfRange implements RangeCell {
  readonly value: RangeCell['value'];
  readonly #cell: SimpleCellAddress;
  readonly #context: CalculatorContext;

  constructor(
    value: unknown,
    cell: SimpleCellAddress,
    parameter: Parameter | undefined,
    context: CalculatorContext,
  ) {
    this.#cell = cell;
    this.#context = context;
    if (value === EmptyValue) this.value = new BlankOfRange(this);
    else if (parameter?.kinds && typeof value === 'number')
      this.value = measured(value, cell, context);
    else this.value = scalarOf(value);
  }

  get at(): string {
    return this.#context.addressFor(this.#cell);
  }
}

class BlankOfRange implements Blank {
  readonly blank = true;
  readonly #cell: { readonly at: string };

  constructor(cell: { readonly at: string }) {
    this.#cell = cell;
  }

  get at(): string {
    return this.#cell.at;
  }
}
