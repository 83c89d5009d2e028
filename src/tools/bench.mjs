import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { commit, machine, table } from './machine.mjs';
import { root } from './root.mjs';
import { run } from './run.mjs';

/** @typedef {{ name: string, rows: import('../../tests/bench/bench.ts').Row[] }} Result */

const folder = join(root, 'tests/bench');

/** Runs one bench by itself, so that what others left in memory does not count. @param {string} file @returns {Promise<Result>} */
async function measure(file) {
  const results = mkdtempSync(join(tmpdir(), 'halfstop-bench-'));
  const into = join(results, 'rows.json');
  try {
    const code = await run('src/tools/bench-one.mjs', [join(folder, file), into]);
    if (code !== 0) throw new Error(`${file} ended with ${code}.`);
    return JSON.parse(readFileSync(into, 'utf8'));
  } finally {
    rmSync(results, { recursive: true });
  }
}

/** @param {import('../../tests/bench/bench.ts').Row} row */
const ratioOf = (row) => row.took / row.tookAgainst;

/** @param {import('../../tests/bench/bench.ts').Row} row */
const holds = (row) => row.atMost === undefined || ratioOf(row) <= row.atMost;

/** @param {number} value */
const short = (value) => (value < 10 ? value.toPrecision(2) : Math.round(value).toString());

/** @param {Result} result */
function section({ name, rows }) {
  const cells = rows.map((row) => [
    row.what,
    `${short(row.took)} ${row.unit ?? 'ms'}`,
    row.against,
    `${short(row.tookAgainst)} ${row.unit ?? 'ms'}`,
    ratioOf(row).toFixed(2),
    row.atMost === undefined ? '' : `${row.atMost}${holds(row) ? '' : ' (exceeded)'}`,
  ]);
  const heads = ['what', 'took', 'against', 'took', 'ratio', 'at most'];
  return `## ${name}\n\n${table(heads, cells)}`;
}

const [wanted = ''] = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts') && name.includes(wanted))
  .sort();
if (files.length === 0) {
  console.error(wanted ? `No bench is named like "${wanted}".` : 'There is no bench.');
  process.exit(2);
}

/** What else the machine was doing, as the system counts it. */
const [load = 0] = loadavg();
const shared = load > cpus().length / 2;

const results = [];
for (const file of files) {
  const result = await measure(file);
  console.log(`${section(result)}\n`);
  results.push(result);
}

if (wanted === '') {
  const opening = [
    '# Measured',
    'Written by `npm run bench`. The ratios count; the times are this machine’s.',
    `Commit ${commit()}. ${machine()}.`,
    ...(shared
      ? [`Other work ran on the machine meanwhile: a load of ${load.toFixed(1)} when this began.`]
      : []),
  ];
  const { format } = await import('prettier');
  const text = [...opening, ...results.map(section)].join('\n\n');
  writeFileSync(join(folder, 'README.md'), await format(text, { parser: 'markdown' }));
}

const exceeded = results.flatMap(({ rows }) => rows.filter((row) => !holds(row)));
for (const row of exceeded) {
  console.error(`${row.what}: ${ratioOf(row).toFixed(2)} × ${row.against}, at most ${row.atMost}.`);
}
process.exitCode = exceeded.length === 0 ? 0 : 1;
