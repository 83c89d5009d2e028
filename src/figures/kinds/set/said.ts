import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import type { WritingSettings } from '../../../../functions/quantities/settings.ts';
import { fromBase } from '../../../../functions/quantities/unit.ts';
import { workbookUnit } from '../../../../functions/quantities/workbookUnit.ts';
import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import { said, saidNumber } from '../../kit/words.ts';
import { thirdOf, type SetPicture } from './read.ts';
import { words } from '../../../words/words.ts';

/** A tenth of a stop is as near as a plan goes. */
const tenth = (stops: number): number => Math.round(stops * 10) / 10;

/** "−1 1/2 stops", "+0.3 stop", "0". */
export function stopsFromKey(stops: number, writing: WritingSettings): string {
  if (stops === -Infinity) return words.set.noneThere;
  const shown = tenth(stops);
  return shown === 0 ? '0' : said('stops', shown, writing);
}

/** Lux or footcandles as they are read by eye: three digits. */
export function luxSaid(lux: number, writing: WritingSettings): string {
  const unit = workbookUnit('illuminance', writing);
  const shown = unit ? fromBase(unit, lux) : lux;
  return said('illuminance', (lux * Number(shown.toPrecision(3))) / shown, writing);
}

/** A length on a plan, to a centimetre. */
export const lengthSaid = (metres: number, writing: WritingSettings): string =>
  said('length', writing.length === 'm' ? Math.round(metres * 100) / 100 : metres, writing);

const axis = ['x', 'y', 'z'] as const;

/** How the lines are read: "a dome facing as Key side does, 1.6 m up". */
export function linesInWords(set: SetPicture, writing: WritingSettings): readonly [string, string] {
  const { lines, key, axes } = set;
  if (!lines) return ['', ''];
  const receptor = lines.lying
    ? words.set.flatUp
    : lines.receptor === 'dome'
      ? words.set.domeFacing(key.name)
      : words.set.flatFacing(key.name);
  const third = thirdOf(axes);
  const depth = lengthSaid(lines.depth, writing);
  const where =
    third === 2
      ? lines.depth === 0
        ? words.set.onFloor
        : words.set.up(depth)
      : words.set.depthOf(axis[third], depth);
  return [receptor, where];
}

/** "x 1.2, y 3, 2.4 m up". */
export function placeSaid([x, y, z]: Vector, writing: WritingSettings): string {
  const number = (value: number) => saidNumber('length', Math.round(value * 100) / 100, writing);
  return words.set.place(number(x), number(y), lengthSaid(z, writing));
}

export const amountOf = (stops: number): string => stopsInWords(tenth(Math.abs(stops)));

export const isSame = (stops: number): boolean => tenth(stops) === 0;
