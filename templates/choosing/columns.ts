import { captions as known } from '../../src/choose/pick/sheet.ts';
import { columnsOf } from '../columns.ts';

/** Columns for points. */
export const points = ['p1', 'p2', 'p3', 'p4', 'p5'] as const;

const point = { caption: '', width: 124, numbers: true } as const;

export const { letterOf, widths, captions, row, captionRow } = columnsOf({
  option: { caption: known.option, width: 184 },
  take: { caption: known.take, width: 112, numbers: true },
  output: { caption: known.output, width: 96, numbers: true },
  second: { caption: known.second, width: 124, numbers: true },
  item: { caption: known.item, width: 148 },
  available: { caption: known.available, width: 96, numbers: true },
  cost: { caption: known.cost, width: 104, numbers: true },
  watts: { caption: 'Draws', width: 96, numbers: true },
  powerFactor: { caption: 'Power factor', width: 112, numbers: true },
  current: { caption: known.current, width: 92, numbers: true },
  dims: { caption: known.dims, width: 72 },
  p1: point,
  p2: point,
  p3: point,
  p4: point,
  p5: point,
});
