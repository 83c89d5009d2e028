import type { QuantityName } from '../../../functions/quantities/names.ts';
import { spotOf } from '../../book/look.ts';
import { wallClock } from '../../book/wallClock.ts';
import type { Document, Id, Photo } from '../../book/types.ts';
import { done, refused, type Context, type Outcome } from '../../commands/command.ts';
import { mount } from '../../panels/kit/mount.ts';
import { computed, effect, signal, type ReadonlySignal } from '../../panels/kit/signals.ts';
import type { Screen, Theme } from '../../panels/screen.ts';
import { verbs } from '../../panels/verbs.ts';
import type { Workbook } from '../../panels/workbook.ts';
import type { SessionState } from '../../session/session.ts';
import { lastMeter, metersIn } from '../meters.ts';
import { passesOf, type WalkReading } from '../order.ts';
import { whole } from '../pad.ts';
import { keepAwake } from './awake.ts';
import { focusSoon, openBox } from './box.ts';
import { bookmarkIn, putBookmark } from './bookmark.ts';
import { askedBy } from './keyboard.ts';
import { keyOf } from './list.ts';
import { sceneOf, type Scene } from './scene.ts';
import { told } from './told.ts';
import { walkView, type Panel, type WalkHandles } from './view.ts';
import { words } from '../../words/words.ts';

/** The book on the desk as Walk sees it. */
export interface WalkDesk {
  readonly id: string;
  readonly context: Context;
  readonly state: ReadonlySignal<SessionState>;
  readonly changed: ReadonlySignal<number>;
}

export interface WalkMeans {
  readonly desk: ReadonlySignal<WalkDesk | null>;
  readonly workbook: Workbook;
  readonly screen: Screen;
  /** Runs a command; the outcome is Walk’s to say. */
  act(id: string, args?: unknown): Outcome;
  /** Scales a picture down and keeps it beside the book. */
  keepPhoto(file: File): Promise<Photo | { readonly reason: string }>;
  now(): Date;
}

/** One point at a time, for the hand that holds a meter. */
export interface WalkRoom {
  /** Opens at the selected reading, or says why there is nothing to walk. */
  open(): Outcome;
  /** Goes on where a walk in this book was when the page went away. */
  goOn(): void;
}

const noReadings = words.walk.noReadings;

