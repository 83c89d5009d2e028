import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project, wherever a script was started from. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the built app goes: dist, or another folder, so that two builds do not get in each other's way. */
export const dist = resolve(root, process.env['DIST'] ?? 'dist');

/** Where the pages go that only tests open. */
export const distTests = `${dist}-tests`;
