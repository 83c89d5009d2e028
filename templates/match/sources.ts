import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { at, block, down, kit, row, rows, white, type ColumnName } from './columns.ts';

/** A source as it is metered: kelvin and tint, or x and y. */
export interface PlannedSource {
  readonly source: string;
  readonly role?: string;
  readonly kelvin?: string;
  readonly tint?: string;
  readonly x?: string;
  readonly y?: string;
  readonly level?: string;
  /** `no`: nothing can be put on it. `meant`: it is off the white because somebody wants it so. */
  readonly may?: 'no' | 'meant';
}

const { sources } = rows;
/** A formula looks up what was read on another sheet: it is not read again. */
const reading = (typed: string | undefined, quantity: PlannedCell['quantity']): PlannedCell => ({
  ...(!typed?.startsWith('=') && { role: 'reading' }),
  ...(typed !== undefined && { typed }),
  ...(quantity && { quantity }),
});

const text = (typed: string): PlannedCell => ({ typed, quantity: 'text' });

/** About how many stops, as people say it: quarters, and tenths below. */
export const aboutStops = (stops: string): string =>
  `STOPWORDS(IF(${stops}<0.2,${stops},ROUND(4*${stops},0)/4))`;

/** How many of those that nothing can be put on are farther off a white than still agrees. */
export const staysOff = (kelvin: string, duv: string): string => {
  const fixed = `${down('may', sources)},"no"`;
  const within =
    `${down('asKelvin', sources)},">="&KELVINTHROUGH(${kelvin},${white.mired}),` +
    `${down('asKelvin', sources)},"<="&KELVINTHROUGH(${kelvin},-${white.mired}),` +
    `${down('asDuv', sources)},">="&(${duv}-${white.within}),` +
    `${down('asDuv', sources)},"<="&(${duv}+${white.within})`;
  return `COUNTIFS(${fixed})-COUNTIFS(${fixed},${within})`;
};

/** What all lose together when each is brought to a white. */
export const allLose = (kelvin: string, duv: string): string =>
  `MATCHLOSS(${kelvin},${duv},${block('asKelvin', 'counts', sources)},${kit})`;

