import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { DryRunStatus, MutantRunStatus, TestStatus } from '@stryker-mutator/api/test-runner';
import { build } from 'esbuild';
import { partNow } from './parts.mjs';
import { newSuite } from './suite.mjs';

/**
 * Runs the tests of a part of the code for the mutation tester within one process. Loading all of them anew
 * takes a tenth of a second, where a test runner’s own way takes several: so every mutant meets
 * fresh modules, and thousands of mutants can be tried.
 * @typedef {import('@stryker-mutator/api/test-runner').TestRunner} TestRunner
 * @typedef {import('./suite.mjs').Test} Test
 */

/** The mutants’ switchboard: the code that was changed looks here. */
const world = /** @type {Record<string, any>} */ (globalThis);
/** @type {Record<string, any>} */
const board = (world['__stryker__'] ??= {});

/** Reads `import.meta` as each file itself would. @type {import('esbuild').Plugin} */
const ownPlaces = {
  name: 'own places',
  setup({ onLoad }) {
    onLoad({ filter: /\.m?[jt]s$/ }, ({ path }) => {
      const contents = readFileSync(path, 'utf8')
        .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)))
        .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path)));
      return { contents, loader: /** @type {const} */ ('ts') };
    });
  },
};

/** The tests that hold this part; those that say most come first. */
function testFiles() {
  const { tests, without, beyond } = partNow();
  return tests
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => `${folder}/${name}`),
    )
    .filter((name) => name.endsWith('.test.ts') && !without.test(name))
    .filter((name) => !beyond?.test(readFileSync(name, 'utf8')))
    .sort((one, other) => Number(isCatalogue(other)) - Number(isCatalogue(one)));
}

const isCatalogue = (/** @type {string} */ name) => name.includes('catalogue');

/**
 * @typedef {object} Compiled a test file
 * @property {string} file
 * @property {Script} script
 * @property {number} cost what loading and running it took when it was first run, in milliseconds
 */

/** @param {readonly string[]} files @returns {Promise<Compiled[]>} */
async function compile(files) {
  return Promise.all(
    files.map(async (file) => {
      const { outputFiles } = await build({
        ...{ entryPoints: [file], absWorkingDir: process.cwd(), plugins: [ownPlaces] },
        ...{ bundle: true, packages: 'external', platform: 'node', format: 'cjs' },
        ...{ write: false, logLevel: 'silent' },
      });
      const filename = join(process.cwd(), file);
      const text = outputFiles[0]?.text ?? '';
      const script = new Script(`(function (require, module, exports) {${text}\n})`, { filename });
      return { file, script, cost: 0 };
    }),
  );
}

/** @implements {TestRunner} */
class InOneProcess {
  static inject = /** @type {const} */ ([]);

  require = createRequire(join(process.cwd(), 'package.json'));
  /** What the calculator itself comes with. @type {readonly unknown[] | undefined} */
  plugins;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.scripts = await compile(testFiles());
  }

  /** Packages stay loaded, and the calculator remembers the functions that it was given. */
  calculatorAnew() {
    const { HyperFormula } = this.require('hyperformula');
    this.plugins ??= HyperFormula.getAllFunctionPlugins();
    HyperFormula.unregisterAllFunctions();
    for (const plugin of this.plugins ?? []) HyperFormula.registerFunctionPlugin(plugin);
  }

  /** The tests of one file, freshly loaded. @param {Compiled} compiled */
  async load({ file, script }) {
    this.calculatorAnew();
    const suite = newSuite(file);
    const require = (/** @type {string} */ name) =>
      name === 'vitest' ? suite.exports : this.require(name);
    const module = { exports: {} };
    script.runInThisContext()(require, module, module.exports);
    for (const body of suite.before) await body();
    return suite.tests;
  }

  /**
   * Those that hold any of these tests: first the ones that stand beside the file, and
   * the quick before the slow.
   * @param {ReadonlySet<string> | undefined} wanted @param {string} mutated
   */
  scriptsWith(wanted, mutated) {
    const ids = wanted && [...wanted];
    const [, room, family] = /(\w+)\/(\w+)\/[^/]+$/.exec(mutated.replaceAll('\\', '/')) ?? [];
    const isBeside = (/** @type {string} */ file) => file.includes(`/${room}/${family}/`);
    return (this.scripts ?? [])
      .filter(({ file }) => !ids || ids.some((id) => id.includes(` ${file} > `)))
      .sort((one, other) => one.cost - other.cost)
      .sort((one, other) => Number(isBeside(other.file)) - Number(isBeside(one.file)));
  }

  /** @returns {Promise<import('@stryker-mutator/api/test-runner').DryRunResult>} */
  async dryRun() {
    board['mutantCoverage'] = { static: {}, perTest: {} };
    board['activeMutant'] = undefined;
    const results = [];
    for (const compiled of this.scripts ?? []) {
      const begun = performance.now();
      for (const test of await this.load(compiled)) results.push(await tried(test));
      compiled.cost = performance.now() - begun;
    }
    const mutantCoverage = board['mutantCoverage'];
    return { status: DryRunStatus.Complete, tests: results, mutantCoverage };
  }

  /**
   * @param {import('@stryker-mutator/api/test-runner').MutantRunOptions} options
   * @returns {Promise<import('@stryker-mutator/api/test-runner').MutantRunResult>}
   */
  async mutantRun({ activeMutant, mutantActivation, testFilter, hitLimit }) {
    /** @returns {import('@stryker-mutator/api/test-runner').KilledMutantRunResult} */
    const killed = (
      /** @type {string} */ by,
      /** @type {string} */ failureMessage,
      nrOfTests = 0,
    ) => ({
      ...{ killedBy: [by], failureMessage, nrOfTests },
      status: MutantRunStatus.Killed,
    });
    board['hitCount'] = hitLimit === undefined ? undefined : 0;
    board['hitLimit'] = hitLimit;
    const loading = mutantActivation === 'static' ? activeMutant.id : undefined;
    const wanted = testFilter && new Set(testFilter);
    let count = 0;
    for (const script of this.scriptsWith(wanted, activeMutant.fileName)) {
      /** @type {Test[]} */
      let tests = [];
      board['activeMutant'] = loading;
      const broken = await failureOf(async () => {
        tests = await this.load(script);
      });
      if (broken !== undefined) return killed('loading', broken, count);
      board['activeMutant'] = activeMutant.id;
      for (const { id, run } of tests) {
        if (wanted && !wanted.has(id)) continue;
        count += 1;
        const failure = await failureOf(run);
        if (failure !== undefined) return killed(id, failure, count);
      }
    }
    return { status: MutantRunStatus.Survived, nrOfTests: count };
  }
}

/** @param {Test} test @returns {Promise<import('@stryker-mutator/api/test-runner').TestResult>} */
async function tried({ id, run }) {
  board['currentTestId'] = id;
  const begun = performance.now();
  const failureMessage = await failureOf(run);
  board['currentTestId'] = undefined;
  const found = { id, name: id, timeSpentMs: performance.now() - begun };
  return failureMessage === undefined
    ? { ...found, status: TestStatus.Success }
    : { ...found, status: TestStatus.Failed, failureMessage };
}

/** @param {() => unknown} run @returns {Promise<string | undefined>} */
async function failureOf(run) {
  try {
    await run();
    return undefined;
  } catch (failure) {
    return failure instanceof Error ? failure.message : String(failure);
  }
}

/** Read by the mutation tester by this name. */
export const strykerPlugins = [
  { kind: 'TestRunner', name: 'in-one-process', injectableClass: InOneProcess },
];
