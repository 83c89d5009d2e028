import { columnsOf } from '../columns.ts';

export const { letterOf, widths, captions, row, captionRow } = columnsOf({
  item: { caption: 'Item', width: 200 },
  place: { caption: 'Place', width: 116 },
  count: { caption: 'Count', width: 104, numbers: true },
  out: { caption: 'Out on', width: 116, numbers: true },
  back: { caption: 'Back on', width: 116, numbers: true },
  days: { caption: 'Days', width: 104, numbers: true },
  rate: { caption: 'A day', width: 96, numbers: true },
  week: { caption: 'A week', width: 96, numbers: true },
  discount: { caption: 'Discount', width: 96, numbers: true },
  package: { caption: 'In the price of', width: 148 },
  cost: { caption: 'Cost', width: 104, numbers: true },
  daily: { caption: 'For each day', width: 108, numbers: true },
  watts: { caption: 'Each draws', width: 104, numbers: true },
  powerFactor: { caption: 'Power factor', width: 112, numbers: true },
  draws: { caption: 'Draw in all', width: 104, numbers: true },
  amps: { caption: 'Current', width: 92, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
