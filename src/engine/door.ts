import {
  ArraySize,
  CellError,
  ErrorType,
  HyperFormula,
  SimpleRangeValue,
  type ConfigParams,
  type FunctionPlugin,
  type SimpleCellAddress,
} from 'hyperformula';
import { catalogue } from '../../functions/index.ts';
import { toCellError } from './errors.ts';
import { indexEdges } from './graph.ts';
import { fromWorld, HelperFunctions, mended } from './helpers.ts';
import { pluginFor, type CalculatorContext } from './plugin.ts';
import { oneValue, refusing } from './text.ts';

/** The only version whose insides were read and tried. */
const version = '3.5.0';

/** About sheets and formulas as HyperFormula sees them, not as people named and wrote them. */
const aboutItself = ['FORMULATEXT', 'SHEET', 'SHEETS', 'ADDRESS', 'HYPERLINK'];

let prepared: readonly string[] | undefined;

/**
 * Teaches HyperFormula our functions, once: its list of functions is one for all calculators.
 * Gives the names of all functions that a formula may use.
 */
export function prepare(): readonly string[] {
  prepared ??= register();
  return prepared;
}

function register(): readonly string[] {
  if (HyperFormula.version !== version)
    throw new Error(
      `Halfstop calculates with HyperFormula ${version}, not ${HyperFormula.version}.`,
    );
  const builtIn = new Set(HyperFormula.getRegisteredFunctionNames('enGB'));
  const taken = catalogue.filter(({ name }) => builtIn.has(name));
  if (taken.length > 0)
    throw new Error(`HyperFormula has its own ${taken.map(({ name }) => name).join(', ')}.`);
  for (const name of [...aboutItself, ...fromWorld, ...mended])
    HyperFormula.unregisterFunction(name);
  for (const plugin of [pluginFor(catalogue), HelperFunctions]) registerPlugin(plugin);
  mend(HyperFormula.buildEmpty(config));
  return HyperFormula.getRegisteredFunctionNames('enGB').filter(
    (name) => name !== refusing && !name.startsWith('HF.'),
  );
}

function registerPlugin(plugin: typeof FunctionPlugin): void {
  const names = Object.keys(plugin.implementedFunctions);
  const translations = Object.fromEntries(names.map((name) => [name, name]));
  HyperFormula.registerFunctionPlugin(plugin as never, { enGB: translations });
}

/** As in ISO 8601, and nothing else: `4:1` is a ratio and `1/50` a shutter time. */
const isoDate = /^(\d{4})-(\d{2})-(\d{2})(?:[ T](\d{2}):(\d{2})(?::(\d{2}))?)?$/;

const config: Partial<ConfigParams> = {
  licenseKey: 'gpl-v3',
  smartRounding: false,
  undoLimit: 0,
  maxRows: 1_048_576,
  maxColumns: 16_384,
  // `SUMPRODUCT((A1:A9>1)*B1:B9)` is understood; what remains a list at the end is refused in `mend`.
  useArrayArithmetic: true,
  currencySymbol: [],
  parseDateTime(text) {
    const match = isoDate.exec(text.trim());
    if (!match) return undefined;
    const [year = 0, month = 0, day = 0, hours = 0, minutes = 0, seconds = 0] = match
      .slice(1)
      .map((part) => Number(part ?? 0));
    return { year, month, day, hours, minutes, seconds };
  },
};

/** A calculator with these sheets in it, calculated. */
export function calculator(
  sheets: Parameters<typeof HyperFormula.buildFromSheets>[0],
  context: CalculatorContext,
): HyperFormula {
  prepare();
  return HyperFormula.buildFromSheets(sheets, { ...config, context });
}

interface Evaluator {
  evaluateAstToCellValue(ast: unknown, state: unknown): unknown;
}

interface SizePredictor {
  checkArraySize(ast: unknown, formula: SimpleCellAddress): ArraySize;
}

interface Insides {
  readonly _crudOperations: {
    readonly operations: { readonly arraySizePredictor: SizePredictor };
  };
}

/**
 * Changes three things in HyperFormula, reached from one calculator and good for all:
 * long lists of readers get an index; a formula has one value and never spills over other cells;
 * what throws becomes an error of its cell, so that cells behind it do not keep old values.
 */
function mend(any: HyperFormula): void {
  indexEdges(any);
  const { arraySizePredictor } = (any as unknown as Insides)._crudOperations.operations;
  const predictor: SizePredictor = Object.getPrototypeOf(arraySizePredictor);
  predictor.checkArraySize = () => ArraySize.scalar();
  const evaluator: Evaluator = Object.getPrototypeOf(any.evaluator);
  const evaluate = evaluator.evaluateAstToCellValue;
  evaluator.evaluateAstToCellValue = function (ast, state) {
    try {
      const value = evaluate.call(this, ast, state);
      return value instanceof SimpleRangeValue ? toCellError(oneValue) : value;
    } catch {
      return new CellError(ErrorType.ERROR);
    }
  };
  any.destroy();
}
