import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, setState } from '@vitest/expect';

/**
 * What tests/ take from vitest, for tests that are loaded and run again and again within one
 * process: describe and it gather, expect is vitest’s own.
 * @typedef {{ id: string, run: () => unknown }} Test
 * @typedef {((title: string, body?: (...args: any[]) => unknown) => void) & Record<string, any>} Gather
 */

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
const expect = /** @type {import('@vitest/expect').ExpectStatic} */ (
  /** @type {unknown} */ (chai.expect)
);
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);

/** One of the test files, loaded: its tests in order, each with an id of its own. @param {string} file */
export function newSuite(file) {
  /** @type {Test[]} */
  const tests = [];
  /** @type {(() => unknown)[]} */
  const before = [];
  /** Around each test of the whole file. @type {{ before: (() => unknown)[], after: (() => unknown)[] }} */
  const each = { before: [], after: [] };
  const path = [file];

  /** @type {Gather} */
  const it = (title, body) => {
    if (!body) return;
    const id = `${tests.length} ${[...path, title].join(' > ')}`;
    tests.push({ id, run: () => around(each, body) });
  };
  /** @type {Gather} */
  const describe = (title, body) => {
    path.push(title);
    body?.();
    path.pop();
  };
  for (const gather of [it, describe]) {
    gather['each'] =
      (/** @type {readonly unknown[]} */ rows) =>
      (/** @type {string} */ title, /** @type {(...args: unknown[]) => unknown} */ body) =>
        rows.forEach((row, index) =>
          gather(`${title} (${index})`, () => body(...(Array.isArray(row) ? row : [row]))),
        );
    gather['skip'] = () => undefined;
  }
  const exports = {
    ...{ it, test: it, describe, expect },
    beforeAll: (/** @type {() => unknown} */ body) => before.push(body),
    afterAll: () => undefined,
    beforeEach: (/** @type {() => unknown} */ body) => each.before.push(body),
    afterEach: (/** @type {() => unknown} */ body) => each.after.unshift(body),
  };
  return { exports, tests, before };
}

/** @param {{ before: (() => unknown)[], after: (() => unknown)[] }} each @param {() => unknown} body */
async function around(each, body) {
  for (const one of each.before) await one();
  try {
    await body();
  } finally {
    for (const one of each.after) await one();
  }
}
