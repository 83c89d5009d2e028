import { heading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { at, captionRow, row, rows, white, type ColumnName } from './columns.ts';

/** A channel of a fixture by itself, metered alone. */
export interface PlannedChannel {
  readonly kelvin: string;
  readonly tint: string;
  readonly level: string;
}

const { channels, settings, sources } = rows;
const names = ['Warm channel', 'Cool channel'] as const;
const fixed = (column: ColumnName, line: number) => at(column, line).replace(/\D+/, '$$$&$$');
const [warm, cool] = [channels.first, channels.last];
const [warmLevel, coolLevel] = [fixed('level', warm), fixed('level', cool)];

function channelRow(line: number, planned?: PlannedChannel): Record<string, PlannedCell> {
  const point = (axis: 'X' | 'Y') =>
    `=PLANCK${axis}(${at('kelvin', line)},IF(ISBLANK(${at('tint', line)}),0,${at('tint', line)}))`;
  const reading = (typed: string | undefined, quantity: PlannedCell['quantity']): PlannedCell => ({
    role: 'reading',
    ...(typed !== undefined && { typed }),
    ...(quantity && { quantity }),
  });
  return row(line, {
    source: { typed: names[line - channels.first] ?? '' },
    kelvin: reading(planned?.kelvin, 'colourTemperature'),
    tint: reading(planned?.tint, 'duv'),
    level: reading(planned?.level, 'illuminance'),
    x: { typed: point('X'), quantity: 'chromaticity' },
    y: { typed: point('Y'), quantity: 'chromaticity' },
  });
}

/** How to set both channels for one white, and what that comes to. */
function settingRow(line: number): Record<string, PlannedCell> {
  const is = (column: ColumnName) => at(column, line);
  const source = at('source', sources.first + line - settings.first - 1);
  const own = line === settings.first;
  const from = (column: ColumnName) => at(column, sources.first + line - settings.first - 1);
  const once = (formula: string) => (own ? `=${formula}` : `=IF(ISBLANK(${source}),"",${formula})`);
  const share = is('shift');
  const [y1, y2] = [fixed('y', warm), fixed('y', cool)];
  const [warmLight, coolLight] = [`${is('xTyped')}*${warmLevel}`, `${is('yTyped')}*${coolLevel}`];
  const weight = `(${warmLight}/${y1}+${coolLight}/${y2})`;
  return row(line, {
    source: own ? { typed: 'The white wanted' } : { typed: once(source), quantity: 'text' },
    kelvin: {
      typed: once(own ? white.kelvin : from('asKelvin')),
      quantity: 'colourTemperature',
      decimals: 0,
    },
    tint: { typed: once(own ? white.duv : from('asDuv')), quantity: 'duv' },
    shift: {
      typed: once(
        `MIXSHARE(${fixed('x', warm)},${y1},${fixed('x', cool)},${y2},PLANCKX(${is('kelvin')},${is('tint')}),PLANCKY(${is('kelvin')},${is('tint')}))`,
      ),
      quantity: 'share',
      decimals: 0,
    },
    xTyped: {
      typed: once(`IF(${share}=0,1,MIN(1,(1-${share})/${share}*${coolLevel}/${warmLevel}))`),
      quantity: 'share',
      decimals: 0,
    },
    yTyped: {
      typed: once(`IF(${share}=1,1,MIN(1,${share}/(1-${share})*${warmLevel}/${coolLevel}))`),
      quantity: 'share',
      decimals: 0,
    },
    level: { typed: once(`${warmLight}+${coolLight}`), quantity: 'illuminance', decimals: 0 },
    x: {
      typed: once(
        `(${warmLight}*${fixed('x', warm)}/${y1}+${coolLight}*${fixed('x', cool)}/${y2})/${weight}`,
      ),
      quantity: 'chromaticity',
    },
    y: { typed: once(`${is('level')}/${weight}`), quantity: 'chromaticity' },
    verdict: {
      typed: once(
        `COLOURVERDICT(${is('leftMired')},${is('leftDuv')},${white.mired},${white.within})`,
      ),
      quantity: 'text',
    },
    words: {
      typed: once(
        `"Warm "&ROUND(100*${is('xTyped')},0)&" %, cool "&ROUND(100*${is('yTyped')},0)&" % for "&ROUND(${is('kelvin')},0)&" K: "&${is('verdict')}`,
      ),
      quantity: 'text',
    },
    leftMired: {
      typed: once(`MIREDSHIFT(${is('kelvin')},CCT(${is('x')},${is('y')}))`),
      quantity: 'mired',
      decimals: 0,
    },
    leftDuv: { typed: once(`DUV(${is('x')},${is('y')})-${is('tint')}`), quantity: 'duv' },
    difference: {
      typed: once(
        `COLOURDIFFERENCE(${is('x')},${is('y')},PLANCKX(${is('kelvin')},${is('tint')}),PLANCKY(${is('kelvin')},${is('tint')}))`,
      ),
      quantity: 'number',
      decimals: 4,
    },
  });
}

/** A fixture of two channels: how to set them so that it meets the white, or another source. */
export const channelRows = (
  planned?: readonly [warm: PlannedChannel, cool: PlannedChannel],
): Record<string, PlannedCell> => ({
  [`A${channels.head - 1}`]: heading('A bi-colour fixture, each channel metered alone at full'),
  ...captionRow(channels.head, {
    source: 'Channel',
    kelvin: 'Reading',
    tint: 'Tint',
    level: 'Level',
    x: 'x',
    y: 'y',
  }),
  ...channelRow(warm, planned?.[0]),
  ...channelRow(cool, planned?.[1]),
  ...captionRow(settings.head, {
    source: 'Set for',
    kelvin: 'Kelvin',
    tint: 'Duv',
    xTyped: 'Warm',
    yTyped: 'Cool',
    level: 'Level',
    x: 'x',
    y: 'y',
    verdict: 'What remains',
    words: 'In words',
    shift: 'Cool’s share',
    leftMired: 'Still off',
    leftDuv: 'in tint',
    difference: 'Δu′v′',
  }),
  ...Object.assign(
    {},
    ...Array.from({ length: settings.last - settings.first + 1 }, (_, index) =>
      settingRow(settings.first + index),
    ),
  ),
});
