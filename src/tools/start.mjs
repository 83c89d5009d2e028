import { parseArgs } from 'node:util';
import { buildIfStale } from './build.mjs';
import { ensureInstalled } from './install.mjs';
import { dist } from './root.mjs';
import { serve } from './serve.mjs';

const { values } = parseArgs({ options: { port: { type: 'string', default: '4840' } } });
const port = Number(values.port);
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  console.error(`--port wants a number from 0 to 65535, and got "${values.port}".`);
  process.exit(2);
}

ensureInstalled();
if (!(await buildIfStale())) {
  console.error('The app could not be built: see the message above.');
  process.exit(1);
}
const { url, port: given } = await serve({ folder: dist, port });
if (port !== 0 && given !== port) {
  // A browser keeps books by address, and the port is part of it.
  console.log(`Port ${port} is taken. Books kept at that address do not show at this one.`);
}
console.log(`Halfstop is open at ${url}`);
console.log('Ctrl+C closes it.');
