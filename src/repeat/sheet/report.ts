import { choice, heading, remarks, words as plain } from '../../../templates/cells.ts';
import { columnsOf } from '../../../templates/columns.ts';
import type { PlannedCell, PlannedSheet } from '../../../templates/plan.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { keyOf } from '../../book/fixtures.ts';
import type { NewRecord } from '../../book/make/records.ts';
import { short, typed } from './typed.ts';

type Cells = { readonly [address: string]: PlannedCell };

const numbers = (caption: string, width: number) => ({ caption, width, numbers: true }) as const;
const columns = columnsOf({
  point: { caption: 'Point', width: 190 },
  then: numbers('Then', 104),
  now: numbers('Now', 104),
  off: numbers('Off', 112),
  verdict: { caption: 'Verdict', width: 190 },
  thenFromKey: numbers('From key then', 112),
  nowFromKey: numbers('now', 96),
  ratio: { caption: 'Against the key', width: 190 },
  note: { caption: 'Note', width: 320 },
});
const { letterOf } = columns;
type Name = Parameters<typeof letterOf>[0];
const cell = (name: Name, at: number) => `${letterOf(name)}${at}`;

const reportTemplate = 'match-report';

/** Where the settings of the comparison stand. */
const stop = { then: '$B$5', now: '$C$5' };
const white = { then: '$B$6', now: '$C$6' };
const [over, apart, mired, tint] = ['$B$8', '$B$9', '$E$8', '$E$9'];
const head = 12;

/** Two lists matched by name, in the order of the first; what is only in the second comes last. */
function pairsOf<Item extends { readonly name: string }>(
  then: readonly Item[],
  now: readonly Item[],
): readonly { readonly name: string; readonly then?: Item; readonly now?: Item }[] {
  const found = (items: readonly Item[], name: string) =>
    items.find((one) => keyOf(one.name) === keyOf(name));
  const both = then.map((one) => ({ name: one.name, then: one, ...part(found(now, one.name)) }));
  const later = now.filter(({ name }) => !found(then, name));
  return [...both, ...later.map((one) => ({ name: one.name, now: one }))];
}

const part = <Item>(now: Item | undefined) => (now === undefined ? {} : { now });

const read = (value: number | undefined, quantity: QuantityName): PlannedCell =>
  short({ typed: typed(value, quantity), role: 'given', quantity });

/**
 * A reference against today, point by point, ratio by ratio, colour by colour. What was read stands
 * there as it was read; what it comes to is worked out on the sheet.
 */
