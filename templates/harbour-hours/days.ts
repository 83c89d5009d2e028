import { letterOf as hired } from '../hire/columns.ts';
import { harbourLog } from '../set-up-log/harbour.ts';
import { logSheet } from '../set-up-log/plan.ts';
import { at as camera } from '../key-fill-background/camera.ts';
import { head as hireHead } from '../hire/rows.ts';
import { harbourPackage, items, named } from '../package/harbour.ts';
import { orderAt, packageSheet } from '../package/plan.ts';
import type { PlannedNeed, PlannedOrder } from '../package/planned.ts';
import { needs } from '../package/tables.ts';
import { firstLight, lights, rig } from '../rig.ts';
import { harbourRunning } from '../running-order/harbour.ts';
import { runningSheet } from '../running-order/plan.ts';
import { harbourStrike, strikeSheet } from '../strike/plan.ts';

/** A column of the lights on the set plan. */
const onPlan = (column: Parameters<typeof rig.letterOf>[0]): string => {
  const letter = rig.letterOf(column);
  return `'Set plan'!$${letter}$${firstLight}:$${letter}$${firstLight + lights - 1}`;
};

/** What is hired under a name, in a column of that sheet. */
const hire = (row: number, column: 'count' | 'rate'): string =>
  `=Hire!${hired(column)}${hireHead + row}`;

/** The rows of Hire from which counts and rates come. */
const hires = { fresnel: 3, open: 4, frame: 5, tube: 6 } as const;

const places = ['=Recce!A4', '=Recce!A5', '=Recce!A6'] as const;
const placeNames = harbourPackage.places.map(({ place }) => place);

/** Counts as the sheets of the rig have them; the rest is as on the sheet by itself. */
function counted(need: PlannedNeed, index: number): PlannedNeed {
  const from = (count: string, words: string) => ({ ...need, count, from: words });
  if (need.from === 'plan') {
    const name = `$A${needs.first + index}`;
    return from(`=COUNTIF(${onPlan('fixture')},${name})`, 'Set plan');
  }
  const hung = `COUNTA(${onPlan('fixture')})`;
  if (need.from === 'lights and a frame') return from(`=${hung}+1`, 'Set plan and a frame');
  if (need.from === 'a light each') return from(`=${hung}`, 'Set plan');
  if (need.item === named('Open face 800')) return from(hire(hires.open, 'count'), 'Hire');
  return need;
}

const rates: Partial<Record<(typeof items)[number]['item'], string>> = {
  'Fresnel 650 at flood': hire(hires.fresnel, 'rate'),
  'Frame 120 × 120': hire(hires.frame, 'rate'),
  'Open face 800': hire(hires.open, 'rate'),
};

const used = harbourPackage.used.map((one) => {
  const count = (column: 'gel' | 'diffusion') => `=COUNTIF(${onPlan(column)},">0")`;
  if (one.item === 'Warming gel') return { ...one, from: 'Set plan', count: count('gel') };
  if (one.item === 'Diffusion') return { ...one, from: 'Set plan', count: count('diffusion') };
  return one;
});

const inLoft = (setting: keyof typeof camera) => `='Sail loft'!${camera[setting]}`;
const inShed = (setting: keyof typeof camera) => `='Boat shed'!${camera[setting]}`;

/** A light of the set plan by its row there. */
const planned = (light: number): string =>
  `='Set plan'!${rig.letterOf('light')}${firstLight + light}`;

/** From the running order to the last case back in the van. */
export const daysSheets = [
  runningSheet({
    ...harbourRunning,
    begins: '=Recce!B4+8/24',
    lights: harbourRunning.lights.map((_, light) => planned(light)),
    setUps: harbourRunning.setUps.map((one) => ({
      ...one,
      place: places[placeNames.indexOf(one.place)] ?? '',
    })),
  }),
  packageSheet({
    ...harbourPackage,
    firstDay: '=Recce!B4-1',
    ofTheRigs: 'every fixture of the rigs is in this order',
    places: harbourPackage.places.map((one, index) => ({ ...one, place: places[index] ?? '' })),
    needs: harbourPackage.needs.map((need, index) => ({
      ...counted(need, index),
      place: places[placeNames.indexOf(need.place)] ?? '',
    })),
    order: items.map((one): PlannedOrder => ({ ...one, rate: rates[one.item] ?? one.rate })),
    used,
  }),
  logSheet({
    ...harbourLog,
    cameras: [
      { name: 'A', ei: inLoft('meterAt'), time: inLoft('time'), stop: inLoft('stop') },
      { name: 'B', ei: inShed('meterAt'), time: inShed('time'), stop: '' },
    ],
  }),
  strikeSheet({
    ...harbourStrike,
    returns: harbourStrike.returns.map((one, index) => ({
      ...one,
      item: `=Package!${orderAt(index, 'item')}`,
      out: `=Package!${orderAt(index, 'order')}`,
    })),
  }),
];
