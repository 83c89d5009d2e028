import { placeAt, quantityAt } from '../book/look.ts';
import { tryOut } from '../panels/views/entry-view.ts';
import { filterView } from '../panels/views/filter-view.ts';
import type { Workbook } from '../panels/workbook.ts';
import { over } from '../session/session.ts';
import type { Action } from './actions.ts';
import { columnHere } from '../commands/filter.ts';
import { findNext } from './find.ts';
import { placeNamed } from '../panels/views/place-named.ts';
import type { GridHand } from './grid-hand.ts';
import { lookAt } from './look-at.ts';
import { createViews, type ViewParts } from './workbook-views.ts';
import { words } from '../words/words.ts';

export interface WorkbookParts extends ViewParts {
  /** The grid, once it has loaded. */
  readonly hand: () => GridHand | undefined;
}

/** What panels see of the desk, and what they may ask of it. */
export function createWorkbook(parts: WorkbookParts): Workbook {
  const { desk, actions, notices, hand } = parts;
  const workbook: Workbook = {
    ...createViews(parts),

    run(id, args) {
      const action = actions.find((one) => one.id === id);
      if (!action) throw new Error(words.app.noCommand(id));
      const unavailable = action.unavailable?.();
      if (unavailable !== undefined) {
        notices.say(unavailable, 'refused');
        return false;
      }
      const outcome = action.run(args);
      if (outcome instanceof Promise) {
        void outcome.then((late) => tell(late));
        return true;
      }
      tell(outcome, id);
      return outcome.ok;
    },
    show(sheet) {
      desk.value?.session.show(sheet);
      hand()?.follow();
    },
    jump({ sheet, from, to }) {
      if (!finished()) return;
      const session = desk.value?.session;
      session?.show(sheet);
      session?.select(over({ from, to: to ?? from }));
      hand()?.follow();
      hand()?.focus();
    },
    jumpTo(text) {
      const now = desk.value;
      if (!now) return words.app.openFirst;
      const place = placeNamed(now.book.document, now.session.state.sheet, text);
      if ('reason' in place) return place.reason;
      workbook.jump(place);
      return null;
    },
    type(text) {
      const session = desk.value?.session;
      if (!session) return;
      const { entry, sheet, selection: chosen } = session.state;
      session.type({ ...(entry ?? { sheet, spot: chosen.focus }), text });
      hand()?.setText(text);
    },
    enter(text, then) {
      const now = desk.value;
      if (!now) return words.app.openFirst;
      const { entry, sheet: inView, selection: chosen } = now.session.state;
      const { sheet, spot } = entry ?? { sheet: inView, spot: chosen.focus };
      const action = actions.find(({ id }) => id === 'cells.type');
      const outcome = action?.run({ sheet, spot, text });
      if (!outcome || outcome instanceof Promise) return true;
      if (!outcome.ok) return outcome.reason;
      now.session.type(null);
      now.session.show(sheet);
      hand()?.leave(spot, then);
      tell(outcome);
      return true;
    },
    cancel() {
      const session = desk.value?.session;
      const entry = session?.state.entry;
      session?.type(null);
      hand()?.drop();
      if (entry && entry.sheet !== session?.state.sheet)
        workbook.jump({ sheet: entry.sheet, from: entry.spot });
      hand()?.focus();
    },
    tryOut(text) {
      const now = desk.value;
      if (!now) return { text: '' };
      const { entry, sheet, selection: chosen } = now.session.state;
      const spot = { sheet: entry?.sheet ?? sheet, ...(entry?.spot ?? chosen.focus) };
      const place = placeAt(now.book.document, spot);
      const quantity = place && quantityAt(now.book.document, place);
      return tryOut(lookAt(now), spot.sheet, text, quantity);
    },
    say: (sentence) => notices.say(sentence, 'refused'),
    photo: async (hash) => desk.value?.photos.url(hash),
    propertiesOf: (sheet) => desk.value?.book.document.sheet(sheet)?.properties,
    filterHere() {
      const here = desk.value && columnHere(desk.value.context);
      const { filter = null } = workbook.propertiesOf(desk.value?.state.value.sheet ?? '') ?? {};
      return here ? filterView(here, filter) : undefined;
    },
    findNext: (wanted, way) =>
      desk.value ? findNext(desk.value, wanted, way, workbook.jump) : words.app.openFirst,
  };

  /** Ends an entry in progress before something else is looked at; false if it is refused. */
  function finished(): boolean {
    const entry = desk.value?.session.state.entry;
    const taken = entry ? workbook.enter(entry.text, 'stay') : true;
    if (taken !== true) notices.say(taken, 'refused');
    return taken === true;
  }

  function tell(outcome: Awaited<ReturnType<Action['run']>>, id?: string): void {
    if (!outcome.ok) notices.say(outcome.reason, 'refused');
    else if (outcome.say !== undefined) notices.say(outcome.say, 'done', undoable(id));
  }
  return workbook;
}

/** What can be taken back with one more click. */
const undoable = (id: string | undefined) => id !== undefined && /\.(delete|remove)/i.test(id);