export function reportSheet(then: NewRecord, now: NewRecord): PlannedSheet {
  const points = pairsOf(then.points, now.points);
  const named = (record: NewRecord) => record.ratios.map((one) => ({ ...one, name: one.label }));
  const ratios = pairsOf(named(then), named(now));
  const colours = pairsOf(then.colours, now.colours);
  const ratioHead = head + points.length + 2;
  const colourHead = ratioHead + ratios.length + 2;
  const signed = colourHead + colours.length + 2;
  const spread = (record: NewRecord) => typed(record.meter?.spread ?? 0.1, 'stops');
  const offset = (now.meter?.offset ?? 0) - (then.meter?.offset ?? 0);
  const rows = (from: number, count: number) => [from + 1, from + Math.max(1, count)] as const;
  const met = (from: number, count: number) => {
    const [first, last] = rows(from, count);
    const said = (words: string) =>
      `COUNTIF(${cell('verdict', first)}:${cell('verdict', last)},"${words}")`;
    return `${said('agrees')}-${said('cannot be told apart')}`;
  };
  const metered = (from: number, count: number) => {
    const [first, last] = rows(from, count);
    return `COUNT(${cell('off', first)}:${cell('off', last)})`;
  };
  return {
    name: `Match ${then.name}`
      .replace(/[[\]*?/\\:]/g, ' ')
      .slice(0, 31)
      .trim(),
    title: `Match report: ${then.name}`,
    purpose: `The light of ${then.name}, ${then.date}, against ${now.name}, ${now.date}: how far it was met.`,
    phase: 'match',
    template: reportTemplate,
    tolerance: then.tolerance,
    frozenColumns: 1,
    widths: columns.widths,
    cells: {
      A1: {
        typed: `=IF(B2+C2+D2=0,"The light matches: ","The light does not match: ")&B2&" of "&B3&" points, "&C2&" of "&C3&" ratios and "&D2&" of "&D3&" colours are off"&IF(E3=0,"",", "&E3&" not metered")&"."`,
        quantity: 'text',
        bold: true,
      },
      A2: plain('Off'),
      B2: { typed: `=B3-${met(head, points.length)}` },
      C2: { typed: `=C3-${met(ratioHead, ratios.length)}` },
      D2: { typed: `=D3-${met(colourHead, colours.length)}` },
      E2: plain('points, ratios, colours'),
      A3: plain('Out of'),
      B3: { typed: `=${metered(head, points.length)}` },
      C3: { typed: `=${metered(ratioHead, ratios.length)}` },
      D3: { typed: `=${metered(colourHead, colours.length)}` },
      E3: { typed: `=${points.length}-B3` },
      F3: plain('not metered'),
      B4: heading('Then'),
      C4: heading('Now'),
      A5: plain('Taking stop'),
      B5: read(then.camera.stop, 'fNumber'),
      C5: read(now.camera.stop, 'fNumber'),
      A6: plain('White'),
      B6: read(then.camera.white, 'colourTemperature'),
      C6: read(now.camera.white, 'colourTemperature'),
      A7: plain('Meter repeats to'),
      B7: choice(spread(then), 'stops'),
      C7: choice(spread(now), 'stops'),
      A8: plain('Now reads over'),
      B8: choice(typed(offset, 'stops'), 'stops'),
      D8: plain('Colour within'),
      E8: choice('10', 'mired'),
      A9: plain('Told apart from'),
      B9: { typed: '=SQRT($B$7^2+$C$7^2)', quantity: 'stops' },
      D9: plain('Tint within'),
      E9: choice('0.003', 'duv'),
      ...columns.captionRow(head, columns.captions),
      ...columns.captionRow(ratioHead, {
        point: 'Ratio',
        then: 'Then',
        now: 'Now',
        off: 'Off',
        verdict: 'Verdict',
      }),
      ...columns.captionRow(colourHead, {
        point: 'Colour',
        then: 'Then',
        now: 'Now',
        off: 'Off in mired',
        verdict: 'In words',
        thenFromKey: 'Tint then',
        nowFromKey: 'now',
      }),
      ...all(points.map((pair, index) => pointCells(pair, head + 1 + index, index === 0))),
      ...all(ratios.map((pair, index) => ratioCells(pair, ratioHead + 1 + index))),
      ...all(colours.map((pair, index) => colourCells(pair, colourHead + 1 + index))),
      ...signature(then, now, signed),
      ...remarks('How it is reckoned', signed + 8, reckoned),
    },
  };
}

const reckoned = [
  'Off: how far the point sits from the taking stop now, less how far it sat then, less what the meter of now reads over. So neither the stop nor the speed counts.',
  'Told apart from: the root of the sum of squares of what each repeats within (common practice). A smaller difference cannot be told apart, and is none.',
  'Against the key: the place from the key now against then. It is untouched by the level of the whole.',
];

const all = (parts: readonly Cells[]): Cells => Object.assign({}, ...parts) as Cells;

type Pair<List extends 'points' | 'colours'> = ReturnType<
  typeof pairsOf<NewRecord[List][number]>
>[number];

/** Nothing where either was not metered; what is too small to tell apart; else the verdict. */
const verdict = (at: number, off: string): string =>
  `=IF(COUNT(${cell('then', at)}:${cell('now', at)})<2,"",IF(ABS(${off})<=${apart},"cannot be told apart",VERDICT(${off})))`;

function pointCells({ name, then, now }: Pair<'points'>, at: number, isKey: boolean): Cells {
  const off = `FSTOPS(${cell('now', at)},${stop.now})-FSTOPS(${cell('then', at)},${stop.then})-${over}`;
  const key = (which: 'then' | 'now') => `$${letterOf(which)}$${head + 1}`;
  const from = (which: 'then' | 'now') =>
    `=IF(COUNT(${cell(which, at)})=0,"",FSTOPS(${cell(which, at)},${key(which)}))`;
  const ratio = `${cell('nowFromKey', at)}-${cell('thenFromKey', at)}`;
  return columns.row(at, {
    point: { typed: name },
    then: read(then?.f, 'fNumber'),
    now: read(now?.f, 'fNumber'),
    off: {
      typed: `=IF(COUNT(${cell('then', at)}:${cell('now', at)})<2,"",${off})`,
      quantity: 'stops',
    },
    verdict: { typed: verdict(at, cell('off', at)), quantity: 'verdict' },
    thenFromKey: { typed: from('then'), quantity: 'stops' },
    nowFromKey: { typed: from('now'), quantity: 'stops' },
    ratio: {
      typed: isKey ? '="the key"' : verdict(at, ratio),
      quantity: isKey ? 'text' : 'verdict',
    },
    note: { typed: noteOn(then, now), quantity: 'text' },
  });
}

