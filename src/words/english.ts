import { commands } from './english/commands.ts';

/** Everything the product says, in English: one file for each part of the house. */
export const english = {
  commands,
} as const;
