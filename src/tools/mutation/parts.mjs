/**
 * The parts of the code that are changed, and which tests hold each. A run tries one part after the
 * other, because each mutant meets only the tests of its own.
 * @typedef {object} Part
 * @property {string} code the folder
 * @property {readonly string[]} tests folders of tests that hold it
 * @property {RegExp} without test files that are left out: slow, or about files and not about what the code does
 * @property {RegExp} [beyond] what a test file brings in that is left out: about more than this part
 * @property {number} share of its functions that are tried where nothing else is said
 * @property {number} [wanted] at least this share of its mutants is to be killed; the others are told
 *   only, because much of what holds them stands with other parts
 */

/** @type {readonly Part[]} */
export const parts = [
  {
    code: 'functions',
    tests: ['tests/unit/functions', 'tests/standards'],
    without: /\/(outside|stable)\.test\.ts$/,
    beyond: /from '[^']*\/(src|accuracy\/measure|filled)\b/,
    share: 1,
    wanted: 0.9,
  },
  ...['book', 'check', 'files'].map((name) => ({
    ...{ code: `src/${name}`, tests: [`tests/unit/${name}`] },
    // Thousands of random moves each.
    ...{ without: /\/(random|become|hostile|fuzz)\.test\.ts$/, share: 0.1 },
  })),
];

/** The part that a file belongs to. @param {string} file */
export const partOf = (file) => parts.find(({ code }) => file.startsWith(`${code}/`));

/** The part whose turn it is. */
export function partNow() {
  const part = parts.find(({ code }) => code === process.env['PART']);
  if (!part) throw new Error('No part of the code was named.');
  return part;
}
