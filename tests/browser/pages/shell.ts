import { createGrid } from '../../../src/grid/index.ts';
import { createScreen } from '../../../src/panels/screen.ts';
import type { Shell } from '../../../src/panels/frame.ts';
import { openShell } from '../../../src/panels/shell.ts';
import { testModel } from './grid-content.ts';
import { paperWorkbook, type PaperWorkbook } from './shell-content.ts';

declare global {
  interface Window {
    shellBench: { readonly workbook: PaperWorkbook; readonly shell: Shell };
  }
}

const workbook = paperWorkbook();
const root = document.querySelector<HTMLElement>('#app');
if (!root) throw new Error('The page has no app.');
const shell = openShell(root, workbook, createScreen());
if (location.hash === '#start') workbook.page.value = 'start';
const nothing = () => undefined;
await createGrid(shell.grid, testModel(60, 14), {
  selected: nothing,
  edit: () => true,
  clear: nothing,
  fill: nothing,
  resizeColumn: nothing,
  copy: nothing,
  cut: nothing,
  paste: nothing,
  menu: nothing,
  key: () => false,
});
window.shellBench = { workbook, shell };
document.body.dataset['ready'] = 'true';