export function createWalk(means: WalkMeans): WalkRoom {
  const { desk, workbook, screen } = means;
  const panel = signal<Panel>('point');
  const draft = signal<string | null>(null);
  const problem = signal('');
  const mode = signal<QuantityName | null>(null);
  /** Begins as that of the readings before. */
  const meterInUse = signal('');
  const meters = signal<readonly string[]>([]);
  const skipped = signal<ReadonlySet<string>>(new Set());
  const kept = signal(false);
  let before: Theme = 'system';
  let leave: (() => void) | undefined;

  const scene = computed(() => {
    const now = desk.value;
    if (!now) return undefined;
    void now.changed.value;
    void now.state.value;
    return sceneOf(now.context, mode.value);
  });

  const goTo = ({ spot }: WalkReading): void => {
    draft.value = null;
    problem.value = '';
    kept.value = false;
    panel.value = 'point';
    desk.value?.context.session.selectBlock({ from: spot, to: spot });
    focusEntry();
  };
  const focusEntry = () => focusSoon('.entry-now');
  const settle = (outcome: Outcome): boolean => {
    problem.value = outcome.ok ? '' : outcome.reason;
    return outcome.ok;
  };
  const at = (name: string, args: object): boolean => {
    const spot = scene.value?.reading.spot;
    return spot !== undefined && settle(means.act(name, { spot, ...args }));
  };

  const keep = (now: Scene): void => {
    const text = draft.value === '' ? '' : whole(draft.value ?? '', now.pad);
    const meter = meterInUse.value;
    const taken = { ...wallClock(means.now()), ...(meter && { meter }) };
    if (!at('walk.fill', { text, taken })) return;
    draft.value = null;
    kept.value = true;
  };
  const step = (now: Scene, by: 1 | -1): void => {
    const { pass, index, reading, standing } = now;
    const next = pass.readings[index + by];
    if (by === 1 && standing.value.text === '')
      skipped.value = new Set([...skipped.value, keyOf(reading)]);
    if (next) goTo(next);
    else if (by === 1) panel.value = 'list';
  };

  const turn = (verb: string): void => {
    draft.value = null;
    workbook.run(verb);
    focusEntry();
  };
  const takePhoto = async ({ reading: { spot } }: Scene, file: File): Promise<void> => {
    const photo = await means.keepPhoto(file);
    if ('reason' in photo) problem.value = photo.reason;
    else settle(means.act('walk.photo', { spot, photo }));
  };

  const handles = (now: Scene): WalkHandles => ({
    panel: panel.value,
    draft: draft.value,
    problem: problem.value,
    skipped: skipped.value,
    meterInUse: meterInUse.value,
    meters: meters.value,
    metering: screen.theme.value === 'metering',
    told: told(now, kept.value),
    undoes: desk.value?.context.book.history.done.at(-1)?.label,
    type(text) {
      draft.value = text;
      problem.value = '';
    },
    useMeter(name) {
      meterInUse.value = name.trim();
    },
    meter: (receptor) => at('walk.meter', { receptor, isFirstRound: now.isFirstRound }),
    mode(quantity) {
      mode.value = quantity;
      draft.value = null;
      focusEntry();
    },
    go: goTo,
    round(name) {
      const pass = now.passes.find((one) => one.name === name);
      const same = pass?.readings.find(({ spot }) => spot.row === now.reading.spot.row);
      const there = same ?? pass?.readings[0];
      if (!there) return;
      const stay = panel.value;
      goTo(there);
      panel.value = stay;
    },
    add(name) {
      draft.value = null;
      if (at('walk.addNamed', { name })) panel.value = 'point';
      focusEntry();
    },
    leave: () => leave?.(),
    show(next) {
      panel.value = next;
      if (next === 'point') focusEntry();
      if (next === 'note') focusSoon('textarea');
    },
    dim() {
      if (screen.theme.value === 'metering') screen.theme.value = before;
      else {
        before = screen.theme.value;
        screen.theme.value = 'metering';
      }
    },
    undo: () => turn(verbs.undo),
    redo: () => turn(verbs.redo),
    unreadable() {
      draft.value = null;
      if (at('walk.notReadable', {})) step(now, 1);
    },
    note(text) {
      if (at('walk.note', { text })) panel.value = 'point';
      focusEntry();
    },
    photo: (file) => void takePhoto(now, file),
    drop: (photo) => at('walk.dropPhoto', { photo }),
    back: () => step(now, -1),
    onward: () => step(now, 1),
    main: () => (draft.value === null ? step(now, 1) : keep(now)),
  });

  const draw = (): unknown => {
    const now = scene.value;
    return now ? walkView(now, handles(now), workbook) : '';
  };

  const escape = (): void => {
    if (draft.value !== null) draft.value = null;
    else if (panel.value !== 'point') panel.value = 'point';
    else return leave?.();
    problem.value = '';
    focusEntry();
  };

  const heard = (event: KeyboardEvent): void => {
    const now = scene.value;
    const asked = now && askedBy(event, draft.value !== null);
    if (!now || !asked) return;
    event.preventDefault();
    const { main, back, onward, undo, redo } = handles(now);
    ({ main, back, next: onward, undo, redo })[asked]();
  };

  const show = (): void => {
    const box = openBox({ escape, key: heard });
    const stops = [
      mount(box, draw),
      effect(() => {
        box.dataset['panel'] = panel.value;
        box.setAttribute('aria-label', words.walk.title(scene.value?.title ?? ''));
        // The last reading was deleted, or the book was closed: there is nothing to walk.
        if (!scene.value) queueMicrotask(() => leave?.());
      }),
      effect(() => {
        const place = scene.value?.reading.place;
        const book = desk.value?.id;
        if (place && book !== undefined)
          putBookmark({ book, place, draft: draft.value, skipped: [...skipped.value] });
      }),
      keepAwake(),
    ];
    leave = () => {
      leave = undefined;
      putBookmark(null);
      for (const stop of stops) stop();
      const reading = scene.value?.reading.spot;
      box.close();
      box.remove();
      if (reading) workbook.jump({ sheet: reading.sheet, from: reading });
    };
    box.showModal();
    focusEntry();
  };

  const begin = (document: Document, sheet: Id): void => {
    meterInUse.value = lastMeter(document, sheet);
    meters.value = metersIn(document);
    panel.value = 'point';
    draft.value = null;
    problem.value = '';
    mode.value = null;
    kept.value = false;
    skipped.value = new Set();
  };

  return {
    open() {
      const now = desk.value;
      if (!now) return refused(words.walk.openFirst);
      if (leave) return done;
      const { book, session } = now.context;
      begin(book.document, session.state.sheet);
      const here = scene.value;
      if (!here) return refused(noReadings);
      const { row } = session.state.selection.focus;
      const waits = here.pass.readings.find(({ spot }) => here.look.engine.valueOf(spot) === null);
      const there = here.reading.spot.row === row ? here.reading : (waits ?? here.reading);
      show();
      goTo(there);
      return done;
    },
    goOn() {
      const now = desk.value;
      const bookmark = now && bookmarkIn(now.id);
      if (!now || !bookmark || leave) return;
      const { session, book } = now.context;
      const spot = spotOf(book.document, bookmark.place);
      const isThere = (one: WalkReading) =>
        one.spot.row === spot?.row && one.spot.column === spot.column;
      const passes = spot ? passesOf(book.document, spot.sheet) : [];
      const reading = passes.flatMap(({ readings }) => readings).find(isThere);
      if (!reading) return putBookmark(null);
      begin(book.document, reading.spot.sheet);
      session.show(reading.spot.sheet);
      show();
      goTo(reading);
      skipped.value = new Set(bookmark.skipped);
      draft.value = bookmark.draft;
    },
  };
}
