import { CellError, ErrorType, type DetailedCellError } from 'hyperformula';
import type { ErrorCode, FunctionError } from '../../functions/values.ts';

export type { ErrorCode } from '../../functions/values.ts';

/**
 * HyperFormula's errors carry a type and one text. Ours also know whether they wait or are quiet:
 * that stands as a letter and a NUL before the sentence, and so survives every road an error takes
 * (arithmetic, IF, ranges, copies with another root).
 */
const mark = '\0';
const waiting = 'w';
const quiet = 'q';
const firm = 'f';

const codes: Record<ErrorType, ErrorCode> = {
  [ErrorType.DIV_BY_ZERO]: '#DIV/0!',
  [ErrorType.NAME]: '#NAME?',
  [ErrorType.VALUE]: '#VALUE!',
  [ErrorType.NUM]: '#NUM!',
  [ErrorType.NA]: '#N/A',
  [ErrorType.CYCLE]: '#CYCLE!',
  [ErrorType.REF]: '#REF!',
  [ErrorType.SPILL]: '#VALUE!',
  [ErrorType.LIC]: '#ERROR!',
  [ErrorType.ERROR]: '#ERROR!',
};

const types: Record<ErrorCode, ErrorType> = {
  '#DIV/0!': ErrorType.DIV_BY_ZERO,
  '#NAME?': ErrorType.NAME,
  '#VALUE!': ErrorType.VALUE,
  '#NUM!': ErrorType.NUM,
  '#N/A': ErrorType.NA,
  '#CYCLE!': ErrorType.CYCLE,
  '#REF!': ErrorType.REF,
  '#ERROR!': ErrorType.ERROR,
};

export const errorCodes = Object.keys(types) as readonly ErrorCode[];

/** Errors on their way through a function of ours, so that the same one comes out again. */
const passing = new WeakMap<FunctionError, CellError>();

export function toCellError(error: FunctionError): CellError {
  const known = passing.get(error);
  if (known) return known;
  const flag = error.waiting ? waiting : error.quiet ? quiet : firm;
  return new CellError(types[error.code], `${flag}${mark}${error.message}`);
}

/** What a function of ours makes of an error in its arguments. */
export function fromCellError(error: CellError): FunctionError {
  const spoken = spokenError(error) ?? { code: codes[error.type], message: error.message ?? '' };
  passing.set(spoken, error);
  return spoken;
}

/** The error as one of our functions said it, or undefined if it is HyperFormula's own. */
export function spokenError(error: CellError | DetailedCellError): FunctionError | undefined {
  const { message } = error;
  if (message?.[1] !== mark) return undefined;
  const said = { code: codeOf(error), message: message.slice(2) };
  if (message[0] === waiting) return { ...said, waiting: true };
  return message[0] === quiet ? { ...said, quiet: true } : said;
}

export function codeOf(error: CellError | DetailedCellError): ErrorCode {
  return codes[error.type as ErrorType];
}
