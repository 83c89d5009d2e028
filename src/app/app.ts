import type { AnyDefinition } from '../../functions/define.ts';
import { bookCommands } from '../commands/all.ts';
import type { Outcome } from '../commands/command.ts';
import { effect, signal } from '../panels/kit/signals.ts';
import { openCellMenu } from '../panels/page/cell-menu.ts';
import { createScreen } from '../panels/screen.ts';
import type { Shell } from '../panels/frame.ts';
import { openShell } from '../panels/shell.ts';
import { actionOf, type Action } from './actions.ts';
import { appActions } from './app-actions.ts';
import { chooseActions } from './choose-actions.ts';
import { createDesk, type Desk } from './desk.ts';
import { createFigures } from './figures.ts';
import { createFileDoor } from './file-door.ts';
import { gridEvents } from './grid-events.ts';
import { createHand, type GridHand } from './grid-hand.ts';
import { followRigs } from './live-rigs.ts';
import { followSweeps } from './live-sweeps.ts';
import { keepTries } from '../teach/tries.ts';
import { createKeyMap, isTyping } from './keys.ts';
import type { OpenedBook } from './library.ts';
import { createMeans } from './means.ts';
import { createNotices } from './notices.ts';
import { exchangeActions, importFile, type ExchangeHands } from './exchange-actions.ts';
import { keptActions } from './kept-actions.ts';
import { followUpdates } from './offline/updates.ts';
import { settingsHere } from './place.ts';
import { planActions } from './plan-actions.ts';
import { createPrinting } from './print.ts';
import { repeatActions } from './repeat-actions.ts';
import { teachActions } from './teach-actions.ts';
import { createShelf } from './shelf.ts';
import { hearUnexpected } from './unexpected.ts';
import { lookAt } from './look-at.ts';
import { createWorkbook } from './workbook.ts';
import { walkCommands } from '../walk/commands.ts';

