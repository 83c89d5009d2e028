import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { letterOf, row, type ColumnName } from './columns.ts';

/** An option as it is typed: what stands there, how far off, and what it costs. */
export interface PlannedOption {
  readonly option: string;
  readonly fixture: string;
  readonly count: string;
  /** A reading of one at a distance, or a formula that finds it. */
  readonly gives: string;
  readonly givesAt: string;
  readonly field: string;
  readonly distance: string;
  readonly loss?: string;
  readonly output?: string;
  readonly watts: string;
  readonly powerFactor: string;
  readonly rate: string;
  readonly extras?: string;
}

export const settings = {
  wanted: '$B$2',
  width: '$D$2',
  volts: '$B$3',
  breaker: '$D$3',
  share: '$F$3',
  days: '$B$4',
  charged: '$D$4',
  hours: '$F$4',
  energy: '$H$4',
  by: '$B$5',
  show: '$D$5',
} as const;

export const head = 9;
export const count = 10;
const [first, last] = [head + 1, head + count];

export const down = (column: ColumnName): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

export function optionRow(at: number, planned?: PlannedOption): Record<string, PlannedCell> {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const once = (formula: string) => `=IF(ISBLANK(${is('option')}),"",${formula})`;
  const { wanted, width, volts, breaker, share, days, charged, hours, energy } = settings;
  /** Options that give no less of either; this one is among them. */
  const asGood = `${down('reached')},">="&${is('reached')},${down('covers')},">="&${is('covers')}`;
  const cheaper = `COUNTIFS(${down('cost')},"<"&${is('cost')},${asGood})`;
  const cheapest = `INDEX(${down('option')},MATCH(MINIFS(${down('order')},${asGood}),${down('order')},0))`;
  const each = `AMPS(${is('watts')},${volts},${is('powerFactor')})`;
  return row(at, {
    option: choice(planned?.option ?? '', 'text'),
    fixture: choice(planned?.fixture ?? '', 'text'),
    count: choice(planned?.count ?? '', 'number'),
    gives: choice(planned?.gives ?? '', 'illuminance'),
    givesAt: choice(planned?.givesAt ?? '', 'length'),
    field: choice(planned?.field ?? '', 'angle'),
    distance: choice(planned?.distance ?? '', 'length'),
    loss: choice(planned?.loss ?? '0', 'stops'),
    output: choice(planned?.output ?? '100 %', 'share'),
    reached: {
      typed: once(
        `${is('count')}*LEVELAT(INVERSESQUARE(${is('gives')},${is('givesAt')},${is('distance')}),-${is('loss')}-DIMMERSTOPS(${is('output')}))`,
      ),
      quantity: 'illuminance',
      decimals: 0,
    },
    off: { typed: once(`STOPS(${is('reached')},${wanted})`), quantity: 'stops', decimals: 1 },
    covers: {
      typed: once(`BEAMDIAMETER(${is('distance')},${is('field')})`),
      quantity: 'length',
      decimals: 1,
    },
    watts: choice(planned?.watts ?? '', 'power'),
    powerFactor: choice(planned?.powerFactor ?? '', 'number'),
    amps: { typed: once(`${is('count')}*${each}`), quantity: 'current', decimals: 1 },
    circuits: {
      typed: once(
        `IFERROR(ROUNDUP(${is('count')}/INT(CIRCUITROOM(0,${volts},${breaker},${is('powerFactor')},${share})/${is('watts')}),0),"too much for one")`,
      ),
      quantity: 'number',
    },
    rate: choice(planned?.rate ?? '', 'money'),
    extras: choice(planned?.extras ?? '', 'money'),
    cost: {
      typed: once(
        `${is('count')}*HIRE(${is('rate')},${days},${charged})+N(${is('extras')})` +
          `+ENERGY(${is('count')}*${is('watts')},${hours}*${days})/ENERGY(1000,1)*${energy}`,
      ),
      quantity: 'money',
    },
    fits: { typed: once(`IF(${is('covers')}>=${width},"yes","no")`), quantity: 'text' },
    // Options of one cost stay apart: a millionth for the row.
    order: { typed: once(`${is('cost')}+ROW()/1000000`), quantity: 'money' },
    draws: { typed: once(`${is('count')}*${is('watts')}`), quantity: 'power', decimals: 0 },
    key: { typed: once(turn(is)), quantity: 'number' },
    words: {
      typed: once(
        `IF(NOT(AGREES(MIN(${is('reached')},${wanted}),${wanted})),ROUND(-${is('off')},1)&" stops short",` +
          `IF(${is('covers')}<${width},"too narrow, by "&ROUND(${width}-${is('covers')},1)&" m",` +
          `IF(${cheaper}>0,"dearer and no better than "&${cheapest},` +
          `IF(${is('off')}>=1,"enough, could be dimmed by "&ROUND(${is('off')},1)&" stops","enough"))))`,
      ),
      quantity: 'text',
    },
  });
}

/** How many go before this one in the order wanted; nothing for one that is not to be shown. */
function turn(is: (column: ColumnName) => string): string {
  const { wanted, width, by, show } = settings;
  const isEnough = `AGREES(MIN(${is('reached')},${wanted}),${wanted}),${is('covers')}>=${width}`;
  const before = (column: ColumnName, sign: '<' | '>') =>
    `COUNTIF(${down(column)},"${sign}"&${is(column)})`;
  const place = `IF(${by}="stops",${before('off', '>')},IF(${by}="watts",${before('draws', '<')},${before('cost', '<')}))`;
  return `IF(AND(${show}="enough",NOT(AND(${isEnough}))),"",${place}+ROW()/1000)`;
}

const enough = `${down('reached')},">="&LEVELAT(${settings.wanted},-$F$2),${down('covers')},">="&${settings.width}`;
const least = `MINIFS(${down('order')},${enough})`;
const at = `MATCH(${least},${down('order')},0)`;

/** The cheapest option that reaches and covers what is wanted, in a sentence. */
export const cheapest = `=IF(COUNTIFS(${enough})=0,"No option reaches the light over the whole width.",INDEX(${down('option')},${at})&" is the cheapest that is enough, at "&TEXT(INDEX(${down('cost')},${at}),"0.00")&".")`;
