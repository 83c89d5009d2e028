import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';
import { functionHere } from './about-here.ts';
import { words } from '../../words/words.ts';

/** Opens the reference at a function, or at the one that the hand is at. It is fetched when first asked for. */
export function openReference(workbook: Workbook, shell: Shell, name?: string): void {
  const at = name ?? functionHere(workbook);
  import('./reference.ts').then(
    ({ reference }) => reference(workbook, shell, at),
    () => workbook.say(words.reference.notFetched),
  );
}
