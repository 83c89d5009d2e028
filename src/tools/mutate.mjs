import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { commit, machine, table } from './machine.mjs';
import { root } from './root.mjs';

/**
 * Changes functions/ in one place after the other and looks whether a test notices. What nobody
 * notices stands in tests/bench/MUTATION.md, with the reason from tests/bench/survivors.json.
 * Given paths, tries only those and keeps the rest of what it knows. With `--share 0.25 --seed 7`
 * it tries a quarter of their functions, drawn by that seed, and the page says so.
 * @typedef {import('@stryker-mutator/api/core').MutantResult} Mutant
 * @typedef {{ file: string, change: string, reason: string }} Survivor
 */

/** Of the mutants that tests can reach, at least this share is to be killed. */
const wanted = 0.9;
const page = join(root, 'tests/bench/MUTATION.md');
/** @type {Survivor[]} */
const known = JSON.parse(readFileSync(join(root, 'tests/bench/survivors.json'), 'utf8'));

const { values: asked, positionals: paths } = parseArgs({
  allowPositionals: true,
  options: {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
  },
});
// One seed for the random tests, so that each mutant meets the same samples; and for what is drawn.
process.env['SEED'] = asked.seed;
process.env['SHARE'] = asked.share;
process.chdir(root);

/** What is known of families that were tried in part: kept beside the results. */
const samples = join(root, 'coverage/mutants-drawn.json');
/** @type {Record<string, { share: number, seed: number }>} */
const drawn = existsSync(samples) ? JSON.parse(readFileSync(samples, 'utf8')) : {};
const results = await new Stryker({
  mutate:
    paths.length > 0 ? paths : ['functions/**/*.ts', '!functions/data/**', '!functions/all.ts'],
  testRunner: 'in-one-process',
  plugins: ['./src/tools/mutation/runner.mjs', './src/tools/mutation/ignore.mjs'],
  maxTestRunnerReuse: 500,
  ignorers: ['words-and-proofs'],
  // What runs once when a file loads: each would cost a run of every test.
  ignoreStatic: true,
  ignorePatterns: ['/dist', '/dist-tests', '/public', '/templates', '/coverage'],
  incremental: true,
  incrementalFile: 'coverage/mutants.json',
  tempDirName: 'coverage/mutation',
  concurrency: 1,
  timeoutMS: 120_000,
  disableTypeChecks: 'functions/**/*.ts',
  reporters: ['progress-append-only'],
  allowConsoleColors: false,
}).runMutationTest();

/** @param {Mutant} mutant @returns {Survivor} */
const written = ({ fileName, replacement = '', location }) => {
  const file = relative(root, join(root, relative(process.cwd(), fileName))).replaceAll('\\', '/');
  const lines = readFileSync(join(root, file), 'utf8').split('\n');
  const { start, end } = location;
  const last = start.line === end.line ? end.column : undefined;
  const before = (lines[start.line - 1] ?? '').slice(start.column - 1, last && last - 1);
  const change = `${before}${last === undefined ? ' …' : ''} → ${replacement}`;
  const reason = known.find((one) => one.file === file && one.change === change)?.reason ?? '';
  return { file, change, reason };
};

const tried = results.filter(({ status }) => status !== 'Ignored' && status !== 'CompileError');
const killed = tried.filter(({ status }) => status === 'Killed' || status === 'Timeout');
const survivors = tried.filter((mutant) => !killed.includes(mutant)).map(written);
const score = killed.length / tried.length;

/** @param {string} text */
const inTable = (text) => text.replaceAll('|', String.raw`\|`).replaceAll(/\s+/g, ' ');
const families = [...new Set(tried.map(({ fileName }) => familyOf(fileName)))].sort();
/** @param {string} fileName */
function familyOf(fileName) {
  const [, folder = '', name] = relative(root, fileName).split(/[\\/]/);
  return name === undefined ? 'functions' : folder;
}

const now = new Set(
  paths.length > 0
    ? paths.filter((path) => !path.startsWith('!')).map((path) => familyOf(join(root, path)))
    : families,
);
for (const family of now) {
  delete drawn[family];
  if (asked.share !== '1') drawn[family] = { share: Number(asked.share), seed: Number(asked.seed) };
}
writeFileSync(samples, JSON.stringify(drawn));
const inPart = Object.entries(drawn).map(
  ([family, { share, seed }]) =>
    `Of ${family} ${Math.round(100 * share)} % of the functions were tried, drawn by seed ${seed}; \`npm run hard\` tries all.`,
);

const rows = families.map((family) => {
  const all = tried.filter(({ fileName }) => familyOf(fileName) === family);
  const dead = all.filter((mutant) => killed.includes(mutant)).length;
  return [family, String(all.length), String(dead), `${((100 * dead) / all.length).toFixed(1)} %`];
});
const text = [
  '# Mutants',
  `Written by \`npm run hard\`: functions/ changed in one place after the other, and whether a test noticed. Words for people, proofs (examples, laws) and what runs once when a file loads are left alone. Commit ${commit()}. Seed ${asked.seed}. ${machine()}.`,
  `${killed.length} of ${tried.length} killed: **${(100 * score).toFixed(1)} %**.`,
  ...inPart,
  table(['folder', 'mutants', 'killed', 'share'], rows),
  '## Survivors',
  table(
    ['file', 'change', 'why no test can or need notice'],
    survivors.map(({ file, change, reason }) => [
      file,
      `\`${inTable(change)}\``,
      inTable(reason || 'not looked at yet'),
    ]),
  ),
].join('\n\n');
const { format } = await import('prettier');
writeFileSync(page, await format(text, { parser: 'markdown' }));
console.log(`${killed.length} of ${tried.length} mutants killed: ${(100 * score).toFixed(1)} %.`);
for (const { file, change, reason } of survivors) if (!reason) console.log(`${file}: ${change}`);
process.exitCode = score >= wanted ? 0 : 1;
