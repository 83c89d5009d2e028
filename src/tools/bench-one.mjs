import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { tsImport } from 'tsx/esm/api';

const [file = '', into = ''] = process.argv.slice(2);
/** @type {import('../../tests/bench/bench.ts').Bench} */
const { name, run } = await tsImport(pathToFileURL(file).href, import.meta.url);
const rows = await run();
if (rows.length === 0) throw new Error(`${file} measured nothing.`);
const wrong = rows.find(({ took, tookAgainst }) => !(took >= 0 && tookAgainst > 0));
if (wrong) throw new Error(`${file}: "${wrong.what}" has no time.`);
writeFileSync(into, JSON.stringify({ name, rows }));
