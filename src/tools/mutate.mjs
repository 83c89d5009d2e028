import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { commit } from './machine.mjs';
import { keeper } from './mutation/keeper.mjs';
import { parts, partOf } from './mutation/parts.mjs';
import { joined, open, pageOf, sums, triedAt } from './mutation/record.mjs';
import { root } from './root.mjs';

/**
 * Changes the code in one place after the other and looks whether a test notices. What is known
 * is kept in tests/bench/mutants.json, file by file, and said in tests/bench/MUTATION.md, with the
 * reason for each survivor from tests/bench/survivors.json.
 * It may be broken off: the files that it was through with are kept.
 * Given paths (`'functions/stops/*.ts'`), tries only those and keeps the rest of what it knows. With
 * `--share 0.25 --seed 7` it tries a quarter of their functions, drawn by that seed. With `--page`
 * it tries nothing and writes the page anew.
 * @typedef {import('@stryker-mutator/api/core').MutantResult} Mutant
 * @typedef {import('./mutation/record.mjs').Known} Known
 */

const { values: asked, positionals: paths } = parseArgs({
  allowPositionals: true,
  options: {
    share: { type: 'string' },
    seed: { type: 'string', default: '1' },
    page: { type: 'boolean', default: false },
  },
});
// One seed for the random tests, so that each mutant meets the same samples; and for what is drawn.
process.env['SEED'] = asked.seed;
process.chdir(root);

const page = 'tests/bench/MUTATION.md';
const record = 'tests/bench/mutants.json';
/** @type {import('./mutation/record.mjs').Reason[]} */
const reasons = JSON.parse(readFileSync('tests/bench/survivors.json', 'utf8'));
/** @type {Known} */
const before = existsSync(record) ? JSON.parse(readFileSync(record, 'utf8')) : {};
/** Those with something to change: not lists and types alone. */
const files = parts
  .flatMap(({ code }) =>
    readdirSync(code, { recursive: true, encoding: 'utf8' }).map((file) => `${code}/${file}`),
  )
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.ts') && !/^functions\/(all\.ts|data\/)/.test(file))
  .filter((file) => /=>|\bfunction\b/.test(readFileSync(file, 'utf8')))
  .sort();

/** @param {readonly string[]} wanted @param {import('./mutation/parts.mjs').Part} part */
async function tryMutants(wanted, { code }) {
  await new Stryker({
    mutate: [...wanted, '!functions/data/**', '!functions/all.ts'],
    testRunner: 'in-one-process',
    plugins: ['runner', 'ignore', 'keeper'].map((name) => `./src/tools/mutation/${name}.mjs`),
    maxTestRunnerReuse: 500,
    ignorers: ['words-and-proofs'],
    // What runs once when a file loads: each would cost a run of every test.
    ignoreStatic: true,
    ignorePatterns: ['/dist', '/dist-tests', '/public', '/coverage'],
    tempDirName: 'coverage/mutation',
    concurrency: 1,
    // Endless loops are told by how often they come round: no clock counts a busy machine as a kill.
    timeoutMS: 3_600_000,
    dryRunTimeoutMinutes: 600,
    disableTypeChecks: `${code}/**/*.ts`,
    reporters: ['progress-append-only', 'keeper'],
    allowConsoleColors: false,
  }).runMutationTest();
}

/** @param {Mutant} mutant */
const fileOf = ({ fileName }) =>
  relative(root, join(root, relative(process.cwd(), fileName))).replaceAll('\\', '/');

/** What stood there, and what stood there instead. @param {Mutant} mutant */
function changeIn(mutant) {
  const { replacement = '', location } = mutant;
  const lines = readFileSync(fileOf(mutant), 'utf8').split('\n');
  const { start, end } = location;
  const last = start.line === end.line ? end.column : undefined;
  const stood = (lines[start.line - 1] ?? '').slice(start.column - 1, last && last - 1);
  return `${stood}${last === undefined ? ' …' : ''} → ${replacement}`;
}

const isKilled = (/** @type {Mutant} */ { status }) => status === 'Killed' || status === 'Timeout';
const isTried = (/** @type {Mutant} */ { status }) =>
  status !== 'Ignored' && status !== 'CompileError';

/** @param {readonly Mutant[]} mutants of one file @param {{ commit: string, share: number }} at @returns {Known} */
function foundIn(mutants, at) {
  const tried = mutants.filter(isTried);
  const survivors = tried.filter((mutant) => !isKilled(mutant)).map(changeIn);
  const counts = { mutants: tried.length, killed: tried.length - survivors.length };
  const run = { ...at, seed: Number(asked.seed) };
  return Object.fromEntries(
    mutants.slice(0, 1).map((mutant) => [fileOf(mutant), { ...run, ...counts, survivors }]),
  );
}

/** The files that are no longer as they were at the commits they were tried at. @param {Known} known */
function changedSince(known) {
  const commits = new Set(Object.values(known).map((each) => each.commit));
  return new Set(
    [...commits].flatMap((at) => {
      const [hash = ''] = at.split(' ');
      const names = execFileSync('git', [
        'diff',
        '--name-only',
        hash,
        '--',
        ...parts.map(({ code }) => code),
      ]);
      return String(names)
        .split('\n')
        .filter((file) => triedAt(known, file) === at);
    }),
  );
}

const { format } = await import('prettier');

/** @param {Known} known */
async function write(known) {
  const now = { files, changed: changedSince(known) };
  writeFileSync(record, await format(JSON.stringify(known), { parser: 'json', printWidth: 100 }));
  writeFileSync(page, await format(pageOf(known, reasons, now), { parser: 'markdown' }));
}

let known = Object.fromEntries(Object.entries(before).filter(([path]) => existsSync(path)));
if (!asked.page) {
  let writing = Promise.resolve();
  const all = paths.length > 0 ? paths : parts.map(({ code }) => `${code}/**/*.ts`);
  for (const part of parts) {
    const wanted = all.filter((path) => partOf(path) === part);
    if (wanted.length === 0) continue;
    const share = Number(asked.share ?? part.share);
    const at = { share, commit: commit(part.code, ...part.tests, 'src/tools/mutation') };
    keeper.told = (mutants) => {
      known = joined(known, foundIn(mutants, at));
      const soFar = known;
      writing = writing.then(() => write(soFar));
    };
    Object.assign(process.env, { PART: part.code, SHARE: String(share) });
    await tryMutants(wanted, part);
    await writing;
  }
}
await write(known);

let isHeld = true;
for (const { code, wanted = 0 } of parts) {
  const tried = Object.entries(known).filter(([file]) => file.startsWith(`${code}/`));
  const { mutants, killed } = sums(tried.map(([, one]) => one));
  console.log(`${code}: ${killed} of ${mutants} mutants killed.`);
  isHeld &&= killed >= wanted * mutants;
}
const { unexplained, unneeded } = open(known, reasons);
for (const { file, change } of unexplained) console.log(`No reason yet: ${file}: ${change}`);
for (const { file, change } of unneeded) console.log(`No longer needed: ${file}: ${change}`);
process.exitCode = isHeld ? 0 : 1;
