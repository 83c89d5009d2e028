import { captions as known } from '../../src/choose/pick/sheet.ts';
import { buildBook } from '../build.ts';
import { choice, heading, numberHeading, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { captionRow, captions, letterOf, points, row, widths } from './columns.ts';

type Cells = Record<string, PlannedCell>;

/** A fixture in a place where it could stand. */
export interface PlannedOption {
  readonly option: string;
  readonly item: string;
  readonly available: string;
  readonly cost: string;
  readonly watts: string;
  readonly powerFactor: string;
  readonly dims: 'yes' | 'no';
  /** Lux that one of it gives at each point, or formulas. */
  readonly gives: readonly string[];
}

export interface PlannedChoosing {
  readonly points: readonly { readonly name: string; readonly wanted: string }[];
  readonly options: readonly PlannedOption[];
  readonly circuits: readonly { readonly name: string; readonly carries: string }[];
}

const head = 7;
const [wanted, comes, off, first] = [head + 1, head + 2, head + 3, head + 4];
const count = 12;
const last = first + count - 1;
const circuitsHead = last + 2;
const circuits = 4;

const down = (column: Parameters<typeof letterOf>[0]): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

const reckoning = [
  'Fill in what could stand where, what one of it gives at each point at full, and how many there are; then find “Choose the fixtures”.',
  'Each point is brought within the tolerance and as near as dimming allows, at the least cost. Options of one item share what there is of it.',
  'Take, output and second choice can be typed over: what it comes to follows at once. Choosing again writes them anew; undo takes it back.',
];

const cautions = [
  'Whole fixtures are packed on the circuits and none is split. A planning aid only: the local code and a qualified electrician decide.',
  'Weight, heat and glare are no columns here: ask who rigs it what stands, ceilings and people under them can take.',
];

function pointCells({ points: planned }: PlannedChoosing): Cells {
  const cells: Cells = {
    [`A${wanted}`]: words('Wanted'),
    [`A${comes}`]: words('Comes to'),
    [`A${off}`]: words('From wanted'),
  };
  for (const [index, name] of points.entries()) {
    const column = letterOf(name);
    const point = planned[index];
    cells[`${column}${head}`] = {
      ...choice(point?.name ?? '', 'text'),
      bold: true,
      align: 'right',
    };
    cells[`${column}${wanted}`] = choice(point?.wanted ?? '', 'illuminance');
    cells[`${column}${comes}`] = {
      typed: `=IF(ISBLANK(${column}${wanted}),"",SUMPRODUCT(${down('take')},${down('output')},${column}${first}:${column}${last}))`,
      quantity: 'illuminance',
      decimals: 0,
    };
    cells[`${column}${off}`] = {
      typed: `=IF(ISBLANK(${column}${wanted}),"",STOPS(${column}${comes},${column}${wanted}))`,
      quantity: 'stops',
      decimals: 1,
    };
  }
  return cells;
}

function optionRow(at: number, planned?: PlannedOption): Cells {
  const [name, watts, factor] = ['option', 'watts', 'powerFactor'].map(
    (column) => `${letterOf(column as 'option')}${at}`,
  );
  return row(at, {
    option: choice(planned?.option ?? '', 'text'),
    take: choice('', 'number'),
    output: choice('', 'share'),
    second: choice('', 'number'),
    item: choice(planned?.item ?? '', 'text'),
    available: choice(planned?.available ?? '', 'number'),
    cost: choice(planned?.cost ?? '', 'money'),
    watts: choice(planned?.watts ?? '', 'power'),
    powerFactor: choice(planned?.powerFactor ?? '', 'number'),
    current: {
      typed: `=IF(ISBLANK(${name}),"",AMPS(${watts},$B$1,${factor}))`,
      quantity: 'current',
      decimals: 1,
    },
    dims: choice(planned?.dims ?? '', 'text'),
    ...Object.fromEntries(
      points.map((point, index) => [point, choice(planned?.gives[index] ?? '', 'illuminance')]),
    ),
  });
}

/** What could stand where, and the cheapest of it that does. */
export const choosingSheet = (planned: PlannedChoosing): PlannedSheet => ({
  name: 'Choosing',
  title: 'Choosing',
  purpose: 'What could stand where; the cheapest set that reaches every point is found for you.',
  phase: 'order',
  template: 'choosing',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('Mains'),
    B1: choice('230 V', 'voltage'),
    A2: words(known.within),
    B2: choice('1/3', 'stops'),
    A4: heading(known.outcome),
    B4: { quantity: 'text' },
    A5: words('Costs'),
    B5: { typed: `=SUMPRODUCT(${down('take')},${down('cost')})`, quantity: 'money' },
    D5: { ...words('draws'), align: 'right' },
    E5: {
      typed: `=SUMPRODUCT(${down('take')},${down('current')})`,
      quantity: 'current',
      decimals: 1,
      align: 'left',
    },
    ...captionRow(head, captions),
    ...pointCells(planned),
    ...Object.assign(
      {},
      ...Array.from({ length: count }, (_, index) =>
        optionRow(first + index, planned.options[index]),
      ),
    ),
    [`A${circuitsHead}`]: heading(known.circuit),
    [`B${circuitsHead}`]: numberHeading(known.carries),
    [`C${circuitsHead}`]: heading(known.hangs),
    ...Object.assign(
      {},
      ...Array.from({ length: circuits }, (_, index): Cells => {
        const at = circuitsHead + 1 + index;
        const circuit = planned.circuits[index];
        return {
          [`A${at}`]: choice(circuit?.name ?? '', 'text'),
          [`B${at}`]: choice(circuit?.carries ?? '', 'current'),
        };
      }),
    ),
    ...remarks('How it is chosen', circuitsHead + circuits + 2, reckoning),
    ...remarks('Cautions', circuitsHead + circuits + 4 + reckoning.length, cautions),
  },
});

