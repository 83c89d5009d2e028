import { html, render } from 'lit-html';
import { bar } from './bar/bar.ts';
import { contents } from './contents/contents.ts';
import { openDialog, type DialogName } from './dialogs/dialogs.ts';
import { entryLine } from './entry/entry.ts';
import { finder } from './finder/finder.ts';
import { writtenKeys, onMac } from './kit/keys.ts';
import { mount, part } from './kit/mount.ts';
import { effect } from './kit/signals.ts';
import { notice } from './notice/notice.ts';
import { foot } from './page/foot.ts';
import { head } from './page/head.ts';
import type { Screen } from './screen.ts';
import { slip } from './slip/slip.ts';
import { startPage } from './start/start.ts';
import type { Workbook } from './workbook.ts';

/** What panels ask of the frame around them. */
export interface Shell {
  /** An empty element for the grid, sized by the layout. */
  readonly grid: HTMLElement;
  find(): void;
  open(dialog: DialogName, about?: string): void;
  /** Runs a command, by way of the dialog that asks for what it needs. */
  choose(id: string): void;
  /** Keys as this machine's keyboard writes them. */
  keys(keys: string): string;
}

const frame = html`
  <div class="start" hidden></div>
  <div class="desk" hidden>
    <header class="bar"></header>
    <nav class="contents" aria-label="Contents"></nav>
    <main class="page">
      <div class="head"></div>
      <div class="entry" role="group" aria-label="Entry line"></div>
      <div class="grid"></div>
      <div class="foot"></div>
    </main>
    <aside class="slip" aria-label="Slip: what is known about the cell"></aside>
    <div class="curtain"></div>
  </div>
  <div class="notices" role="status" aria-live="polite"></div>
`;

/** Dialogs that ask for a command's arguments, by the command's id. */
const asking: Readonly<Record<string, DialogName>> = {
  'edit.find': 'replace',
  'edit.replace': 'replace',
  'names.manage': 'names',
  'cells.format': 'format',
  'sheet.properties': 'sheet',
  'sheet.add': 'add-sheet',
  'view.keyboard': 'keyboard',
  'view.about': 'about',
};

/** Builds the frame of the app in `root` and keeps every panel in step with `workbook`. */
export function openShell(root: HTMLElement, workbook: Workbook, screen: Screen): Shell {
  render(frame, root);
  const mac = onMac();
  const shell: Shell = {
    grid: part(root, '.grid'),
    find: () => finder(workbook, shell),
    open: (dialog, about) => openDialog(dialog, workbook, shell, about),
    choose(id) {
      const dialog = asking[id];
      if (dialog) shell.open(dialog);
      else workbook.run(id);
    },
    keys: (keys) => writtenKeys(keys, mac),
  };
  const start = part(root, '.start');
  const desk = part(root, '.desk');
  effect(() => {
    start.hidden = workbook.page.value !== 'start';
    desk.hidden = workbook.page.value !== 'book';
  });
  mount(start, () => startPage(workbook, shell));
  mount(part(root, '.bar'), () => bar(workbook, screen, shell));
  mount(part(root, 'nav.contents'), () => contents(workbook, screen, shell));
  mount(part(root, '.head'), () => head(workbook, shell));
  mount(part(root, '.foot'), () => foot(workbook, screen));
  mount(part(root, 'aside.slip'), () => slip(workbook, screen, shell));
  mount(part(root, '.notices'), () => notice(workbook));
  entryLine(part(root, '.entry'), workbook, shell);
  part(root, '.curtain').addEventListener('click', () => (screen.drawer.value = null));
  return shell;
}
