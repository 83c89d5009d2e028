import { prepare } from './door.ts';

export { connectEngine } from './connect.ts';
export { findingsIn, outerCall, standardRemarks } from './inspect.ts';
export { hasUsual } from './remarks.ts';
export { valuesFor } from './outside.ts';
export type * from './findings.ts';
export type { KnownKind } from './kinds.ts';
export type * from './types.ts';

let names: ReadonlySet<string> | undefined;

/** The names of all functions a formula may use, in capitals: the library's and the ordinary ones. */
export function functionNames(): ReadonlySet<string> {
  names ??= new Set(prepare());
  return names;
}

/** Whether a name is a function's, without regard to case. */
export function isFunction(name: string): boolean {
  return functionNames().has(name.toUpperCase());
}