/** The interview at the sail loft: what the store has, and what each would give. Invented. */
export const interview: PlannedChoosing = {
  points: [
    { name: 'Key side', wanted: '340 lx' },
    { name: 'Fill side', wanted: '85 lx' },
    { name: 'Canvas', wanted: '85 lx' },
  ],
  options: [
    {
      option: 'Panel at the key',
      item: 'Soft panel',
      available: '2',
      cost: '138',
      watts: '300 W',
      powerFactor: '0.95',
      dims: 'yes',
      gives: ['620', '60', '10'],
    },
    {
      option: 'Fresnel through a frame',
      item: 'Fresnel 650',
      available: '3',
      cost: '54',
      watts: '650 W',
      powerFactor: '1',
      dims: 'yes',
      gives: ['255', '25', '5'],
    },
    {
      option: 'Panel at the fill',
      item: 'Soft panel',
      available: '2',
      cost: '138',
      watts: '300 W',
      powerFactor: '0.95',
      dims: 'yes',
      gives: ['40', '320', '20'],
    },
    {
      option: 'Bounce on the fill side',
      item: 'Open face 800',
      available: '2',
      cost: '60',
      watts: '800 W',
      powerFactor: '1',
      dims: 'no',
      gives: ['10', '70', '15'],
    },
    {
      option: 'Fresnel on the canvas',
      item: 'Fresnel 650',
      available: '3',
      cost: '54',
      watts: '650 W',
      powerFactor: '1',
      dims: 'yes',
      gives: ['0', '5', '160'],
    },
    {
      option: 'Tube at the canvas',
      item: 'Tube 120',
      available: '4',
      cost: '60',
      watts: '50 W',
      powerFactor: '0.6',
      dims: 'yes',
      gives: ['0', '5', '45'],
    },
  ],
  circuits: [
    { name: 'blue', carries: '8.1 A' },
    { name: 'red', carries: '12.8 A' },
  ],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [choosingSheet(interview)] });
