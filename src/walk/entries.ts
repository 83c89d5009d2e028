import { describeCells } from '../book/make/properties.ts';
import { enter, type Entry } from '../book/make/enter.ts';
import { withEntry } from '../book/make/entered.ts';
import { cellAtSpot, placeAt, type Spot } from '../book/look.ts';
import type { Document, Photo, Receptor, Taken } from '../book/types.ts';
import { rowCaption } from '../check/captions.ts';
import { done, refused, type Command, type Context, type Outcome } from '../commands/command.ts';
import { carryOut, doSteps } from '../commands/doing.ts';
import { addPoint } from './fill.ts';
import { captionsOf } from './standing.ts';
import { nameOfRow } from './tables.ts';
import { words } from '../words/words.ts';

/** What Walk changes, each as one gesture that undo names by its point: "Walk: Fill side of face". */

interface AtPoint {
  readonly spot: Spot;
}

const pointOf = (document: Document, { sheet, row, column }: Spot): string =>
  rowCaption(document, sheet, row, column) || words.walk.row(row + 1);

function put(context: Context, entries: readonly Entry[], label: string): Outcome {
  const entered = enter(context.book.document, context.means, entries, { label });
  return entered.ok ? carryOut(context, entered) : refused(entered.reason);
}

/** A reading as the meter says it, with when and by which meter; an empty text takes it away. */
export const fillReading: Command<AtPoint & { readonly text: string; readonly taken?: Taken }> = {
  id: 'walk.fill',
  name: words.walk.fill,
  group: 'book',
  run(context, { spot, text, taken }) {
    const entry = { ...spot, text, ...(taken && text !== '' && { taken }) };
    return put(context, [entry], words.walk.filled(pointOf(context.book.document, spot)));
  },
};

/** Where the note on a point stands: in its row under "Note", else on the reading itself. */
export function noteSpot(document: Document, spot: Spot): Spot | undefined {
  const column = captionsOf(document, spot).get('note');
  const at = column === undefined ? undefined : { ...spot, column };
  return at && cellAtSpot(document, at)?.content.kind !== 'formula' ? at : undefined;
}

export function noteOn(document: Document, spot: Spot): string {
  const at = noteSpot(document, spot);
  const content = at && cellAtSpot(document, at)?.content;
  if (at) return content?.kind === 'text' ? content.text : '';
  return cellAtSpot(document, spot)?.note ?? '';
}

export const noteOnPoint: Command<AtPoint & { readonly text: string }> = {
  id: 'walk.note',
  name: words.walk.note,
  group: 'book',
  run(context, { spot, text }) {
    const { document } = context.book;
    const label = words.walk.noteOf(pointOf(document, spot));
    const note = text.trim();
    if (note === noteOn(document, spot)) return done;
    const at = noteSpot(document, spot);
    if (at) return put(context, [{ ...at, text: asWords(note) }], label);
    const region = { ...spot, top: spot.row, left: spot.column, height: 1, width: 1 };
    const patch = { note: note === '' ? null : note };
    return carryOut(context, describeCells(document, context.means, [region], patch, label));
  },
};

