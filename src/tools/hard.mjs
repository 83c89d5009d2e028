import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { randomInt } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commit, machine, table } from './machine.mjs';
import { root } from './root.mjs';
import { run } from './run.mjs';

/** The test files that try more when there is time: those that ask tests/support/runs.ts. */
const all = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name.replaceAll('\\', '/')}`)
  .filter((name) => name.endsWith('.test.ts'))
  .filter((name) => readFileSync(join(root, name), 'utf8').includes('support/runs.ts'))
  .sort();

const [given, ...named] = process.argv.slice(2);
/** Only those that are named: `npm run hard -- SEED keeping-kill`. */
const isPart = named.length > 0;
const files = isPart ? all.filter((file) => named.some((name) => file.includes(name))) : all;
if (files.length === 0) {
  console.error('No test asks for long runs.');
  process.exit(2);
}

const seed = Number(given ?? randomInt(2 ** 31));
if (!Number.isInteger(seed)) {
  console.error(`The seed is a whole number, and not "${given}".`);
  process.exit(2);
}
console.log(`Seed ${seed}.`);

const folder = mkdtempSync(join(tmpdir(), 'halfstop-hard-'));
const report = join(folder, 'report.json');
const reporters = [
  '--reporter=default',
  '--reporter=src/tools/progress.mjs',
  '--reporter=json',
  `--outputFile.json=${report}`,
];
const code = await run('vitest', ['run', ...reporters, ...files], {
  env: { HARD: '1', SEED: String(seed) },
});

/**
 * @typedef {object} Report
 * @property {{ name: string, startTime: number, endTime: number, assertionResults: { status: string, meta?: { measured?: string } }[] }[]} testResults
 */
/** @type {Report} */
const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
rmSync(folder, { recursive: true });

const heads = ['tests', 'passed', 'failed', 'took', 'commit', 'seed', 'measured'];
const written = join(root, 'tests/bench/HARD.md');
/** Of a run of some of them, the others stay as they were measured. */
const before = isPart && existsSync(written) ? readFileSync(written, 'utf8').split('\n') : [];
const others = before
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  )
  .map((cells) => (cells.length === heads.length - 1 ? [...cells, ''] : cells))
  .filter(([name = '']) => name.startsWith('tests/') && !files.includes(name));
// The pages of figures are not what was run: the page of the part before would count as a change.
const at = commit('.', ':!tests/bench');
const rows = testResults
  .map(({ name, startTime, endTime, assertionResults }) => [
    name.slice(root.length),
    String(assertionResults.filter(({ status }) => status === 'passed').length),
    String(assertionResults.filter(({ status }) => status === 'failed').length),
    `${Math.round((endTime - startTime) / 1000)} s`,
    at,
    String(seed),
    // What a test says that it measured, in short; the last one says it for all of its file.
    assertionResults.flatMap(({ meta }) => meta?.measured ?? []).at(-1) ?? '',
  ])
  .concat(others)
  .sort();
const text = [
  '# Long runs',
  'Written by `npm run hard`: every random test with many times its usual cases.',
  `${machine()}. \`npm run hard -- SEED NAME\` runs those whose name has that in it.`,
  table(heads, rows),
].join('\n\n');
const { format } = await import('prettier');
writeFileSync(written, await format(text, { parser: 'markdown' }));

if (!isPart) console.log('Mutants.');
const mutants = isPart ? 0 : await run('src/tools/mutate.mjs', []);
process.exitCode = code || mutants;
