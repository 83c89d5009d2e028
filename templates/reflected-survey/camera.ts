import { choice, given, heading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';

/** Where each setting of the camera stands, and what comes of it. */
export const at = {
  speed: 'B2',
  rate: 'D2',
  shutter: 'F2',
  filters: 'B3',
  time: 'D3',
  stop: 'F3',
  meterAt: 'B4',
  grey: 'D4',
  spot: 'F4',
  above: 'B5',
  below: 'D5',
  greySits: 'F5',
  clips: 'B6',
  sinks: 'D6',
  spread: 'F6',
} as const;

type Setting = keyof typeof at;

/** The address of a setting, fixed: `$D$4`. */
export const fixed = (setting: Setting): string => at[setting].replace(/(\D)(\d)/, '$$$1$$$2');

/** Stops that are left above and below what the meter calls grey. */
export const above = `${fixed('above')}-${fixed('greySits')}`;
export const below = `${fixed('below')}+${fixed('greySits')}`;

/** The head of the sheet: each setting with its label to the left. */
export function camera(readings: string): Readonly<Record<string, PlannedCell>> {
  const settings: Readonly<Record<Setting, readonly [label: string, cell: PlannedCell]>> = {
    speed: ['Speed', choice('800', 'iso')],
    rate: ['Frame rate', choice('25', 'frameRate')],
    shutter: [
      'Shutter',
      { typed: '180°', role: 'choice', note: 'An angle or a time: 180° or 1/50 s.' },
    ],
    filters: ['Filters lose', choice('0', 'stops')],
    time: ['Exposure time', { typed: `=EXPOSURETIME(${at.shutter},${at.rate})` }],
    stop: ['Taking stop', choice('f/2.8', 'fNumber')],
    meterAt: ['Meter at', { typed: `=EIAFTER(${at.speed},${at.filters})` }],
    grey: [
      'Middle grey',
      { typed: `=SPOTLUMINANCE(${at.stop},${at.meterAt},${at.time},${at.spot})` },
    ],
    spot: ['Spot K', given('12.5', 'number')],
    above: ['Holds above grey', choice('6.5', 'stops')],
    below: ['below grey', choice('4.5', 'stops')],
    greySits: [
      'Grey sits at',
      {
        ...choice('0', 'stops'),
        note: 'Where the camera is to put what the meter calls middle grey, from its own middle grey.',
      },
    ],
    clips: [
      'Clips from',
      { typed: `=LEVELAT(${at.grey},${at.above}-${at.greySits})`, quantity: 'luminance' },
    ],
    sinks: [
      'Noise below',
      { typed: `=LEVELAT(${at.grey},-(${at.below}+${at.greySits}))`, quantity: 'luminance' },
    ],
    spread: [
      'Spread',
      { typed: `=IF(COUNT(${readings})<2,"",SPREAD(${readings}))`, quantity: 'stops', decimals: 1 },
    ],
  };
  return Object.fromEntries([
    ['A1', heading('Camera')],
    ...Object.entries(settings).flatMap(([setting, [label, cell]]) => {
      const address = at[setting as Setting];
      const before = String.fromCharCode(address.charCodeAt(0) - 1) + address.slice(1);
      return [
        [before, words(label)],
        [address, cell],
      ];
    }),
  ]);
}
