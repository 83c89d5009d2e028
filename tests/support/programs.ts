import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The first of these programs that is installed. */
export function installed(...names: readonly string[]): string | undefined {
  return (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)))
    .find(isProgram);
}

/** Whether REQUIRE names it: then a test may not be left out for want of it. */
export const isRequired = (name: string): boolean =>
  (process.env['REQUIRE'] ?? '').split(',').includes(name);
