import type { PlannedMatch } from './plan.ts';

/** The sail loft as it stands, before anything is filtered. Invented. */
export const loftMatch: PlannedMatch = {
  name: 'Match',
  white: '3200 K',
  sources: [
    {
      ...{ source: 'North window', role: 'window', kelvin: '6900 K', tint: '0.0020' },
      level: '340 lx',
    },
    { source: 'Key panel', role: 'key', kelvin: '3250 K', tint: '-0.0010', level: '900 lx' },
    {
      ...{ source: 'Bench tubes', role: 'practical', kelvin: '4100 K', tint: '0.0100' },
      level: '60 lx',
    },
    { source: 'Skylight', role: 'window', x: '0.3050', y: '0.3170', level: '45 lx', fixed: true },
    { source: 'Oil lamp', role: 'practical', kelvin: '2400 K', level: '20 lx' },
  ],
  channels: [
    { kelvin: '2700 K', tint: '0.0010', level: '800 lx' },
    { kelvin: '6500 K', tint: '0.0020', level: '1000 lx' },
  ],
  windows: [
    {
      ...{ window: 'North window', source: 'North window', panes: '4' },
      ...{ width: '0.8 m', height: '1.3 m' },
    },
  ],
};
