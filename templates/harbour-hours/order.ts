import { at } from '../key-fill-background/camera.ts';
import { interview as set, choosingSheet } from '../choosing/plan.ts';
import { compareSheet, interview } from '../compare/plan.ts';
import { film, hireSheet } from '../hire/plan.ts';
import { loft, powerSheet } from '../power/plan.ts';
import { circuits, down, settings } from '../power/places.ts';

const inLoft = (setting: keyof typeof at): string => `='Sail loft'!${at[setting]}`;

/** What the circuits of the loft still carry before anything of ours is plugged in. */
function freeInLoft(): string {
  const sum = (column: string) => `SUM(Power!${down(column, circuits)})`;
  return `=${sum('D')}*Power!${settings.share}-${sum('H')}+${sum('G')}`;
}

const [key, fill, canvas] = set.points.map(({ name }) => name) as [string, string, string];

/** What the film orders and plugs in. What stands on another sheet is looked up there. */
export const orderSheets = [
  powerSheet(loft),
  compareSheet({
    ...interview,
    stop: inLoft('stop'),
    speed: inLoft('meterAt'),
    time: inLoft('time'),
  }),
  choosingSheet({
    ...set,
    points: [
      { name: key, wanted: '=Compare!B2' },
      { name: fill, wanted: '=LEVELAT(Compare!B2,-2)' },
      { name: canvas, wanted: '=LEVELAT(Compare!B2,-2)' },
    ],
  }),
  hireSheet({
    ...film,
    supplies: [{ supply: 'house', carries: freeInLoft() }, ...film.supplies.slice(1)],
  }),
];
