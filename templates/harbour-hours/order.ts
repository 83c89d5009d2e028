import { at } from '../key-fill-background/camera.ts';
import { interview as set, choosingSheet } from '../choosing/plan.ts';
import { compareSheet, interview } from '../compare/plan.ts';
import { film, hireSheet } from '../hire/plan.ts';
import { loft, powerSheet } from '../power/plan.ts';
import { harbourRecce } from '../recce/harbour.ts';
import { circuitAt } from '../recce/house.ts';
import type { PlannedCircuit } from '../power/circuits.ts';
import { circuits, down, settings } from '../power/places.ts';

const inLoft = (setting: keyof typeof at): string => `='Sail loft'!${at[setting]}`;

/** What the circuits of the loft still carry before anything of ours is plugged in. */
function freeInLoft(): string {
  const sum = (column: string) => `SUM(Power!${down(column, circuits)})`;
  return `=${sum('D')}*Power!${settings.share}-${sum('H')}+${sum('G')}`;
}

/** A circuit of the loft as the recce found it. */
function foundAt(index: number): PlannedCircuit {
  const of = (what: Parameters<typeof circuitAt>[1]) => `=Recce!${circuitAt(index, what)}`;
  return {
    name: of('name'),
    phase: of('phase'),
    breaker: of('breaker'),
    ...(harbourRecce.circuits[index]?.watts && {
      house: { watts: of('watts'), powerFactor: of('powerFactor') },
    }),
  };
}

const [key, fill, canvas] = set.points.map(({ name }) => name) as [string, string, string];

/** What the film orders and plugs in. What stands on another sheet is looked up there. */
export const orderSheets = [
  powerSheet({ ...loft, circuits: loft.circuits.map((_, index) => foundAt(index)) }),
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
    supplies: [
      { supply: 'house', carries: freeInLoft() },
      { supply: 'house', carries: `=Recce!${circuitAt(3, 'free')}` },
      ...film.supplies.slice(2),
    ],
  }),
];
