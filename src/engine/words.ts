import type { ErrorCode } from '../../functions/values.ts';
import { words } from '../words/words.ts';

/** HyperFormula's own errors in our words. What it says itself stands on the left. */
const byMessage: Readonly<Record<string, string>> = {
  'Wrong number of arguments.': words.engine.argumentCount,
  'Value not found.': words.engine.notFound,
  'Value cannot be coerced to number.': words.engine.textForNumber,
  'Number argument expected.': words.engine.textForNumber,
  'Wrong type of argument.': words.engine.otherKind,
  'Cell range not allowed.': words.engine.rangeForValue,
  'Cell range expected.': words.engine.rangeWanted,
  'Cell reference expected.': words.engine.cellWanted,
  'NaN or infinite value encountered.': words.engine.tooLarge,
  'Value needs to be an integer.': words.engine.wholeWanted,
  'Value cannot be negative.': words.engine.zeroOrMore,
  'Argument cannot be 0.': words.engine.notZero,
  'Index out of bounds.': words.engine.outsideRange,
  'Index too large.': words.engine.outsideRange,
  'Address is not correct.': words.engine.outsideSheet,
  'Sheet does not exist.': words.engine.sheetDeleted,
  'Ranges need to be of equal length.': words.engine.oneLength,
  'Array dimensions are not compatible.': words.engine.sameShape,
  'Array dimensions mismatched.': words.engine.sameShape,
  'Pattern not found.': words.engine.textNotIn,
  'None of the conditions were met.': words.engine.noCondition,
  'No default option.': words.engine.noCase,
  'String does not represent correct DateTime.': words.engine.dateForm,
  'Range needs to contain at least two elements.': words.engine.twoNumbers,
  'Range needs to contain at least three elements.': words.engine.threeNumbers,
  'Needs at least one value.': words.engine.oneNumber,
};

const byCode: Readonly<Record<ErrorCode, string>> = {
  '#DIV/0!': words.engine.dividedByZero,
  '#N/A': words.engine.notAvailable,
  '#NUM!': words.engine.outOfDomain,
  '#VALUE!': words.engine.wrongKind,
  '#REF!': words.engine.cellDeleted,
  '#NAME?': words.engine.nameUnknown,
  '#CYCLE!': words.engine.dependsOnItself,
  '#ERROR!': words.engine.notWorkedOut,
};

export function sentence(code: ErrorCode, message: string): string {
  return byMessage[message] ?? byCode[code];
}

/** `A1 → B1 → A1`, the long way shortened in the middle. */
export function roundTrip(addresses: readonly string[]): string {
  const shown =
    addresses.length > 6 ? [...addresses.slice(0, 4), '…', ...addresses.slice(-1)] : addresses;
  return words.engine.cycle([...shown, addresses[0] ?? ''].join(' → '));
}

/** The known name nearest to one that is not, if it is near. */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  const wanted = name.toUpperCase();
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.ceil(wanted.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(wanted, candidate.toUpperCase(), bestDistance);
    if (distance < bestDistance) [best, bestDistance] = [candidate, distance];
  }
  return best;
}

/** How many letters to put in, leave out, change or swap; gives up at `limit`. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row++) {
    const now = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (now[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      now.push(cost);
    }
    [before, last] = [last, now];
  }
  return last[b.length] ?? limit;
}
