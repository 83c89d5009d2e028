import type { Reader } from './parsed.ts';

const words: ReadonlyMap<string, boolean> = new Map([
  ['true', true],
  ['yes', true],
  ['y', true],
  ['false', false],
  ['no', false],
  ['n', false],
]);

/** Yes is 1, no is 0. */
export const readTruth: Reader = (text) => {
  const truth = words.get(text.toLowerCase());
  return truth === undefined ? undefined : { value: truth ? 1 : 0, unitWritten: true };
};
