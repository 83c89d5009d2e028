import { writeQuantity } from '../../functions/quantities/index.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
import { isError } from '../../functions/values.ts';
import type { CellValue } from '../engine/types.ts';
import type { Verdict } from '../check/verdicts.ts';
import { words } from '../words/words.ts';

/** What the row of a point says, by its captions in small letters. */
export type RowSays = (caption: string) => CellValue;

/**
 * What closes the gap, in one sentence: as the sheet has counted it where it has, else what a stop
 * is worth. Empty where nothing is to be done.
 */
export function closing(
  says: RowSays,
  verdict: Verdict | undefined,
  writing: WritingSettings,
): string {
  const light = says('light');
  if (typeof light === 'number' && light > 0) return counted(says, light, writing);
  // The sheet has counted and found no way: what a stop is worth would be no help.
  if (isError(light)) return light.waiting ? '' : light.message;
  const { off, shape } = verdict ?? {};
  const isOff = shape === 'over' || shape === 'under';
  if (off?.scale !== 'stops' || !isOff || !Number.isFinite(off.by)) return '';
  // A small lamp’s light goes with the square of its distance.
  const distance = write('factor', 2 ** (off.by / 2), writing);
  return words.walk.orDistance(way(-off.by, writing), distance);
}

function counted(says: RowSays, light: number, writing: WritingSettings): string {
  const told = (now: string, next: string, quantity: QuantityName): string[] => {
    const [from, to] = [says(now), says(next)];
    if (typeof to === 'string' && to !== '') return [to];
    if (typeof to !== 'number') return [];
    const written = write(quantity, to, writing);
    if (typeof from !== 'number') return [written];
    return [`${inOnePiece(writeQuantity(quantity, from, writing).text)} → ${written}`];
  };
  const ways = [
    way(Math.log2(light), writing),
    ...told('stands at', 'new distance', 'length'),
    ...told('output now', 'new output', 'share'),
  ];
  return words.walk.either(ways);
}

/** "Down 0.47 stop: × 0.72 its light". */
function way(stops: number, writing: WritingSettings): string {
  const amount = write('stops', Math.abs(stops), writing).replace(/^\+/, '');
  const factor = write('factor', 2 ** stops, writing);
  return stops < 0 ? words.walk.down(amount, factor) : words.walk.up(amount, factor);
}

/** Number and unit stay on one line. */
const inOnePiece = (text: string) => text.replaceAll(' ', '\u00a0');

/** Finer than a hand can set would only be read twice; stops are said in thirds where they are thirds. */
function write(quantity: QuantityName, value: number, writing: WritingSettings): string {
  const shown = quantity === 'stops' ? value : Math.round(value * 100) / 100;
  return inOnePiece(writeQuantity(quantity, shown, writing).text);
}
