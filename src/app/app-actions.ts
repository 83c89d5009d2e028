import type { Action } from './actions.ts';
import type { AppHands } from './app-hands.ts';
import { bookActions } from './book-actions.ts';
import { clipboardActions } from './clipboard-actions.ts';
import { figureActions } from './figure-actions.ts';
import { printActions } from './print-actions.ts';
import { addSheetAction } from './sheet-actions.ts';
import { viewActions } from './view-actions.ts';
import { withOpenBook } from './with-desk.ts';

/** Actions on whole books, on this screen and on the clipboard, beside the commands of a book. */
export function appActions(hands: AppHands): readonly Action[] {
  const open = withOpenBook(() => hands.desk());
  const { unavailable } = open;
  return [
    ...bookActions(hands, open),
    ...printActions(hands, unavailable),
    addSheetAction(hands, unavailable),
    ...figureActions(hands, unavailable),
    ...clipboardActions(open),
    ...viewActions(hands, unavailable),
  ];
}
