import { figureDialog } from '../figures/dialog.ts';
import type { DialogName, Shell } from '../frame.ts';
import { bin } from '../kept/bin.ts';
import { keepVersion } from '../kept/keep-version.ts';
import { versions } from '../kept/versions.ts';
import type { Workbook } from '../workbook.ts';
import { about } from './about.ts';
import { addSheet } from './add-sheet.ts';
import { openReference } from '../reference/open.ts';
import { filter } from './filter.ts';
import { keyboard } from './keyboard.ts';
import { names } from './names.ts';
import { numberFormat } from './number-format.ts';
import { quantity } from './quantity.ts';
import { remarks } from './remarks.ts';
import { replace } from './replace.ts';
import { settings } from './settings.ts';
import { sheetProperties } from './sheet-properties.ts';
import { target } from './target.ts';

type Open = (workbook: Workbook, shell: Shell, about?: string) => void;

const dialogs: Readonly<Record<DialogName, Open>> = {
  replace,
  names,
  filter,
  format: numberFormat,
  sheet: sheetProperties,
  'add-sheet': addSheet,
  figure: figureDialog,
  // What reads photometric files is fetched when somebody asks for it.
  fixtures: (workbook) =>
    void import('../fixtures/dialog.ts').then(({ fixturesDialog }) => fixturesDialog(workbook)),
  // So is what reads spectra.
  spectra: (workbook) =>
    void import('../spectra/dialog.ts').then(({ spectraDialog }) => spectraDialog(workbook)),
  keyboard,
  versions,
  'keep-version': keepVersion,
  bin,
  about,
  function: openReference,
  quantity,
  target,
  settings,
  remarks,
};

/** `about` says which sheet or function, where the dialog is about one. */
export const openDialog = (name: DialogName, ...rest: Parameters<Open>): void =>
  dialogs[name](...rest);
