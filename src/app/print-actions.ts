import type { Action } from './actions.ts';
import type { AppHands } from './app-hands.ts';
import { words } from '../words/words.ts';

/** What goes on paper: a sheet, the book, the page that hands a set-up over. */
export function printActions(
  hands: Pick<AppHands, 'print' | 'handOver'>,
  needsBook: () => string | undefined,
): readonly Action[] {
  return [
    {
      id: 'book.print',
      name: words.app.print,
      group: 'book',
      keys: ['Ctrl+P'],
      unavailable: needsBook,
      search: ['paper', 'pdf'],
      run: () => hands.print({ what: 'sheet' }),
    },
    {
      id: 'book.printAll',
      name: words.print.book,
      group: 'book',
      unavailable: needsBook,
      search: ['paper', 'pdf', 'all sheets'],
      run: () => hands.print({ what: 'book' }),
    },
    {
      id: 'book.handOver',
      name: words.print.handover,
      group: 'book',
      unavailable: needsBook,
      search: ['print', 'pdf', 'one page', 'summary', 'crew', 'rebuild', 'comparison'],
      run: () => hands.handOver(),
    },
    {
      id: 'book.printHandOver',
      name: words.print.handover,
      group: 'book',
      unavailable: needsBook,
      run: (args) => hands.print({ what: 'handOver', ...(args as { sheet: string }) }),
    },
  ];
}
