import { changes } from './changes.ts';
import { captionRow, letterOf, lightNames, row, type ColumnName } from './columns.ts';
import { list, order, perLight, rowsOf, type Cells } from './rows.ts';

/** A list in words with a dash where it has nothing; two that are next to each other need two goes. */
const dashed = (joined: string) => {
  const between = (text: string) => `SUBSTITUTE(${text},", ,",", –,")`;
  return `SUBSTITUTE(${between(between(`${joined}&"."`))},", .",", –.")`;
};

/** The row of the list that is shot as the n-th, looked up. */
function orderRow(at: number): Cells {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const number = at - order.head;
  const down = (column: ColumnName | string) => `$${column}$${list.first}:$${column}$${list.last}`;
  const found = `MATCH(${number},${down(letterOf('order'))},0)`;
  const fetched = (column: string) => `=IFERROR(INDEX(${down(column)},${found})&"","")`;
  const once = (formula: string) =>
    `=IF(COUNTIF(${down(letterOf('order'))},${number})=0,"",${formula})`;
  const { rigged, struck, moved } = changes(at, at === order.first);
  const place = letterOf('place');
  const travels = at === order.first ? '0' : `IF(${is('place')}=${place}${at - 1},0,$H$2)`;
  const moves = `(${is('rigged')}+${is('struck')}+${is('moved')})`;
  const again = `MATCH(${is('rig')},$${letterOf('rig')}$${order.first}:$${letterOf('rig')}$${at - 1},0)`;
  const shared = `INDEX($A$${order.first}:$A$${at - 1},${again})`;
  const said = `IF(${moves}=0,"no moves",${moves}&IF(${moves}=1," move"," moves"))`;
  /** Of the day that this moment lies in, counted from the first; the first begins when all does. */
  const dayOf = (moment: string) => `(INT(${moment}-$B$1)+$B$1)`;
  const begins = (free: string) =>
    `IF(ISBLANK($D$1),${free},IF(${is('hours')}+${is('takes')}>$D$1-24*(${free}-${dayOf(free)}),${dayOf(free)}+1,${free}))`;
  return row(at, {
    setUp: { typed: fetched('A'), quantity: 'text' },
    place: { typed: fetched(place), quantity: 'text' },
    order: { typed: once(String(number)), quantity: 'number' },
    takes: {
      typed: once(`INDEX(${down(letterOf('takes'))},${found})`),
      quantity: 'duration',
      decimals: 1,
    },
    ...perLight((column) => ({ typed: fetched(column), quantity: 'text' })),
    rigged: { typed: once(rigged), quantity: 'number' },
    struck: { typed: once(struck), quantity: 'number' },
    moved: { typed: once(moved), quantity: 'number' },
    hours: {
      typed: once(`${is('rigged')}*$B$2+${is('struck')}*$D$2+${is('moved')}*$F$2+${travels}`),
      quantity: 'duration',
      decimals: 1,
    },
    from: {
      typed: once(at === order.first ? '$B$1' : begins(`${letterOf('until')}${at - 1}`)),
      quantity: 'dateTime',
    },
    until: {
      typed: once(`${is('from')}+(${is('hours')}+${is('takes')})/24`),
      quantity: 'dateTime',
    },
    words: {
      typed: once(at === order.first ? said : `${said}&IFERROR(", the rig of "&${shared},"")`),
      quantity: 'text',
    },
    rig: {
      typed: once(dashed([is('place'), ...lightNames.map(is)].join('&", "&'))),
      quantity: 'text',
    },
  });
}

/** The set-ups one after the other, with what each change takes and when it is shot. */
export const orderTable = (): Cells => ({
  ...captionRow(order.head, {
    setUp: 'In order',
    place: 'Place',
    order: 'Shot as',
    takes: 'Shooting takes',
    rigged: 'To rig',
    struck: 'To strike',
    moved: 'To move',
    hours: 'Takes',
    from: 'Begins',
    until: 'Shot by',
    words: 'In words',
    rig: 'Rig',
  }),
  ...row(
    order.head,
    perLight((column) => ({ typed: `=${column}${list.head}&""`, quantity: 'text', bold: true })),
  ),
  ...rowsOf(order, orderRow),
});
