import type { PlannedFigure } from '../plan.ts';
import { at } from './camera.ts';
import { letterOf, type ColumnName } from './columns.ts';
import { head, keyRow } from './rows.ts';

/** What the camera holds, from its settings at the head of the sheet. */
const camera = { above: at.above, below: at.below, greySits: at.greySits };

const column = (name: ColumnName, from: number, count: number): string =>
  `${letterOf(name)}${from}:${letterOf(name)}${from + count - 1}`;

/** The points against the key side, and the spot readings against grey, each a ladder. */
export function ladders(points: number, spots: number): readonly PlannedFigure[] {
  const firstSpot = head + points + 3;
  return [
    {
      kind: 'ladder',
      title: 'Points against the key side',
      cells: {
        points: column('point', keyRow, points),
        read: column('fromKey', keyRow, points),
        wanted: column('wanted', keyRow, points),
        level: `${letterOf('asF')}${keyRow}`,
        zeroFromGrey: `${letterOf('fromKey')}${keyRow}`,
        ...camera,
      },
    },
    {
      kind: 'ladder',
      title: 'Spot readings in the camera',
      cells: {
        points: column('point', firstSpot, spots),
        read: column('fromKey', firstSpot, spots),
        wanted: column('wanted', firstSpot, spots),
        level: at.grey,
        ...camera,
      },
      options: { zero: 'grey' },
    },
  ];
}
