import type { AnyDefinition } from '../../functions/define.ts';
import { units } from '../../functions/quantities/units.ts';
import { cellAtSpot } from '../book/look.ts';
import { usualSettings } from '../book/settings.ts';
import type { Role } from '../book/types.ts';
import { computed, untracked, type ReadonlySignal } from '../panels/kit/signals.ts';
import { gestures } from '../panels/verbs.ts';
import { entryView } from '../panels/views/entry-view.ts';
import { filteredInWords } from '../panels/views/filter-view.ts';
import { footView, rolesOn } from '../panels/views/foot-view.ts';
import { bookAgreement, contentsView, headView } from '../panels/views/head-view.ts';
import type { Look } from '../panels/views/look.ts';
import { namesOf } from '../panels/views/names-view.ts';
import { remarksView } from '../panels/views/remarks-view.ts';
import { slipView } from '../panels/views/slip-view.ts';
import type { Figures } from '../panels/figures/seam.ts';
import type { RemarksView, SaveView, StartView } from '../panels/shown.ts';
import type { WorkbookViews } from '../panels/workbook.ts';
import { at, type SessionState } from '../session/session.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import type { Notices } from './notices.ts';
import type { Updates } from './offline/updates.ts';
import type { Versions } from './versions.ts';
import { lookAt } from './look-at.ts';
import { createPoints } from './points-of.ts';

export interface ViewParts {
  readonly desk: ReadonlySignal<Desk | null>;
  readonly start: ReadonlySignal<StartView>;
  readonly save: ReadonlySignal<SaveView>;
  readonly actions: readonly Action[];
  readonly functions: ReadonlySignal<readonly AnyDefinition[]>;
  readonly figures: Figures;
  readonly notices: Notices;
  readonly updates: Updates;
  readonly versions: Versions;
}

type Points = ReturnType<typeof createPoints>;

const nowhere: SessionState = {
  sheet: '',
  selection: at(0, 0),
  left: new Map(),
  entry: null,
  clip: null,
};

/** What panels see, made from the desk: views are worked out when somebody looks and something changed. */
export function createViews(parts: ViewParts): WorkbookViews {
  const { desk, actions, notices } = parts;
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

  return {
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
        .map((action) => ({
          id: action.id,
          name: nameNow(action, now),
          group: action.group,
          keys: action.keys ?? [],
          search: action.search ?? [],
          // Asked only of what is in view: some look through the whole sheet for their reason.
          get unavailable() {
            return action.unavailable?.();
          },
        }));
    }),
  };
}

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
  comesFrom: { links: [], more: 0 },
  goesTo: { links: [], more: 0 },
  remarks: [],
  note: '',
} as const;
