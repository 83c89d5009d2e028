import { columnsOf } from '../columns.ts';

/** Days of the plan, a column each. */
export const dayNames = ['d1', 'd2', 'd3', 'd4', 'd5', 'd6', 'd7', 'd8'] as const;

const day = { caption: '', width: 116, numbers: true } as const;

/** Tables below one another share their columns; names are those of the order. */
export const { letterOf, widths, captions, captionRow, row } = columnsOf({
  item: { caption: 'The order', width: 216 },
  place: { caption: 'Who supplies it', width: 140 },
  kind: { caption: 'Kind', width: 132 },
  count: { caption: 'Most on a day', width: 120, numbers: true },
  d1: day,
  d2: day,
  d3: day,
  d4: day,
  d5: day,
  d6: day,
  d7: day,
  d8: day,
  spares: { caption: 'Spares', width: 84, numbers: true },
  order: { caption: 'To order', width: 92, numbers: true },
  each: { caption: 'Each weighs', width: 108, numbers: true },
  volume: { caption: 'Each, m³', width: 92, numbers: true },
  weight: { caption: 'Weight', width: 92, numbers: true },
  room: { caption: 'Room, m³', width: 96, numbers: true },
  rate: { caption: 'A day', width: 88, numbers: true },
  days: { caption: 'Days charged', width: 116, numbers: true },
  cost: { caption: 'Cost', width: 92, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
