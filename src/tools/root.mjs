import { fileURLToPath } from 'node:url';

/** The folder of the project, wherever a script was started from. */
export const root = fileURLToPath(new URL('../..', import.meta.url));
