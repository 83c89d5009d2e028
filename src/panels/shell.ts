import { html, render } from 'lit-html';
import { bar } from './bar/bar.ts';
import { contents } from './contents/contents.ts';
import { openDialog } from './dialogs/dialogs.ts';
import { figuresPanel } from './figures/panel.ts';
import { showFigures } from './figures/stand.ts';
import type { Shell } from './frame.ts';
import { entryLine } from './entry/entry.ts';
import { finder } from './finder/finder.ts';
import { writtenKeys, onMac } from './kit/keys.ts';
import { mount, part } from './kit/mount.ts';
import { computed, effect } from './kit/signals.ts';
import { readyLine } from './kept/ready.ts';
import { notice } from './notice/notice.ts';
import { foot } from './page/foot.ts';
import { head } from './page/head.ts';
import type { Screen } from './screen.ts';
import { slip } from './slip/slip.ts';
import { startPage } from './start/start.ts';
import { askedBy, verbs } from './verbs.ts';
import type { Workbook } from './workbook.ts';
import { words } from '../words/words.ts';

const frame = html`
  <div class="welcome" hidden></div>
  <div class="desk" hidden>
    <header class="bar"></header>
    <nav class="contents" aria-label=${words.page.contents}></nav>
    <main class="page">
      <div class="head"></div>
      <div class="entry" role="group" aria-label=${words.page.entry}></div>
      <div class="grid"></div>
      <section class="figures" aria-label=${words.page.figures} hidden></section>
      <div class="foot"></div>
    </main>
    <aside class="slip" aria-label=${words.bar.slip}></aside>
    <div class="curtain"></div>
  </div>
  <div class="update" role="status" aria-live="polite"></div>
  <div class="notices" role="status" aria-live="polite"></div>
`;

/** Builds the frame of the app in `root` and keeps every panel in step with `workbook`. */
export function openShell(root: HTMLElement, workbook: Workbook, screen: Screen): Shell {
  render(frame, root);
  const mac = onMac();
  const shell: Shell = {
    grid: part(root, '.grid'),
    find: () => finder(workbook, shell),
    figures: () => showFigures(root),
    open: (dialog, about) => openDialog(dialog, workbook, shell, about),
    choose(id) {
      if (id === verbs.setNote) writeNote(root, screen);
      else if (isAsked(id)) shell.open(askedBy[id]);
      else workbook.run(id);
    },
    get entry() {
      return entry;
    },
    keys: (keys) => writtenKeys(keys, mac),
  };
  const start = part(root, '.welcome');
  const desk = part(root, '.desk');
  effect(() => {
    start.hidden = workbook.page.value !== 'start';
    desk.hidden = workbook.page.value !== 'book';
  });
  mount(start, () => startPage(workbook, shell));
  mount(part(root, '.bar'), () => bar(workbook, screen, shell));
  mount(part(root, 'nav.contents'), () => contents(workbook, screen, shell));
  keepInView(root, workbook);
  mount(part(root, '.head'), () => head(workbook, shell));
  figuresPanel(part(root, '.figures'), workbook, shell);
  mount(part(root, '.foot'), () => foot(workbook, screen));
  mount(part(root, 'aside.slip'), () => slip(workbook, screen, shell));
  mount(part(root, '.update'), () => readyLine(workbook));
  mount(part(root, '.notices'), () => notice(workbook));
  const entry = entryLine(part(root, '.entry'), workbook, shell);
  part(root, '.curtain').addEventListener('click', () => (screen.drawer.value = null));
  return shell;
}

/** The sheet that is shown is in view in the contents too, once they are drawn. */
function keepInView(root: HTMLElement, workbook: Workbook): void {
  const shown = computed(() => workbook.contents.value.find((sheet) => sheet.shown)?.id);
  effect(() => {
    if (shown.value === undefined) return;
    queueMicrotask(() =>
      root.querySelector('.contents .shown')?.scrollIntoView({ block: 'nearest' }),
    );
  });
}

const isAsked = (id: string): id is keyof typeof askedBy => id in askedBy;

/** The note is written in the slip. */
function writeNote(root: HTMLElement, screen: Screen): void {
  if (!screen.isOpen('slip')) screen.toggle('slip');
  part(root, '.note textarea').focus();
}
