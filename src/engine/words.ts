import type { ErrorCode } from '../../functions/values.ts';

/** HyperFormula's own errors in our words. What it says itself stands on the left. */
const byMessage: Readonly<Record<string, string>> = {
  'Wrong number of arguments.': 'A function has too few or too many arguments.',
  'Value not found.': 'Nothing found that matches.',
  'Value cannot be coerced to number.': 'A text stands where a number is wanted.',
  'Number argument expected.': 'A text stands where a number is wanted.',
  'Wrong type of argument.': 'An argument is of another kind than the function takes.',
  'Cell range not allowed.': 'A range stands where one value is wanted.',
  'Cell range expected.': 'A function wants a range here, such as B2:B9.',
  'Cell reference expected.': 'A function wants a cell here, such as B2.',
  'NaN or infinite value encountered.': 'The result is too large or has no value.',
  'Value needs to be an integer.': 'A function wants a whole number here.',
  'Value cannot be negative.': 'A function wants zero or more here.',
  'Argument cannot be 0.': 'A function wants a number other than 0 here.',
  'Index out of bounds.': 'The row or column asked for lies outside the range.',
  'Index too large.': 'The row or column asked for lies outside the range.',
  'Address is not correct.': 'The formula points outside the sheet.',
  'Sheet does not exist.': 'The formula points to a sheet that was deleted.',
  'Ranges need to be of equal length.': 'The ranges must be of one length.',
  'Array dimensions are not compatible.': 'The ranges must have the same rows and columns.',
  'Array dimensions mismatched.': 'The ranges must have the same rows and columns.',
  'Pattern not found.': 'The text looked for is not in the other text.',
  'None of the conditions were met.': 'None of the conditions holds.',
  'No default option.': 'No case matches, and none is given for the rest.',
  'String does not represent correct DateTime.':
    'A date is written as year-month-day, such as 2026-03-09.',
  'Range needs to contain at least two elements.': 'At least two numbers are needed.',
  'Range needs to contain at least three elements.': 'At least three numbers are needed.',
  'Needs at least one value.': 'At least one number is needed.',
};

const byCode: Readonly<Record<ErrorCode, string>> = {
  '#DIV/0!': 'Divided by zero.',
  '#N/A': 'No value is available.',
  '#NUM!': 'A number is outside what the function can take.',
  '#VALUE!': 'A value is of another kind than the formula wants.',
  '#REF!': 'The formula points to a cell that was deleted.',
  '#NAME?': 'The formula uses a name that is not known.',
  '#CYCLE!': 'The formula depends on itself.',
  '#ERROR!': 'The formula cannot be worked out.',
};

export function sentence(code: ErrorCode, message: string): string {
  return byMessage[message] ?? byCode[code];
}

/** `A1 → B1 → A1`, the long way shortened in the middle. */
export function roundTrip(addresses: readonly string[]): string {
  const shown =
    addresses.length > 6 ? [...addresses.slice(0, 4), '…', ...addresses.slice(-1)] : addresses;
  return `The formula depends on itself: ${shown.join(' → ')} → ${addresses[0] ?? ''}.`;
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
