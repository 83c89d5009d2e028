import { words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { at, block, down, letterOf, rows, white } from './columns.ts';
import { aboutStops } from './sources.ts';

const { sources } = rows;
const lines = Array.from(
  { length: sources.last - sources.first + 1 },
  (_, index) => sources.first + index,
);

const all = (column: 'leave') => lines.map((line) => at(column, line)).join('&');
const left = `MID(${all('leave')},3,500)`;
const turned = (turn: number) =>
  `INDEX(${down('correct', sources)},MATCH(${turn},${down('turn', sources)},0))`;
const then = lines
  .slice(1)
  .map((_, index) => `IFERROR(", then "&${turned(index + 2)},"")`)
  .join('&');

/** Which to leave and which to correct, the one that loses least first. */
const order =
  `=IF(COUNT(${down('turn', sources)})=0,IF(${left}="","Type sources below.","Leave "&${left}&"."),` +
  `IF(${left}="","","Leave "&${left}&". ")&"Correct "&${turned(1)}&${then}&".")`;

const best = `MIN(${down('score', sources)})`;
const among = (column: 'source' | 'asKelvin' | 'asDuv' | 'lose' | 'stay') =>
  `INDEX(${down(column, sources)},MATCH(${best},${down('score', sources)},0))`;
const staying = (count: string) =>
  `IF(${count}>0,", and "&${count}&" that cannot be filtered "&IF(${count}=1,"stays","stay")&" off","")`;

/** A camera is balanced to a tint as well, where that would be seen. */
const tint =
  `IF(ABS(${among('asDuv')})>${white.within}+0.0000001,` +
  `" and "&IF(${among('asDuv')}>0,"green","magenta")&" by "&TEXT(ABS(${among('asDuv')}),"0.000"),"")`;

/** Whether another white would cost less light. */
const balance =
  `=IF(100*${white.stay}+${white.lose}<=${best}+0.01,` +
  `"The white wanted costs least: all lose "&${aboutStops(white.lose)}&" together"&${staying(white.stay)}&".",` +
  `IF(${among('stay')}<${white.stay},"Fewer stay off if you","It costs less to")&" leave "&${among('source')}&" and balance the camera to it, "&ROUND(${among('asKelvin')},0)&" K"&${tint}&": all lose "&${aboutStops(among('lose'))}&" together"&${staying(among('stay'))}&"; at the white wanted "&${aboutStops(white.lose)}&${staying(white.stay)}&".")`;

/** The mixture of levels with x and y beside them, in the cells of one line. */
function mixture(line: number, label: string, lights: string): Record<string, PlannedCell> {
  const [x, y] = [`${letterOf('xTyped')}${line}`, `${letterOf('yTyped')}${line}`];
  return {
    [`A${line}`]: words(label),
    [`B${line}`]: { typed: `=CCT(${x},${y})`, quantity: 'colourTemperature', decimals: 0 },
    [`C${line}`]: words('Duv'),
    [`D${line}`]: { typed: `=DUV(${x},${y})`, quantity: 'duv' },
    [`E${line}`]: { typed: 'x, y', align: 'right' },
    [x]: { typed: `=MIXX(${lights})`, quantity: 'chromaticity' },
    [y]: { typed: `=MIXY(${lights})`, quantity: 'chromaticity' },
    [`${letterOf('verdict')}${line}`]: {
      typed: `=COLOURVERDICT(MIREDSHIFT(${white.kelvin},B${line}),D${line}-${white.duv},${white.mired},${white.within})`,
      quantity: 'text',
    },
  };
}

/** The sentences over the sources, and what they come to where all reach one point. */
export const advice: Readonly<Record<string, PlannedCell>> = {
  A4: words('Order of work'),
  B4: { typed: order, quantity: 'text' },
  A5: words('Balance'),
  B5: { typed: balance, quantity: 'text' },
  ...mixture(6, 'All at one point', block('level', 'y', sources)),
  ...mixture(7, 'All, corrected', block('then', 'thenY', sources)),
};
