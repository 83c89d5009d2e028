import { extent } from 'd3-array';
import type { XY } from '../../../../functions/colour/chromaticity.ts';
import type { Size, Surroundings } from '../../figure.ts';
import type { Box } from '../../kit/ground.ts';
import { Places } from '../../kit/places.ts';
import type { Theme } from '../../kit/theme.ts';
import { diagrams, toleranceBox, type Diagram, type Spot } from './diagram.ts';
import type { Colours } from './read.ts';

/** A diagram laid out on paper: what it shows and where. */
export interface View extends Surroundings {
  readonly colours: Colours;
  readonly diagram: Diagram;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly box: Box;
  /** From and to, across and up. */
  readonly shown: readonly [across: Spot, up: Spot];
  /** What agrees with the white, round it. */
  readonly agrees: readonly XY[];
  readonly places: Places;
  spot(colour: XY): Spot;
  /** A place of the diagram’s own scales. */
  onScale(at: Spot): Spot;
}

export function viewOf(
  colours: Colours,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): View {
  const diagram = diagrams[colours.diagram];
  const { white, tolerance } = colours;
  const agrees = white?.tinted ? toleranceBox(white.tinted, tolerance) : [];
  const tall = Math.min(Math.max(width * 0.6, letters * 18), letters * 36);
  const box: Box = {
    ...{ left: letters * 4, right: width - letters },
    ...{ top: letters * 1.8, bottom: letters * 1.8 + tall },
  };
  const [wide, high] = [box.right - box.left, tall];
  const [across, up] = colours.whole
    ? [[-0.02, diagram.most[0]] as const, [-0.02, diagram.most[1]] as const]
    : near(colours, diagram, agrees);
  // One scale for both ways, so that distances look as they are.
  const scale = Math.min(wide / (across[1] - across[0]), high / (up[1] - up[0]));
  const wider = ([from, to]: Spot, room: number): Spot => {
    const more = (room / scale - (to - from)) / 2;
    return [from - more, to + more];
  };
  const shown = [wider(across, wide), wider(up, high)] as const;
  const onScale = ([x, y]: Spot): Spot => [
    box.left + (x - shown[0][0]) * scale,
    box.bottom - (y - shown[1][0]) * scale,
  ];
  return {
    ...surroundings,
    ...{ colours, diagram, theme, letters, small: letters * 0.88, box, shown, agrees },
    places: new Places(box),
    onScale,
    spot: (colour) => onScale(diagram.at(colour)),
  };
}

/** As close as all that is shown allows, with room for names around it. */
function near({ sources, white }: Colours, diagram: Diagram, agrees: readonly XY[]) {
  const all = [
    ...sources.flatMap(({ at, then }) => (then ? [at, then.at] : [at])),
    ...(white ? [white.at] : []),
    ...agrees,
  ].map((colour) => diagram.at(colour));
  return ([0, 1] as const).map((axis): Spot => {
    const [low = 0, high = 0] = extent(all, (at) => at[axis]);
    const room = Math.max(0.3 * (high - low), diagram.closest - (high - low)) / 2;
    return [low - room, high + room];
  }) as [Spot, Spot];
}
