import {
  CellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  type ImplementedFunctions,
} from 'hyperformula';
import { errorCodes, toCellError } from './errors.ts';
import type { Ast, CalculatorContext, State } from './plugin.ts';
import { refusing } from './text.ts';

type Call = Extract<Ast, { readonly procedureName: string }>;

const none = { method: '', parameters: [] };
const number = { argumentType: FunctionArgumentType.NUMBER };
const text = { argumentType: FunctionArgumentType.STRING };

/** Functions of the book's clock and chance, which HyperFormula would take from the machine. */
export const fromWorld = ['NOW', 'TODAY', 'RAND', 'RANDBETWEEN'] as const;

/** HyperFormula's cuts towards zero; OpenFormula (ISO/IEC 26300, part 2) rounds down: `INT(-1.1)` is -2. */
export const mended = ['INT'] as const;

/** Midnight of 30 December 1899, day 0 of spreadsheets. */
const dayZero = Date.UTC(1899, 11, 30);
const dayMilliseconds = 86_400_000;

/** Days since day 0 on the clock on the wall. */
function wallClock(now: Date): number {
  const wall = Date.UTC(
    now.getFullYear(),
    now.getMonth(),
    now.getDate(),
    now.getHours(),
    now.getMinutes(),
    now.getSeconds(),
    now.getMilliseconds(),
  );
  return (wall - dayZero) / dayMilliseconds;
}

const nothing = new CellError(ErrorType.NAME);

/** What formulas need beside the library: the clock, chance, and a way to say why they cannot be. */
export class HelperFunctions extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = {
    NOW: { ...none, method: 'now', isVolatile: true },
    TODAY: { ...none, method: 'today', isVolatile: true },
    RAND: { ...none, method: 'rand', isVolatile: true },
    RANDBETWEEN: { method: 'randBetween', parameters: [number, number], isVolatile: true },
    INT: { method: 'int', parameters: [number] },
    [refusing]: { method: 'refuse', parameters: [text, text] },
  };

  now(ast: Call, state: State) {
    return this.#run('NOW', ast, state, () => {
      const { clock } = this.#context;
      return clock ? wallClock(clock()) : nothing;
    });
  }

  today(ast: Call, state: State) {
    return this.#run('TODAY', ast, state, () => {
      const { clock } = this.#context;
      return clock ? Math.floor(wallClock(clock())) : nothing;
    });
  }

  rand(ast: Call, state: State) {
    return this.#run('RAND', ast, state, () => this.#context.chance?.() ?? nothing);
  }

  randBetween(ast: Call, state: State) {
    return this.#run('RANDBETWEEN', ast, state, (low: number, high: number) => {
      const { chance } = this.#context;
      if (!chance) return nothing;
      const [first, last] = [Math.ceil(low), Math.floor(high)];
      if (last < first) return new CellError(ErrorType.NUM);
      return first + Math.floor(chance() * (last - first + 1));
    });
  }

  int(ast: Call, state: State) {
    return this.#run('INT', ast, state, (value: number) => Math.floor(value));
  }

  refuse(ast: Call, state: State) {
    return this.#run(refusing, ast, state, (wanted: string, message: string) =>
      toCellError({ code: errorCodes.find((code) => code === wanted) ?? '#ERROR!', message }),
    );
  }

  get #context(): CalculatorContext {
    return this.config.context as CalculatorContext;
  }

  #run<Given extends readonly unknown[]>(
    name: string,
    ast: Call,
    state: State,
    answer: (...given: Given) => number | CellError,
  ) {
    return this.runFunction(ast.args, state as never, this.metadata(name), answer as never);
  }
}
