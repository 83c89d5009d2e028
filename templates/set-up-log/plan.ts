import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { widths } from './columns.ts';
import { harbourLog } from './harbour.ts';
import { cameraTable, counts, found, foundTable, log, logTable } from './rows.ts';
import type { PlannedLog } from './planned.ts';

const reckoning = [
  'The command Log this set-up, from a sheet of points, writes a row a light into the next free rows: what the rig sheets say of it, with readings and ratios in the first.',
  'Scene shows one scene across all days, Search any words in any row; both together narrow it. Leave both empty for everything.',
  'Photos go on the cell Photo of a row. What another camera sets goes by its index and exposure time against the first.',
];

const cautions = [
  'A log says how it was lit and not that it was safe: every day the rig, its safety bonds, leads and devices are looked at anew by who is competent.',
];

/** How each set-up was lit, to be lit so again. */
export const logSheet = (planned: PlannedLog): PlannedSheet => ({
  name: 'Set-up log',
  title: 'Set-up log',
  purpose: 'How each set-up was lit on which day, to find it again and to match it.',
  phase: 'log',
  template: 'set-up-log',
  frozenColumns: 2,
  widths,
  cells: {
    A1: words('Scene'),
    B1: { ...choice(planned.scene, 'text'), align: 'left' },
    A2: words('Search'),
    B2: { ...choice(planned.search, 'text'), align: 'left' },
    A3: words('Found'),
    B3: {
      typed: `=${counts.found}&" of "&${counts.rows}&" rows"&IF(${counts.found}>${found.last - found.head},", the first ${found.last - found.head} below","")`,
      quantity: 'text',
    },
    ...cameraTable(planned.cameras),
    ...foundTable(),
    ...logTable(planned.rows),
    ...remarks('How it is kept', log.last + 2, reckoning),
    ...remarks('Cautions', log.last + 4 + reckoning.length, cautions),
  },
});

export const build = () => buildBook({ title: 'Untitled', sheets: [logSheet(harbourLog)] });
