import type { Book, Change, Means } from '../book/types.ts';
import type { Checker } from '../check/checker.ts';
import type { Remark } from '../check/remark.ts';
import type { Context } from '../commands/command.ts';
import type { CellPlace, Engine, Recalculated } from '../engine/types.ts';
import { batch, computed, signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import { createSession, type Session, type SessionState } from '../session/session.ts';
import { literalEngine } from './literal-engine.ts';
import type { Photos } from './photos.ts';
import { createRemarking, type Remarking } from './remarks.ts';
import { effectsTouch } from './touched.ts';

/** A book on the desk: with its session, its engine, and ticks that tell the screen to look again. */
export interface Desk {
  readonly id: string;
  readonly book: Book;
  readonly session: Session;
  readonly context: Context;
  readonly photos: Photos;
  readonly engine: Engine;
  readonly state: ReadonlySignal<SessionState>;
  /** Goes up once all who listen to the book and the engine have heard of a change. */
  readonly changed: ReadonlySignal<number>;
  /** The same after a pause, for what looks at whole sheets. */
  readonly settled: ReadonlySignal<number>;
  /** Cells to paint anew, told right before `changed`. */
  onPaint(paint: (what: Recalculated & { readonly structure: boolean }) => void): void;
  /** What the check has to say about a cell; nothing until it has loaded. */
  remarksAt(place: CellPlace): readonly string[];
  /** On the whole book, a moment after each change. */
  readonly remarks: ReadonlySignal<readonly Remark[]>;
  /** The engine has loaded, and with it the check. */
  calculateWith(engine: Engine, checker: Checker): void;
  close(): void;
}

/** How long the engine took last, as the browser's own tools show it and the bench reads it. */
const recalculating = {
  since: undefined as number | undefined,
  begin() {
    this.since = performance.now();
  },
  end() {
    if (this.since === undefined) return;
    performance.clearMeasures('recalculate');
    performance.measure('recalculate', { start: this.since });
    this.since = undefined;
  },
};

/** Long enough not to look at whole sheets between two key presses. */
const pause = 80;

export function createDesk(id: string, book: Book, means: Means, photos: Photos): Desk {
  const { document } = book;
  const session = createSession(document.sheets[0]?.id ?? '');
  let engine = literalEngine(document);
  let checker: Checker | undefined;
  const remarking = signal<Remarking | null>(null);
  const remarks = computed(() => remarking.value?.all.value ?? []);
  const state = signal(session.state);
  const changed = signal(0);
  const settled = signal(0);
  let paint: Parameters<Desk['onPaint']>[0] = () => undefined;
  let waiting: { cells: Recalculated['cells'][number][]; all: boolean; structure: boolean } | null =
    null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** Everything that one change sets off is told of together, when all of it has happened. */
  const tell = (cells: Recalculated['cells'], all: boolean, structure: boolean): void => {
    if (!waiting) {
      waiting = { cells: [], all: false, structure: false };
      queueMicrotask(flush);
    }
    for (const cell of cells) waiting.cells.push(cell);
    waiting.all ||= all;
    waiting.structure ||= structure;
  };
  const flush = (): void => {
    const what = waiting;
    waiting = null;
    if (!what) return;
    paint(what);
    batch(() => {
      state.value = session.state;
      changed.value += 1;
    });
    clearTimeout(timer);
    timer = setTimeout(() => {
      settled.value += 1;
      remarking.value?.readOn();
    }, pause);
  };

  const stops = [
    session.listen((next) => {
      // What a change moves on this screen, the selection say, is drawn together with the change.
      if (!waiting) state.value = next;
    }),
    book.listen((change: Change) => {
      recalculating.begin();
      const { cells, all, structure } = effectsTouch(document, change);
      const shown = session.state.sheet;
      if (!document.sheet(shown)) session.show(document.sheets[0]?.id ?? '');
      tell(cells, all, structure);
    }),
  ];

  return {
    id,
    book,
    session,
    photos,
    context: {
      book,
      session,
      means,
      get engine() {
        return engine;
      },
    },
    get engine() {
      return engine;
    },
    state,
    changed,
    settled,
    onPaint: (painter) => (paint = painter),
    remarks,
    remarksAt: (place) => checker?.at(place).map(({ sentence }) => sentence) ?? [],
    calculateWith(loaded, checking) {
      engine.dispose();
      engine = loaded;
      checker = checking;
      remarking.value = createRemarking(checking);
      stops.push(
        loaded.listen(({ cells, all }) => {
          recalculating.end();
          tell(cells, all, false);
        }),
      );
      tell([], true, false);
    },
    close() {
      clearTimeout(timer);
      remarking.value?.stop();
      for (const stop of stops) stop();
      checker?.dispose();
      engine.dispose();
    },
  };
}
