import { paste } from '../commands/clipboard.ts';
import {
  refused,
  type AnyCommand,
  type Command,
  type Context,
  type Outcome,
} from '../commands/command.ts';
import { carryOut } from '../commands/doing.ts';
import { sheetInView } from '../commands/selected.ts';
import { looksLikeWalk, readWalk } from '../files/walk.ts';
import { findTable } from './tables.ts';
import {
  dropPhoto,
  photoAtPoint,
  fillReading,
  meterAtPoint,
  nextPoint,
  noteOnPoint,
  notReadable,
} from './entries.ts';
import { addPoint, fillWalk } from './fill.ts';
import { words } from '../words/words.ts';

const noPoints = words.walk.noPoints;

/** Takes a walk of readings, as CSV or copied text, into the points of the sheet in view. */
export const takeIn: Command<{ readonly text: string }> = {
  id: 'walk.takeIn',
  name: words.walk.takeIn,
  group: 'book',
  run(context, { text }) {
    const walk = readWalk(text);
    if ('reason' in walk) return refused(walk.reason);
    const sheet = sheetInView(context).id;
    if (!takesWalks(context)) return refused(noPoints);
    const { made, says } = fillWalk(context.book.document, context.means, sheet, walk);
    return carryOut(context, made, says);
  },
};

/** A row for another point below the last one, counted like it. */
export const anotherPoint: Command = {
  id: 'walk.addPoint',
  name: words.walk.addPoint,
  group: 'rows',
  search: ['new point', 'reading', 'row'],
  unavailable: (context) => (takesWalks(context) ? undefined : noPoints),
  run(context) {
    const { made, row } = addPoint(
      context.book.document,
      context.means,
      sheetInView(context).id,
      words.walk.newPoint,
    );
    const outcome = carryOut(context, made);
    const at = row === undefined ? -1 : sheetInView(context).rows.indexOf(row);
    if (outcome.ok && at >= 0) {
      const spot = { row: at, column: 0 };
      context.session.selectBlock({ from: spot, to: spot });
    }
    return outcome;
  },
};

function takesWalks(context: Context): boolean {
  return findTable(context.book.document, sheetInView(context).id, 'point') !== undefined;
}

/** Pasted text: a walk goes to its points wherever the selection is, anything else to the selection. */
export function pasteOrTakeIn(
  context: Context,
  text: string,
  values: readonly (readonly string[])[] = [],
): Outcome {
  return looksLikeWalk(text) && takesWalks(context)
    ? (takeIn.run(context, { text }) as Outcome)
    : paste(context, text, 'all', values);
}

export const walkCommands: readonly AnyCommand[] = [
  takeIn,
  anotherPoint,
  fillReading,
  noteOnPoint,
  notReadable,
  meterAtPoint,
  nextPoint,
  photoAtPoint,
  dropPhoto,
];
