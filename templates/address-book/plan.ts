import { buildBook } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import { columnsOf } from '../columns.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';

type Cells = Record<string, PlannedCell>;

const { letterOf, widths, captions, captionRow, row } = columnsOf({
  name: { caption: 'Fixture', width: 208 },
  owner: { caption: 'Whose', width: 148 },
  first: { caption: 'Draws', width: 112, numbers: true },
  second: { caption: 'Power factor', width: 116, numbers: true },
  third: { caption: 'Weighs', width: 104, numbers: true },
  fourth: { caption: 'Room, m³', width: 104, numbers: true },
  fifth: { caption: 'A day', width: 96, numbers: true },
  note: { caption: 'Note', width: 296 },
});

const table = (head: number, rows: number) => ({ head, first: head + 1, last: head + rows });
const fixtures = table(1, 20);
const meters = table(fixtures.last + 2, 5);
const cameras = table(meters.last + 2, 5);
const kits = table(cameras.last + 2, 16);

type Rows = ReturnType<typeof table>;
const rowsOf = (
  { head, first, last }: Rows,
  planned: readonly (readonly string[])[],
  make: (at: number, one: readonly string[]) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, planned[index] ?? [])),
  );

const down = (column: Parameters<typeof letterOf>[0], { first, last }: Rows): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

const fixtureRow = (
  at: number,
  [name, owner, watts, factor, kg, room, rate, note]: readonly string[],
) =>
  row(at, {
    name: choice(name ?? '', 'text'),
    owner: choice(owner ?? '', 'text'),
    first: choice(watts ?? '', 'power'),
    second: choice(factor ?? '', 'number'),
    third: choice(kg ?? '', 'weight'),
    fourth: choice(room ?? '', 'number'),
    fifth: choice(rate ?? '', 'money'),
    note: choice(note ?? '', 'text'),
  });

const meterRow = (
  at: number,
  [name, owner, over, dome, flat, spot, day, note]: readonly string[],
) =>
  row(at, {
    name: choice(name ?? '', 'text'),
    owner: choice(owner ?? '', 'text'),
    first: choice(over ?? '', 'stops'),
    second: choice(dome ?? '', 'number'),
    third: choice(flat ?? '', 'number'),
    fourth: choice(spot ?? '', 'number'),
    fifth: choice(day ?? '', 'dateTime'),
    note: choice(note ?? '', 'text'),
  });

const cameraRow = (
  at: number,
  [name, owner, index, above, below, sits, white, note]: readonly string[],
) =>
  row(at, {
    name: choice(name ?? '', 'text'),
    owner: choice(owner ?? '', 'text'),
    first: choice(index ?? '', 'iso'),
    second: choice(above ?? '', 'stops'),
    third: choice(below ?? '', 'stops'),
    fourth: choice(sits ?? '', 'stops'),
    fifth: choice(white ?? '', 'colourTemperature'),
    note: choice(note ?? '', 'text'),
  });

/** A piece of a kit: what it weighs and draws is looked up among the fixtures. */
const kitRow = (at: number, [kit, piece, count, note]: readonly string[]) => {
  const once = (column: 'first' | 'third' | 'fourth') => {
    const found = `INDEX(${down(column, fixtures)},MATCH(B${at},${down('name', fixtures)},0))`;
    return `=IF(ISBLANK(B${at}),"",IFERROR(N(${letterOf('first')}${at})*${found},"not among the fixtures"))`;
  };
  return row(at, {
    name: choice(kit ?? '', 'text'),
    owner: choice(piece ?? '', 'text'),
    first: choice(count ?? '', 'number'),
    second: { typed: once('first'), quantity: 'power', decimals: 0 },
    third: { typed: once('third'), quantity: 'weight', decimals: 1 },
    fourth: { typed: once('fourth'), quantity: 'number', decimals: 2 },
    note: choice(note ?? '', 'text'),
  });
};

const use = [
  'New books start from the kept book that is called Address book: this sheet comes along, and so do the fixtures on its shelf.',
  "In the new book look things up here: =INDEX('Address book'!C2:C21,MATCH(A8,'Address book'!A2:A21,0)) is what a fixture draws.",
  'It is kept beside the other books, and goes out and comes back with the archive.',
];

const cautions = [
  'The plate on a fixture counts, not what stands here. Write down when a meter was last compared, and when a lead or a device was last tested by a qualified electrician.',
];

export interface PlannedAddresses {
  readonly fixtures: readonly (readonly string[])[];
  readonly meters: readonly (readonly string[])[];
  readonly cameras: readonly (readonly string[])[];
  readonly kits: readonly (readonly string[])[];
}

/** Fixtures, meters, cameras and kits of the planner’s own, that new books start from. */
export const addressSheet = (planned: PlannedAddresses): PlannedSheet => ({
  name: 'Address book',
  title: 'Address book',
  purpose: 'Fixtures, meters, cameras and kits of your own, that new books start from.',
  phase: 'order',
  template: 'address-book',
  frozenColumns: 1,
  widths,
  cells: {
    ...captionRow(fixtures.head, captions),
    ...rowsOf(fixtures, planned.fixtures, fixtureRow),
    ...captionRow(meters.head, {
      name: 'Meter',
      owner: 'Whose',
      first: 'Reads over by',
      second: 'Dome C',
      third: 'flat C',
      fourth: 'spot K',
      fifth: 'Compared',
      note: 'Note',
    }),
    ...rowsOf(meters, planned.meters, meterRow),
    ...captionRow(cameras.head, {
      name: 'Camera',
      owner: 'Whose',
      first: 'Index',
      second: 'Holds above',
      third: 'below grey',
      fourth: 'Grey sits at',
      fifth: 'White',
      note: 'Note',
    }),
    ...rowsOf(cameras, planned.cameras, cameraRow),
    ...captionRow(kits.head, {
      name: 'Kit',
      owner: 'Piece',
      first: 'Count',
      second: 'Draw in all',
      third: 'Weigh',
      fourth: 'Room, m³',
      note: 'Note',
    }),
    ...rowsOf(kits, planned.kits, kitRow),
    ...remarks('How it is used', kits.last + 2, use),
    ...remarks('Cautions', kits.last + 4 + use.length, cautions),
  },
});

/** What a small crew at the harbour owns. Invented. */
const ours: PlannedAddresses = {
  fixtures: [
    ['Tube 120', 'our own', '50 W', '0.6', '1.4 kg', '0.01', '0', 'four, numbered'],
    ['Soft panel', 'our own', '300 W', '0.95', '9 kg', '0.08', '0'],
    ['Fresnel 650', 'Quay Hire', '650 W', '1', '4.5 kg', '0.04', '18'],
  ],
  meters: [['Meter 1', 'our own', '0', '340', '250', '12.5', '2026-09-01', 'the reference']],
  cameras: [['A', 'hired', '800', '6.5', '4.5', '0', '3200 K']],
  kits: [
    ['Interview', 'Soft panel', '2'],
    ['Interview', 'Tube 120', '2', 'for the canvas'],
  ],
};

/** The title is what new books find it by. */
export const build = () => buildBook({ title: 'Address book', sheets: [addressSheet(ours)] });
