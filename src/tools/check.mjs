import { ensureInstalled } from './install.mjs';

ensureInstalled();
const { runChecks } = await import('./checks.mjs');
const { passed, failed } = await runChecks();
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
