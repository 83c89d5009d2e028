import type { AnyDefinition } from '../../functions/define.ts';
import { units } from '../../functions/quantities/units.ts';
import { cellAtSpot, placeAt, quantityAt } from '../book/look.ts';
import { usualSettings, writingSettings } from '../book/settings.ts';
import type { Role } from '../book/types.ts';
import { computed, untracked, type ReadonlySignal } from '../panels/kit/signals.ts';
import { gestures } from '../panels/verbs.ts';
import { entryView, tryOut } from '../panels/views/entry-view.ts';
import { filterView, filteredInWords } from '../panels/views/filter-view.ts';
import { footView, rolesOn } from '../panels/views/foot-view.ts';
import { bookAgreement, contentsView, headView } from '../panels/views/head-view.ts';
import type { Look } from '../panels/views/look.ts';
import { namesOf } from '../panels/views/names-view.ts';
import { remarksView } from '../panels/views/remarks-view.ts';
import { slipView } from '../panels/views/slip-view.ts';
import type { Figures } from '../panels/figures/seam.ts';
import type { RemarksView, SaveView, StartView, Workbook } from '../panels/workbook.ts';
import { at, over, type SessionState } from '../session/session.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import { columnHere } from '../commands/filter.ts';
import { findNext } from './find.ts';
import { placeNamed } from '../panels/views/place-named.ts';
import type { GridHand } from './grid-hand.ts';
import type { Notices } from './notices.ts';
import type { Updates } from './offline/updates.ts';
import type { Versions } from './versions.ts';
import { createPoints } from './points-of.ts';
import { words } from '../words/words.ts';

export interface WorkbookParts {
  readonly desk: ReadonlySignal<Desk | null>;
  readonly start: ReadonlySignal<StartView>;
  readonly save: ReadonlySignal<SaveView>;
  readonly actions: readonly Action[];
  readonly functions: ReadonlySignal<readonly AnyDefinition[]>;
  readonly figures: Figures;
  readonly notices: Notices;
  readonly updates: Updates;
  readonly versions: Versions;
  /** The grid, once it has loaded. */
  readonly hand: () => GridHand | undefined;
}

type Points = ReturnType<typeof createPoints>;

const nowhere: SessionState = {
  sheet: '',
  selection: at(0, 0),
  left: new Map(),
  entry: null,
  clip: null,
};

/** The book on the desk as views look at it. */
export const lookAt = (now: Desk): Look => ({
  document: now.book.document,
  engine: now.engine,
  remarksAt: now.remarksAt,
  writing: writingSettings(now.book.document.settings),
});

