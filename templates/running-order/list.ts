import { choice } from '../cells.ts';
import { changes } from './changes.ts';
import { captionRow, row } from './columns.ts';
import type { PlannedRunning, PlannedSetUp } from './planned.ts';
import { list, perLight, rowsOf, type Cells } from './rows.ts';

/** Under it the list says whether a set-up keeps its number; the table below has its hours there. */
const stays = 'hours';

function listRow(at: number, planned?: PlannedSetUp): Cells {
  const { rigged, struck, moved } = changes(at, at === list.first);
  const once = (formula: string) => `=IF(ISBLANK($A${at}),"",${formula})`;
  return row(at, {
    setUp: choice(planned?.setUp ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    order: choice(planned?.order ?? '', 'number'),
    takes: choice(planned?.takes ?? '', 'duration'),
    ...perLight((_, index) => choice(planned?.lights[index] ?? '', 'text')),
    rigged: { typed: once(rigged), quantity: 'number' },
    struck: { typed: once(struck), quantity: 'number' },
    moved: { typed: once(moved), quantity: 'number' },
    [stays]: { ...choice(planned?.stays ?? '', 'text'), align: 'right' },
  });
}

/** The set-ups as they are thought of, and the how-manieth each is shot as. */
export const listTable = ({ lights, setUps }: PlannedRunning): Cells => ({
  ...captionRow(list.head, {
    setUp: 'Set-up',
    place: 'Place',
    order: 'Shot as',
    takes: 'Shooting takes',
    rigged: 'To rig',
    struck: 'To strike',
    moved: 'To move',
    [stays]: 'Stays',
  }),
  ...row(
    list.head,
    perLight((_, index) => ({ ...choice(lights[index] ?? '', 'text'), bold: true })),
  ),
  ...rowsOf(list, (at, index) => listRow(at, setUps[index])),
});