export function sourceRow(line: number, planned?: PlannedSource): Record<string, PlannedCell> {
  const is = (column: ColumnName) => at(column, line);
  const once = (formula: string) => `=IF(ISBLANK(${is('source')}),"",${formula})`;
  const through = `KELVINTHROUGH(${is('asKelvin')},FILTERSHIFT(${is('on')},${kit}))`;
  const thenDuv = `(${is('asDuv')}+FILTERTINT(${is('on')},${kit}))`;
  const verdictHere = `COLOURVERDICT(MIREDSHIFT(${white.kelvin},${is('asKelvin')}),${is('asDuv')}-${white.duv},${white.mired},${white.within})`;
  const byXY = (formula: string, otherwise: string) =>
    once(`IF(ISBLANK(${is('xTyped')}),${otherwise},${formula})`);
  return row(line, {
    source: choice(planned?.source ?? '', 'text'),
    role: choice(planned?.role ?? '', 'text'),
    may: choice(planned?.may ?? 'yes', 'text'),
    kelvin: reading(planned?.kelvin, 'colourTemperature'),
    tint: reading(planned?.tint, 'duv'),
    xTyped: reading(planned?.x, 'chromaticity'),
    yTyped: reading(planned?.y, 'chromaticity'),
    level: reading(planned?.level, 'illuminance'),
    x: {
      typed: byXY(is('xTyped'), `PLANCKX(${is('asKelvin')},${is('asDuv')})`),
      quantity: 'chromaticity',
    },
    y: {
      typed: byXY(is('yTyped'), `PLANCKY(${is('asKelvin')},${is('asDuv')})`),
      quantity: 'chromaticity',
    },
    // What is meant to be off is no point that is off.
    verdict: {
      typed: once(`IF(${is('may')}="meant","meant: "&${verdictHere},${verdictHere})`),
      quantity: 'verdict',
    },
    words: text(once(sentence(is))),
    pieces: text(
      once(`FILTERFOR(${is('asKelvin')},${is('asDuv')},${white.kelvin},${white.duv},${kit})`),
    ),
    instead: choice('', 'text'),
    on: text(
      once(
        `IF(${is('counts')}="no","none",IF(ISBLANK(${is('instead')}),${is('pieces')},${is('instead')}))`,
      ),
    ),
    shift: {
      typed: once(`MIREDSHIFT(${is('asKelvin')},${white.kelvin})`),
      quantity: 'mired',
      decimals: 0,
    },
    tintShift: { typed: once(`${white.duv}-${is('asDuv')}`), quantity: 'duv' },
    leftMired: {
      typed: once(`MIREDSHIFT(${white.kelvin},${through})`),
      quantity: 'mired',
      decimals: 0,
    },
    leftDuv: { typed: once(`${thenDuv}-${white.duv}`), quantity: 'duv' },
    difference: {
      typed: once(`COLOURDIFFERENCE(${is('thenX')},${is('thenY')},${white.x},${white.y})`),
      quantity: 'number',
      decimals: 4,
    },
    loss: { typed: once(`FILTERLOSS(${is('on')},${kit})`), quantity: 'stops', decimals: 2 },
    then: {
      typed: once(`LEVELAT(${is('level')},-${is('loss')})`),
      quantity: 'illuminance',
      decimals: 0,
    },
    thenX: { typed: once(`PLANCKX(${through},${thenDuv})`), quantity: 'chromaticity' },
    thenY: { typed: once(`PLANCKY(${through},${thenDuv})`), quantity: 'chromaticity' },
    turn: {
      typed: once(`IF(${is('on')}="none","",1+COUNTIFS(${down('key', sources)},"<"&${is('key')}))`),
      quantity: 'number',
    },
    asKelvin: {
      // To and fro, so that a reading that is still missing is waited for.
      typed: byXY(`CCT(${is('xTyped')},${is('yTyped')})`, `KELVIN(MIRED(${is('kelvin')}))`),
      quantity: 'colourTemperature',
      decimals: 0,
    },
    asDuv: {
      typed: byXY(
        `DUV(${is('xTyped')},${is('yTyped')})`,
        `IF(ISBLANK(${is('tint')}),0,${is('tint')})`,
      ),
      quantity: 'duv',
    },
    counts: text(once(`IF(OR(${is('may')}="no",${is('may')}="meant"),"no","yes")`)),
    lose: {
      typed: once(allLose(is('asKelvin'), is('asDuv'))),
      quantity: 'stops',
      decimals: 2,
    },
    stay: { typed: once(staysOff(is('asKelvin'), is('asDuv'))), quantity: 'number' },
    // One that stays off outweighs any loss, and no camera is balanced to what is meant to be off; a
    // millionth for the row keeps equals apart.
    score: {
      typed: once(
        `ROUND(IF(${is('may')}="meant",100000,0)+100*${is('stay')}+${is('lose')}+ROW()/1000000,7)`,
      ),
      quantity: 'stops',
      decimals: 2,
    },
    leave: text(once(`IF(${is('on')}="none",", "&${is('source')},"")`)),
    correct: text(
      once(
        `IF(${is('on')}="none","",${is('source')}&" ("&LOWER(${is('on')})&", "&${aboutStops(is('loss'))}&")")`,
      ),
    ),
    key: {
      typed: once(`IF(${is('on')}="none","",ROUND(${is('loss')}+ROW()/1000000,7))`),
      quantity: 'stops',
      decimals: 2,
    },
  });
}

/** `6900 K at a 3200 K camera: 168 mired too blue; full orange leaves 8 mired and costs about 3/4 stop`. */
function sentence(is: (column: ColumnName) => string): string {
  const left = `ROUND(ABS(${is('leftMired')}),0)&" mired"`;
  const tint =
    `IF(ABS(${is('leftDuv')})>${white.within}+0.0000001,` +
    `IF(${is('leftDuv')}>0,", green by ",", magenta by ")&TEXT(ABS(${is('leftDuv')}),"0.000"),"")`;
  return (
    `ROUND(${is('asKelvin')},0)&" K at a "&ROUND(${white.kelvin},0)&" K camera: "&${is('verdict')}&` +
    `IF(${is('on')}<>"none","; "&LOWER(${is('on')})&" leaves "&${left}&${tint}&" and costs about "&${aboutStops(is('loss'))},` +
    `IF(${is('verdict')}="agrees","",IF(${is('may')}="no","; nothing can be put on it",IF(${is('may')}="meant","","; nothing of the kit comes nearer"))))`
  );
}