/** Wires the house: shelf and desk, commands and keys, panels and grid. */
export function startApp(root: HTMLElement): void {
  const notices = createNotices();
  hearUnexpected(notices.broke);
  const screen = createScreen();
  const desk = signal<Desk | null>(null);
  const functions = signal<readonly AnyDefinition[]>([]);
  let isFunction = (_name: string): boolean => false;
  const means = createMeans((name) => isFunction(name));
  const heavy = import('./heavy.ts').then((loaded) => {
    isFunction = loaded.isFunction;
    functions.value = loaded.catalogue;
    return loaded;
  });
  const now = () => new Date();
  const figures = createFigures(desk, lookAt);
  let hand: GridHand | undefined;
  let stopFollowing = (): void => undefined;

  const clear = () => {
    stopFollowing();
    hand?.dispose();
    hand = undefined;
    desk.value?.close();
    desk.value = null;
    shell.grid.replaceChildren();
    delete shell.grid.dataset['ready'];
  };
  const lay = async (opened: OpenedBook | null) => {
    clear();
    if (!opened) return;
    const laid = createDesk(opened.id, opened.book, means, opened.photos);
    desk.value = laid;
    const [loaded, grid] = await Promise.all([
      heavy,
      createHand(shell.grid, laid, hear(laid), (caret) => shell.entry.focus(caret)),
    ]);
    if (desk.value !== laid) return grid.dispose();
    hand = grid;
    const engine = loaded.connectEngine(laid.book, {
      clock: now,
      chance: Math.random,
      fixtures: loaded.fixturesIn,
      spectra: loaded.spectraIn,
    });
    laid.calculateWith(engine, loaded.createChecker(laid.book, engine));
    const stops = [followSweeps(laid, means), followRigs(laid, means), keepTries(laid.book)];
    stopFollowing = () => stops.forEach((stop) => stop());
    grid.focus();
    shell.grid.dataset['ready'] = 'true';
    figures.prepare();
    printing.prepareWhenIdle();
    (await walk).goOn();
  };
  const shelf = createShelf({
    locale: navigator.language,
    now,
    newId: means.newId,
    lay,
    finish() {
      const entry = desk.value?.session.state.entry;
      return !entry || workbook.enter(entry.text, 'stay') === true;
    },
    tell: (outcome) => tell(outcome),
  });

  const updates = followUpdates(() => shelf.keepWork());

  const act = (id: string, args?: unknown): Outcome => {
    const outcome = actions.find((one) => one.id === id)?.run(args);
    return outcome && !(outcome instanceof Promise) ? outcome : { ok: true };
  };
  const tell = (outcome: Outcome) => {
    if (!outcome.ok) notices.say(outcome.reason, 'refused');
    else if (outcome.say !== undefined) notices.say(outcome.say);
  };
  const exchanging: ExchangeHands = {
    means,
    settings: settingsHere(navigator.language),
    desk: () => desk.value,
    begin: shelf.begin,
    tell,
  };
  const files = createFileDoor({
    ...shelf,
    tell,
    async toShelves(files) {
      if (!desk.value) return [];
      const { takeOntoShelves } = await import('../panels/shelf/door.ts');
      return takeOntoShelves(files, workbook);
    },
    other: (file) => importFile(exchanging, file),
  });
  const actions: readonly Action[] = [
    ...[...bookCommands, ...walkCommands].map((command) =>
      actionOf(command, () => desk.value?.context),
    ),
    ...appActions({
      ...shelf,
      files,
      screen,
      locale: navigator.language,
      newId: means.newId,
      desk: () => desk.value,
      act,
      find: () => shell.find(),
      showFigures: () => shell.figures(),
      showCells: () => hand?.focus(),
      saveFigure: (id, as) => figures.save(id, as),
      print: (job) => printing.print(job),
      async handOver() {
        const { handOverDialog } = await import('../panels/handover/dialog.ts');
        if (desk.value) handOverDialog(workbook, lookAt(desk.value), printing.date());
        return { ok: true };
      },
      walk: async () => (await walk).open(),
    }),
    ...exchangeActions(exchanging),
    ...chooseActions({ means, desk: () => desk.value, tell }),
    ...planActions({ means, desk: () => desk.value }),
    ...repeatActions({
      means,
      now,
      workbook: () => workbook,
      desk: () => desk.value,
      act,
      tell,
    }),
    ...teachActions({
      means,
      now,
      desk: () => desk.value,
      tell,
      print: (title, pages) => printing.print({ what: 'pages', title, pages }),
    }),
    ...keptActions({ ...shelf, updates, files, now, isBookOpen: () => desk.value !== null }),
  ];
  const keys = createKeyMap(actions);
  const workbook = createWorkbook({
    desk,
    actions,
    functions,
    figures,
    notices,
    updates,
    ...shelf,
    hand: () => hand,
  });
  const shell: Shell = openShell(root, workbook, screen);
  const keepPhoto = async (file: File) => (await desk.value?.photos.keep(file)) ?? { reason: '' };
  const walk = heavy.then((loaded) =>
    loaded.createWalk({ desk, workbook, screen, act, keepPhoto, now }),
  );
  const printing = createPrinting({
    grid: shell.grid,
    locale: navigator.language,
    desk: () => desk.value,
    now,
  });

  const hear = (laid: Desk) =>
    gridEvents({
      desk: laid,
      keys,
      act,
      tell,
      choose: ({ id }) => shell.choose(id),
      menu: (on, x, y) => openCellMenu(on, { x, y }, workbook, shell),
      view: () => hand?.view,
      readingsOnly: () => screen.readingsOnly.value,
      line: shell.entry,
      leftOut: () => hand?.leftOut() ?? [],
    });

  addEventListener('keydown', (event) => {
    if (event.defaultPrevented) return;
    const action = keys.actionFor(event, isTyping(event.target) ? 'typing' : 'elsewhere');
    if (!action) return;
    event.preventDefault();
    shell.choose(action.id);
  });
  effect(() => {
    const { page, title } = workbook;
    document.title = page.value === 'book' ? `${title.value} · Halfstop` : 'Halfstop';
  });
  const id = location.hash.slice(1);
  if (id !== '') void shelf.open(id).then(tell);
}