/** What panels see, made from the desk: views are worked out when somebody looks and something changed. */
export function createWorkbook(parts: WorkbookParts): Workbook {
  const { desk, actions, notices, hand } = parts;
  const pointsOfDesk = new WeakMap<Desk, Points>();

  /** A view that follows each change, or only what has settled. */
  const view = <View>(
    when: 'changed' | 'settled',
    make: (look: Look, state: SessionState, now: Desk) => View,
    empty: View,
  ): ReadonlySignal<View> =>
    computed(() => {
      const now = desk.value;
      if (!now) return empty;
      void now[when].value;
      return make(lookAt(now), now.state.value, now);
    });
  const pointsOf = (now: Desk): Points => {
    const known = pointsOfDesk.get(now) ?? createPoints(now.book);
    pointsOfDesk.set(now, known);
    return known;
  };
  const points = (now: Desk, look: Look) => (sheet: string) => pointsOf(now).of(look, sheet);

  const shownSheet = computed(() => desk.value?.state.value.sheet ?? '');
  const selection = computed(() => desk.value?.state.value.selection ?? nowhere.selection);
  const follow = <View>(make: (look: Look, now: Desk) => View, empty: View) =>
    computed(() => {
      const now = desk.value;
      if (!now) return empty;
      void now.settled.value;
      return make(lookAt(now), now);
    });
  const remarks = computed(() => {
    const now = desk.value;
    return now ? remarksView(now.book.document, now.remarks.value) : noRemarks;
  });
  const roles = follow<readonly Role[]>((look) => rolesOn(look, shownSheet.value), []);

  const workbook: Workbook = {
    page: computed(() => (desk.value ? 'book' : 'start')),
    start: parts.start,
    save: parts.save,
    functions: parts.functions,
    figures: parts.figures,
    notice: notices.now,
    updateReady: parts.updates.ready,
    versions: parts.versions.view,
    comparison: parts.versions.comparison,
    title: view('changed', ({ document }) => document.title, ''),
    settings: view('changed', ({ document }) => ({ ...document.settings }), usualSettings),
    contents: follow(
      (look, now) =>
        contentsView(look.document, shownSheet.value, points(now, look), remarks.value),
      [],
    ),
    agreement: follow((look, now) => bookAgreement(pointsOf(now).all(look)), ''),
    remarks,
    head: follow(
      (look, now) => {
        const id = shownSheet.value;
        const held = pointsOf(now).isHeld(look, id);
        return headView(look.document, id, points(now, look), held, filteredInWords(look, id));
      },
      {
        sheet: '',
        title: '',
        purpose: '',
        points: [],
        agreement: '',
        tolerance: usualSettings.tolerance,
        ownTolerance: false,
        filtered: '',
        isHeld: false,
      },
    ),
    entry: view('changed', entryView, {
      address: '',
      label: '',
      text: '',
      typing: false,
      quantity: undefined,
      result: { text: '' },
    }),
    slip: computed(() => {
      const now = desk.value;
      if (!now) return emptySlip;
      void now.changed.value;
      return slipView(lookAt(now), { sheet: shownSheet.value, ...selection.value.focus });
    }),
    foot: computed(() => {
      const now = desk.value;
      if (!now) return { facts: [], hint: '', roles: [] };
      void now.changed.value;
      return footView(lookAt(now), shownSheet.value, selection.value, roles.value);
    }),
    names: view('changed', namesOf, []),
    fixtures: view('changed', ({ document }) => document.shelf('fixtures').items, []),
    spectra: view('changed', ({ document }) => document.shelf('spectra').items, []),
    format: computed(() => {
      const now = desk.value;
      if (!now) return { format: {}, units: [] };
      void now.changed.value;
      const spot = { sheet: shownSheet.value, ...selection.value.focus };
      const quantity = now.engine.quantityOf(spot);
      return {
        format: cellAtSpot(now.book.document, spot)?.format ?? {},
        units: quantity ? units[quantity].units.map(({ symbol }) => symbol) : [],
      };
    }),
    commands: computed(() => {
      const now = desk.value;
      void now?.changed.value;
      void now?.state.value;
      return actions
        .filter(({ id }) => !gestures.has(id))
        .map((action) => {
          const unavailable = action.unavailable?.();
          return {
            id: action.id,
            name: nameNow(action, now),
            group: action.group,
            keys: action.keys ?? [],
            search: action.search ?? [],
            ...(unavailable !== undefined && { unavailable }),
          };
        });
    }),

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
      const { filter = null } = workbook.propertiesOf(shownSheet.value) ?? {};
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

/** "Undo: Type in Key side" says which. */
function nameNow({ id, name }: Action, desk: Desk | null): string {
  const history = untracked(() => desk?.book.history);
  const last =
    id === 'edit.undo' ? history?.done : id === 'edit.redo' ? history?.undone : undefined;
  const label = last?.at(-1)?.label;
  return label ? `${name}: ${label}` : name;
}

const noRemarks: RemarksView = { count: 0, marks: [], notes: [] };

const emptySlip = {
  address: '',
  role: 'blank',
  title: '',
  caption: '',
  value: { text: '' },
  facts: [],
  row: [],
  comesFrom: [],
  goesTo: [],
  remarks: [],
  note: '',
} as const;
