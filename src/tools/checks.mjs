import { layerFaults } from './check-layers.mjs';
import { staleFiles } from './generate.mjs';
import { licenceFaults } from './licences.mjs';
import { run } from './run.mjs';

/**
 * @typedef {{ name: string, faults: () => string[] | Promise<string[]> }} Check
 */

/** A command that prints what is wrong and exits with it. @param {string} command @param {string[]} args */
async function printedFaults(command, args) {
  const lines = /** @type {string[]} */ ([]);
  const code = await run(command, args, { collect: (text) => void lines.push(text) });
  return code === 0 ? [] : [lines.join('').trim() || `${command} ended with ${code}.`];
}

/** Everything that can be said of the sources without running them. @type {Check[]} */
export const checks = [
  { name: 'types', faults: () => printedFaults('tsc', ['-p', 'tsconfig.json']) },
  {
    name: 'types without a screen',
    faults: () => printedFaults('tsc', ['-p', 'tsconfig.pure.json']),
  },
  { name: 'lint', faults: () => printedFaults('eslint', ['.']) },
  { name: 'layers', faults: layerFaults },
  { name: 'unused code', faults: () => printedFaults('knip', ['--no-progress']) },
  {
    name: 'format',
    faults: () => printedFaults('prettier', ['--check', '--log-level', 'warn', '.']),
  },
  { name: 'generated files', faults: staleFiles },
  { name: 'licences', faults: () => licenceFaults() },
];

/**
 * Runs the checks, two at a time, and prints each as it ends.
 * @returns {Promise<{ passed: number, failed: number }>}
 */
export async function runChecks() {
  const tally = { passed: 0, failed: 0 };
  const waiting = [...checks];
  const worker = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const begun = performance.now();
      const faults = await faultsOf(next);
      const seconds = ((performance.now() - begun) / 1000).toFixed(1);
      console.log(`${faults.length === 0 ? '✓' : '✗'} ${next.name} (${seconds} s)`);
      for (const fault of faults) console.log(fault.replaceAll(/^/gm, '    '));
      tally[faults.length === 0 ? 'passed' : 'failed'] += 1;
    }
  };
  await Promise.all([worker(), worker()]);
  return tally;
}

/** @param {Check} check @returns {Promise<string[]>} */
async function faultsOf(check) {
  try {
    return await check.faults();
  } catch (reason) {
    return [reason instanceof Error ? (reason.stack ?? reason.message) : String(reason)];
  }
}
