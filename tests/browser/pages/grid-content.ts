import type { CellPicture, GridModel } from '../../../src/grid/contract.ts';

/** The table of a set that is being metered, with every kind of cell. */
const widths = [168, 76, 108, 64, 108, 196, 66, 112, 96, 90, 90, 90];

const blank: CellPicture = { text: '' };
const word = (text: string): CellPicture => ({ text });
const heading = (text: string, right = false): CellPicture => ({
  text,
  heading: true,
  align: right ? 'right' : 'left',
});
const number = (text: string, unit?: string): CellPicture => ({
  text,
  align: 'right',
  ...(unit ? { unit } : {}),
});
const choice = (text: string): CellPicture => ({ ...number(text), role: 'choice' });
const reading = (text: string, unit?: string): CellPicture => ({
  ...number(text, unit),
  role: 'reading',
});
const given = (text: string): CellPicture => ({ text, role: 'given' });
const verdict = (shape: NonNullable<CellPicture['verdict']>, text: string): CellPicture => ({
  text,
  verdict: shape,
});

const rows: readonly (readonly CellPicture[])[] = [
  [
    heading('Camera A'),
    heading('Speed'),
    number('ISO 800'),
    heading('Rate'),
    number('25', 'fps'),
    heading('Shutter 180°, 1/50 s, flicker on 50 Hz: clean'),
  ],
  [
    heading('Taking stop'),
    blank,
    choice('f/2.8'),
    heading('puts middle grey at 6.25 cd/m²'),
    blank,
    blank,
    heading('Contrast by sides'),
    blank,
    number('3.2:1'),
  ],
  [{ text: 'Sail loft, all lights on', heading: true, italic: true }],
  [
    heading('Point'),
    heading('Wanted', true),
    heading('Reading', true),
    heading('Meter'),
    heading('From key', true),
    heading('Verdict'),
    heading('Light', true),
    heading('Distance', true),
    heading('Output', true),
  ],
  [
    word('Key side of face'),
    choice('0'),
    reading('f/2.8'),
    given('dome'),
    number('0', 'stops'),
    verdict('agrees', 'taking stop'),
  ],
  [
    word('Fill side of face'),
    choice('−2'),
    reading('f/1.4 1/3'),
    given('dome'),
    number('−1 2/3', 'stops'),
    verdict('over', '1/3 stop over'),
    number('× 0.72'),
    number('2.1 → 2.47 m'),
    number('7 → 5 %'),
  ],
  [
    word('Back light on shoulder'),
    choice('+1'),
    reading('f/4'),
    given('flat'),
    number('+1', 'stops'),
    verdict('agrees', 'agrees'),
  ],
  [
    word('Canvas left'),
    choice('−2'),
    {
      ...reading('f/1.2'),
      remark: true,
      described: 'The canvas was metered flat, the face with the dome.',
    },
    given('flat'),
    number('−2.4', 'stops'),
    verdict('under', '0.4 stop under'),
    number('× 1.32'),
  ],
  [
    word('Canvas right'),
    choice('−2'),
    reading('f/1.4 + 0.4'),
    given('flat'),
    number('−1.6', 'stops'),
    verdict('over', '0.4 stop over'),
    number('× 0.76'),
    number('2.8 → 3.2 m'),
    number('65 → 49 %'),
  ],
  [
    { ...word('Rope bench'), note: true },
    choice('−1'),
    reading('85', 'lx'),
    given('flat'),
    number('−0.56', 'stops'),
    verdict('over', '0.4 stop over'),
    number('× 0.74'),
  ],
  [
    word('Ice box door'),
    choice('−1 1/2'),
    { ...blank, role: 'reading', align: 'right' },
    given('flat'),
    { ...number('–'), state: 'waiting', described: 'Waiting for a reading in C11.' },
    verdict('waits', 'waiting for a reading'),
  ],
  [
    word('Window gap'),
    blank,
    reading('1.2', 'kcd/m²'),
    given('spot'),
    number('+7.6', 'stops'),
    verdict('clips', 'clips by 1.1 stops'),
  ],
  [
    word('Dark corner'),
    choice('−3 1/2'),
    reading('0.55', 'cd/m²'),
    given('spot'),
    {
      text: 'no stop',
      align: 'right',
      state: 'error',
      described: 'FSTOPS: the reading must be more than 0 and is −0.55.',
    },
    blank,
  ],
  [
    word('Your answer'),
    blank,
    { text: '', role: 'answer', align: 'right' },
    blank,
    { text: '−1.2', unit: 'stops', role: 'answer', align: 'right' },
  ],
  [word('<img src=x onerror="document.title=\'broken\'">')],
];

export interface TestModel extends GridModel {
  rowCount: number;
  columnCount: number;
  frozen: { rows: number; columns: number };
  /** Entries that tests made; they win over the content above. */
  readonly entries: Map<string, string>;
  readonly widths: Map<number, number>;
  /** Every cell the grid asked for since this was last emptied. */
  readonly asked: Set<string>;
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

export function columnName(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnName(rest - 1) : '') + (letters[column % 26] ?? '');
}

export function testModel(rowCount: number, columnCount: number): TestModel {
  const model: TestModel = {
    name: 'Key, fill and background',
    rowCount,
    columnCount,
    frozen: { rows: 0, columns: 0 },
    entries: new Map(),
    widths: new Map(),
    asked: new Set(),
    columnWidth: (column) => model.widths.get(column) ?? widths[column] ?? 80,
    rowLabel: (row) => String(row + 1),
    columnLabel: columnName,
    cell(row, column) {
      const key = `${row},${column}`;
      model.asked.add(key);
      const entry = model.entries.get(key);
      if (entry !== undefined) return { text: entry };
      const picture = rows[row]?.[column];
      if (picture) return picture;
      return row >= 100 && column === 0 ? { text: `Row ${row + 1}` } : blank;
    },
    editText(row, column) {
      const entry = model.entries.get(`${row},${column}`);
      if (entry !== undefined) return entry;
      if (row === 5 && column === 4) return '=FSTOPS(C6, key_side)';
      return rows[row]?.[column]?.text ?? (row >= 100 && column === 0 ? `Row ${row + 1}` : '');
    },
    used: () => ({ rows: rows.length, columns: 9 }),
  };
  return model;
}