/** Words that would be read as a formula or a number are kept as words. */
const asWords = (note: string): string => (/^[='+\-\d]/.test(note) ? `'${note}` : note);

const unreadable = words.walk.notReadable;

/** A point that no meter reaches: its reading goes, and its note says so. */
export const notReadable: Command<AtPoint> = {
  id: 'walk.notReadable',
  name: words.walk.cannotBeRead,
  group: 'book',
  run(context, { spot }) {
    const { document } = context.book;
    const label = words.walk.notReadableAt(pointOf(document, spot));
    const at = noteSpot(document, spot);
    if (at) {
      const before = noteOn(document, spot);
      const notes = before.includes(unreadable) ? [before] : [before, unreadable];
      const text = notes.filter(Boolean).join(', ');
      const entries = [
        { ...spot, text: '' },
        { ...at, text: asWords(text) },
      ];
      return put(context, entries, label);
    }
    const place = placeAt(document, spot);
    const cell = place && cellAtSpot(document, spot);
    if (!place || !cell) return done;
    const emptied = withEntry(cell, { content: { kind: 'blank' } });
    const noted = { content: { kind: 'blank' }, ...emptied, note: unreadable } as const;
    return doSteps(context, label, [
      { kind: 'setCells', sheet: spot.sheet, cells: [{ ...place, cell: noted }] },
    ]);
  },
};

/** Where a row says how its reading is metered, and what it says; undefined where it says nothing. */
export function meterOf(
  document: Document,
  spot: Spot,
  isFirstRound: boolean,
): { readonly at?: Spot; readonly says: string; readonly chosen: boolean } | undefined {
  const cell = cellAtSpot(document, spot);
  const column = captionsOf(document, spot).get(isFirstRound ? 'meter' : 'with');
  const at = column === undefined ? undefined : { ...spot, column };
  const content = at && cellAtSpot(document, at)?.content;
  if (at && content?.kind === 'text' && content.text !== '') {
    const chosen = content.text === 'dome' || content.text === 'flat';
    return { at, says: content.text, chosen };
  }
  return cell?.receptor ? { says: cell.receptor, chosen: true } : undefined;
}

export const meterAtPoint: Command<
  AtPoint & { readonly receptor: Receptor; readonly isFirstRound: boolean }
> = {
  id: 'walk.meter',
  name: words.walk.meter,
  group: 'book',
  run(context, { spot, receptor, isFirstRound }) {
    const { document } = context.book;
    const label = words.walk.meterAt(receptor, pointOf(document, spot));
    const at = meterOf(document, spot, isFirstRound)?.at;
    if (at) return put(context, [{ ...at, text: receptor }], label);
    const region = { ...spot, top: spot.row, left: spot.column, height: 1, width: 1 };
    return carryOut(context, describeCells(document, context.means, [region], { receptor }, label));
  },
};

/** A photo of the point goes with its reading. */
export const photoAtPoint: Command<AtPoint & { readonly photo: Photo }> = {
  id: 'walk.photo',
  name: words.walk.photoName,
  group: 'book',
  run: (context, { spot, photo }) =>
    putPhotos(context, spot, [...photosAt(context, spot, photo), photo], words.walk.photoOf),
};

export const dropPhoto: Command<AtPoint & { readonly photo: Photo }> = {
  id: 'walk.dropPhoto',
  name: words.walk.dropPhoto,
  group: 'book',
  run: (context, { spot, photo }) =>
    putPhotos(context, spot, photosAt(context, spot, photo), words.walk.dropPhotoOf),
};

/** The photos of a cell but for one. */
const photosAt = ({ book }: Context, spot: Spot, { hash }: Photo): readonly Photo[] =>
  (cellAtSpot(book.document, spot)?.photos ?? []).filter((one) => one.hash !== hash);

function putPhotos(
  context: Context,
  spot: Spot,
  photos: readonly Photo[],
  labelled: (point: string) => string,
): Outcome {
  const { document } = context.book;
  const label = labelled(pointOf(document, spot));
  const region = { ...spot, top: spot.row, left: spot.column, height: 1, width: 1 };
  const patch = { photos: photos.length > 0 ? photos : null };
  return carryOut(context, describeCells(document, context.means, [region], patch, label));
}

/** A point more in the table of the one at hand, and the way to it. */
export const nextPoint: Command<AtPoint & { readonly name: string }> = {
  id: 'walk.addNamed',
  name: words.walk.addNamed,
  group: 'book',
  run(context, { spot, name }) {
    const { document } = context.book;
    const { sheet } = spot;
    let last = spot.row;
    while (nameOfRow(document, sheet, last + 1) !== '') last += 1;
    const table = { columns: new Map<string, number>(), rows: [last] };
    const { made, row } = addPoint(document, context.means, sheet, name.trim(), table);
    const outcome = carryOut(context, made);
    const at = row === undefined ? -1 : (document.sheet(sheet)?.rows.indexOf(row) ?? -1);
    if (outcome.ok && at >= 0) {
      const there = { row: at, column: spot.column };
      context.session.selectBlock({ from: there, to: there });
    }
    return outcome;
  },
};