/** Between a dome and a flat receptor up to 0.44 stop is the meter: log2(340 / 250). */
function noteOn(then: Pair<'points'>['then'], now: Pair<'points'>['now']): string {
  if (then?.f === undefined) return 'not metered then';
  if (now?.f === undefined) return 'not metered now';
  const unlike = then.receptor !== now.receptor;
  return unlike
    ? `${then.receptor} then, ${now.receptor} now: up to 0.44 stop is the meter`
    : (now.note ?? '');
}

interface RatioPair {
  readonly name: string;
  readonly then?: { readonly value?: number };
  readonly now?: { readonly value?: number };
}

function ratioCells({ name, then, now }: RatioPair, at: number): Cells {
  const off = `FACTORSTOPS(${cell('now', at)}/${cell('then', at)})`;
  return columns.row(at, {
    point: { typed: name },
    then: read(then?.value, 'ratio'),
    now: read(now?.value, 'ratio'),
    off: {
      typed: `=IF(COUNT(${cell('then', at)}:${cell('now', at)})<2,"",${off})`,
      quantity: 'stops',
    },
    verdict: { typed: verdict(at, cell('off', at)), quantity: 'verdict' },
  });
}

function colourCells({ name, then, now }: Pair<'colours'>, at: number): Cells {
  const from = (which: 'then' | 'now') => `MIREDSHIFT(${white[which]},${cell(which, at)})`;
  const off = cell('off', at);
  const tints = `${cell('nowFromKey', at)}-${cell('thenFromKey', at)}`;
  const noTint = `COUNT(${cell('thenFromKey', at)}:${cell('nowFromKey', at)})<2`;
  const tintOff = `AND(NOT(${noTint}),ABS(${tints})>${tint})`;
  const inWords = `IF(ABS(${off})>${mired},ROUND(ABS(${off}),0)&" mired "&IF(${off}>0,"warmer","bluer"),"")&IF(AND(ABS(${off})>${mired},${tintOff}),", ","")&IF(${tintOff},ROUND(ABS(${tints}),4)&" Duv "&IF(${tints}>0,"greener","more magenta"),"")`;
  return columns.row(at, {
    point: { typed: name },
    then: read(then?.kelvin, 'colourTemperature'),
    now: read(now?.kelvin, 'colourTemperature'),
    off: {
      typed: `=IF(COUNT(${cell('then', at)}:${cell('now', at)})<2,"",${from('now')}-${from('then')})`,
      quantity: 'mired',
      decimals: 0,
    },
    verdict: {
      typed: `=IF(COUNT(${cell('then', at)}:${cell('now', at)})<2,"",IF(AND(ABS(${off})<=${mired},NOT(${tintOff})),"agrees",${inWords}))`,
      quantity: 'text',
    },
    thenFromKey: read(then?.duv, 'duv'),
    nowFromKey: read(now?.duv, 'duv'),
  });
}

/** Who says so, when and where; with room for a hand. */
function signature(then: NewRecord, now: NewRecord, at: number): Cells {
  const line = (row: number, label: string, said: readonly (string | undefined)[]): Cells => ({
    [`A${at + row}`]: plain(label),
    [`B${at + row}`]: choice(said.filter(Boolean).join(', '), 'text'),
  });
  return {
    [`A${at}`]: heading('Signed'),
    ...line(1, 'Reference', [then.place, `${then.date} ${then.time}`, then.by]),
    ...line(2, 'Metered with, then', [then.meter?.name]),
    ...line(3, 'Compared', [now.place, `${now.date} ${now.time}`]),
    ...line(4, 'Metered with, now', [now.meter?.name]),
    ...line(5, 'By', [now.by]),
    ...line(6, 'Signature', []),
  };
}
