import type { PlannedCell } from '../plan.ts';

/** Where each setting of the camera stands. */
export const at = {
  speed: 'B2',
  rate: 'D2',
  shutter: 'F2',
  filters: 'B3',
  time: 'D3',
  mains: 'F3',
  meterAt: 'B4',
  stop: 'D4',
  flicker: 'F4',
  exposeKey: 'B5',
  grey: 'D5',
  white: 'F5',
  above: 'B6',
  below: 'D6',
  greySits: 'F6',
  dome: 'B7',
  flat: 'D7',
  spot: 'F7',
} as const;

type Setting = keyof typeof at;

/** The address of a setting, fixed: `$B$4`. */
export const fixed = (setting: Setting): string => at[setting].replace(/(\D+)(\d+)/, '$$$1$$$2');

/** Speed to meter at, exposure time and the three constants, as every reading needs them. */
export const metered = (['meterAt', 'time', 'dome', 'flat', 'spot'] as const).map(fixed).join(',');

export const choice = (typed: string, quantity?: PlannedCell['quantity']): PlannedCell => ({
  typed,
  role: 'choice',
  ...(quantity && { quantity }),
});
const given = (typed: string): PlannedCell => ({ typed, role: 'given', quantity: 'number' });

const settings: Readonly<Record<Setting, readonly [label: string, cell: PlannedCell]>> = {
  speed: ['Speed', choice('800', 'iso')],
  rate: ['Frame rate', choice('25', 'frameRate')],
  shutter: ['Shutter', choice('180°')],
  filters: ['Filters lose', choice('0', 'stops')],
  time: ['Exposure time', { typed: `=EXPOSURETIME(${at.shutter},${at.rate})` }],
  mains: ['Mains', choice('50 Hz', 'frequency')],
  meterAt: ['Meter at', { typed: `=EIAFTER(${at.speed},${at.filters})` }],
  stop: ['Taking stop', choice('f/2.8', 'fNumber')],
  flicker: [
    'On mains',
    { typed: `=FLICKERCHECK(${at.time},${at.rate},${at.mains})`, quantity: 'text' },
  ],
  exposeKey: ['Expose key', choice('0', 'stops')],
  grey: [
    'Middle grey',
    { typed: `=SPOTLUMINANCE(${at.stop},${at.meterAt},${at.time},${at.spot})` },
  ],
  white: ['White', choice('3200 K', 'colourTemperature')],
  above: ['Holds above grey', choice('6.5', 'stops')],
  below: ['below grey', choice('4.5', 'stops')],
  greySits: ['Grey sits at', choice('0', 'stops')],
  dome: ['Dome constant C', given('340')],
  flat: ['flat C', given('250')],
  spot: ['spot K', given('12.5')],
};

/** The first rows of the sheet: each setting with its label to the left. */
export const camera: Readonly<Record<string, PlannedCell>> = Object.fromEntries([
  ['A1', { typed: 'Camera', bold: true }],
  ...Object.entries(settings).flatMap(([setting, [label, cell]]) => {
    const address = at[setting as Setting];
    const before = String.fromCharCode(address.charCodeAt(0) - 1) + address.slice(1);
    // Column F is wide, for verdicts: a value at its far end would stand apart from its label.
    const placed: PlannedCell = address.startsWith('F') ? { ...cell, align: 'left' } : cell;
    return [
      [before, { typed: label }],
      [address, placed],
    ];
  }),
]);
