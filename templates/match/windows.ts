import { choice, heading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { at, captionRow, down, row, rows, type ColumnName } from './columns.ts';

/** A window that its source’s pieces are cut for. */
export interface PlannedWindow {
  readonly window: string;
  readonly source: string;
  readonly panes: string;
  readonly width: string;
  readonly height: string;
}

const { sources, windows } = rows;

function windowRow(line: number, planned?: PlannedWindow): Record<string, PlannedCell> {
  const is = (column: ColumnName) => at(column, line);
  const once = (formula: string) => `=IF(ISBLANK(${is('source')}),"",${formula})`;
  const on = is('verdict');
  const [wide, high] = (['kelvin', 'tint'] as const).map(
    (side) => `(${is(side)}+2*${is('xTyped')})`,
  );
  const layers = is('yTyped');
  return row(line, {
    source: choice(planned?.window ?? '', 'text'),
    role: choice(planned?.source ?? '', 'text'),
    may: choice(planned?.panes ?? '1', 'number'),
    kelvin: choice(planned?.width ?? '', 'length'),
    tint: choice(planned?.height ?? '', 'length'),
    xTyped: choice('5 cm', 'length'),
    yTyped: {
      typed: once(`IF(${on}="none",0,IF(ISERROR(FIND(" + ",${on})),1,2))`),
      quantity: 'number',
    },
    level: {
      typed: once(`${layers}*${is('may')}*${wide}*${high}`),
      quantity: 'area',
      decimals: 1,
    },
    x: choice('1.2 m', 'length'),
    y: {
      typed: once(`${layers}*${is('may')}*ROLLLENGTH(${wide},${high},${is('x')})`),
      quantity: 'length',
      decimals: 1,
    },
    verdict: {
      typed: once(
        `INDEX(${down('on', sources)},MATCH(${is('role')},${down('source', sources)},0))`,
      ),
      quantity: 'text',
    },
  });
}

/** What to cut for windows: area, and length off a roll. */
export const windowRows = (planned: readonly PlannedWindow[]): Record<string, PlannedCell> => ({
  [`A${windows.head - 1}`]: heading('Windows to cover'),
  ...captionRow(windows.head, {
    source: 'Window',
    role: 'Source',
    may: 'Panes',
    kelvin: 'Width',
    tint: 'Height',
    xTyped: 'Margin',
    yTyped: 'Layers',
    level: 'Area',
    x: 'Roll',
    y: 'Off it',
    verdict: 'To cut',
  }),
  ...Object.assign(
    {},
    ...Array.from({ length: windows.last - windows.first + 1 }, (_, index) =>
      windowRow(windows.first + index, planned[index]),
    ),
  ),
});
