import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { suites, runSuite } = await import('./suites.mjs');

const wanted = process.argv.slice(2);
const unknown = wanted.find((name) => !(name in suites));
if (unknown !== undefined) {
  console.error(`There is no suite "${unknown}". There are ${Object.keys(suites).join(', ')}.`);
  process.exit(2);
}

const names = wanted.length > 0 ? wanted : Object.keys(suites);
const rows = /** @type {Awaited<ReturnType<typeof runSuite>>[]} */ ([]);
for (const name of names) {
  console.log(`\n── ${name} ──`);
  rows.push(await runSuite(name));
}

for (const { name, failures } of rows)
  for (const failure of failures) console.log(`\nFailed in ${name}: ${failure}`);

console.log('');
for (const { name, seconds, passed, failed, skipped } of rows) {
  const left = skipped > 0 ? `, ${skipped} skipped` : '';
  console.log(
    `${name.padEnd(10)} ${seconds.toFixed(1).padStart(7)} s   ${passed} passed, ${failed} failed${left}`,
  );
}
const sum = (/** @type {'passed' | 'failed'} */ what) =>
  rows.reduce((all, row) => all + row[what], 0);
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 && sum('passed') > 0 ? 0 : 1;
