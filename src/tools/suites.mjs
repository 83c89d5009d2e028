import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from './build.mjs';
import { runChecks } from './checks.mjs';
import { findBrowser } from './find-browser.mjs';
import { run } from './run.mjs';

/** `failures`: what is said again at the very end, where a long output is read. @typedef {{ passed: number, failed: number, skipped?: number, failures?: string[] }} Tally */

/** In the order in which they run: what is quick and says most comes first. @type {Record<string, () => Promise<Tally>>} */
export const suites = {
  check: runChecks,
  unit: () => vitest('unit'),
  standards: () => vitest('standards'),
  build: async () => ((await build()) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }),
  browser: async () => vitest('browser', { CHROMIUM_PATH: await findBrowser() }),
};

/** Runs one suite. A suite that breaks counts as one failure and lets the others run. @param {string} name */
export async function runSuite(name) {
  const begun = performance.now();
  const tally = await /** @type {() => Promise<Tally>} */ (suites[name])().catch((reason) => {
    console.error(reason);
    return { passed: 0, failed: 1 };
  });
  return { name, seconds: (performance.now() - begun) / 1000, skipped: 0, failures: [], ...tally };
}

/**
 * @param {string} project
 * @param {Record<string, string>} [env]
 * @returns {Promise<Tally>}
 */
async function vitest(project, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'halfstop-'));
  const report = join(folder, 'report.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const code = await run('vitest', ['run', '--project', project, ...reporters], { env });
  try {
    return count(JSON.parse(readFileSync(report, 'utf8')), code);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @typedef {object} Report
 * @property {number} numPassedTests
 * @property {number} numFailedTests
 * @property {number} numPendingTests
 * @property {{ name?: string, status: string, message?: string, assertionResults: { status?: string, fullName?: string, failureMessages?: string[] }[] }[]} testResults
 */

/**
 * Counts tests, and as a failure each file that could not be read, a run without any test, and a
 * run that broke for another reason than a failed test.
 * @param {Report} report
 * @param {number} code
 * @returns {Tally}
 */
export function count(report, code) {
  const broken = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const failed = report.numFailedTests + broken;
  const elsewhere = failed === 0 && (code !== 0 || report.numPassedTests === 0) ? 1 : 0;
  return {
    passed: report.numPassedTests,
    failed: failed + elsewhere,
    skipped: report.numPendingTests,
    failures: report.testResults.flatMap(failuresIn),
  };
}

/** @param {Report['testResults'][number]} file */
function failuresIn({ name = '', status, message = '', assertionResults }) {
  if (assertionResults.length === 0) return status === 'failed' ? [`${name}\n${message}`] : [];
  return assertionResults
    .filter((one) => one.status === 'failed')
    .map(({ fullName = '', failureMessages = [] }) =>
      [`${name}: ${fullName}`, ...failureMessages].join('\n').slice(0, 2000),
    );
}
