/** @typedef {import('vitest/node').Reporter} Reporter */

/** How long to keep still between two lines, in milliseconds. */
const pause = 30_000;

/**
 * A reporter for runs of hours: says now and then how far each file has come, and when it should be done.
 * @implements {Reporter}
 */
export default class Progress {
  /** @type {Map<string, { begun: number, all: number, done: number, said: number }>} */
  #files = new Map();

  /** @param {import('vitest/node').TestModule} module */
  onTestModuleStart(module) {
    const all = [...module.children.allTests()].length;
    const now = performance.now();
    this.#files.set(module.moduleId, { begun: now, all, done: 0, said: now });
  }

  /** @param {import('vitest/node').TestCase} test */
  onTestCaseResult({ module }) {
    const file = this.#files.get(module.moduleId);
    if (!file) return;
    file.done += 1;
    const now = performance.now();
    if (now - file.said < pause || file.done === file.all) return;
    file.said = now;
    const spent = now - file.begun;
    const left = (spent / file.done) * (file.all - file.done);
    console.log(
      `${module.relativeModuleId}: ${file.done} of ${file.all} in ${minutes(spent)}, about ${minutes(left)} to go`,
    );
  }
}

/** @param {number} time */
const minutes = (time) => `${(time / 60_000).toFixed(1)} min`;
