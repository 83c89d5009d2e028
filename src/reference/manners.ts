import { words } from '../words/words.ts';

/** How every function takes its arguments and says what cannot be. Code stands between backticks. */
export const manners: readonly string[] = [
  words.reference.mannerUnits,
  words.reference.mannerMarks,
  words.reference.mannerEmpty,
  words.reference.mannerSigns,
  words.reference.mannerPlain,
];
