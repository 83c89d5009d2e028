import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import { root } from './root.mjs';
import { run } from './run.mjs';

const folder = join(root, 'functions');
/** @type {{ families: readonly string[] }} */
const { families } = await tsImport('../../functions/define.ts', import.meta.url);

/** What is wrong with a new function's family and name, if anything. @param {string} family @param {string} name */
function fault(family, name) {
  if (!families.includes(family)) return `The family is one of ${families.join(', ')}.`;
  if (!/^[A-Z][A-Z0-9]*$/.test(name)) return 'The name is in capitals, e.g. INVERSESQUARE.';
  if (/^[A-Z]{1,3}[0-9]+$/.test(name)) return `${name} reads as the address of a cell.`;
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const taken = files.find((path) => path.split(/[\\/]/).pop() === `${name}.ts`);
  return taken && `${name} is there already: functions/${taken}.`;
}

/** Compiles, and fails its examples until they are written. @param {string} family @param {string} name */
const scaffold = (family, name) => `import { define } from '../define.ts';
import { positive } from '../domains.ts';

function run(lux: number, stops: number) {
  return Number.NaN * lux * stops;
}

export default define({
  name: '${name}',
  family: '${family}',
  summary: '',
  job: '',
  search: [],
  parameters: [
    { name: 'lux', quantity: 'illuminance', domain: positive, help: '' },
    { name: 'stops', quantity: 'stops', domain: positive, help: '' },
  ],
  result: 'number',
  alike: [],
  limits: '',
  sources: [{ from: 'common practice' }],
  examples: [{ args: [1, 1], result: 1, why: '' }],
  formula: '',
  run,
});
`;

const [family = '', name = ''] = process.argv.slice(2);
const wrong = fault(family, name);
if (wrong) {
  console.error(`${wrong}\nUsage: npm run new -- FAMILY NAME`);
  process.exit(2);
}
const path = `functions/${family}/${name}.ts`;
mkdirSync(join(folder, family), { recursive: true });
writeFileSync(join(root, path), scaffold(family, name));
console.log(`Wrote ${path}: say what it is, then npm test -- unit.`);
process.exitCode = await run('src/tools/generate.mjs', []);
