import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import type { Size, Surroundings } from '../../figure.ts';
import type { Box } from '../../kit/ground.ts';
import { Places } from '../../kit/places.ts';
import type { Theme } from '../../kit/theme.ts';
import type { Frame, SetPicture } from './read.ts';

export type Spot = readonly [x: number, y: number];

/** Where everything of a picture of the set stands on the page. */
export interface Layout extends Surroundings {
  readonly set: SetPicture;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly width: number;
  readonly box: Box;
  /** What the box shows, in metres. */
  readonly frame: Frame;
  /** Pixels for a metre. */
  readonly metre: number;
  /** Names beside their things; else numbers, said below. */
  readonly named: boolean;
  /** Where letters stand already. */
  readonly places: Places;
  spot(at: Vector): Spot;
}

/** Below this many letters across, names would cover the picture. */
const narrowBelow = 46;

export function layoutOf(
  set: SetPicture,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Layout {
  const { frame: wanted, axes } = set;
  const left = letters * 1.9;
  const across = width - left - letters * 0.2;
  const highest = Math.max(letters * 20, Math.min(across * 0.8, letters * 50));
  const lowest = across * 0.28;
  const [w, h] = [wanted.right - wanted.left, wanted.top - wanted.bottom];
  const metre = Math.min(across / w, highest / h);
  const [moreAcross, moreUp] = [across / metre - w, Math.max(0, lowest / metre - h)];
  // A section stands on its floor: what is free is above.
  const below = axes[1] === 2 && wanted.bottom === 0 ? 0 : moreUp / 2;
  const frame = {
    left: wanted.left - moreAcross / 2,
    right: wanted.right + moreAcross / 2,
    bottom: wanted.bottom - below,
    top: wanted.top + moreUp - below,
  };
  const top = letters * 0.3;
  const box = {
    ...{ left, right: left + across, top },
    bottom: top + (frame.top - frame.bottom) * metre,
  };
  return {
    ...surroundings,
    ...{ set, theme, letters, width, box, frame, metre },
    small: letters * 0.88,
    named: width >= narrowBelow * letters,
    places: new Places(box),
    spot: (at) => [
      box.left + (at[axes[0]] - frame.left) * metre,
      box.bottom - (at[axes[1]] - frame.bottom) * metre,
    ],
  };
}
