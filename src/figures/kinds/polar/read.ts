import {
  candelaOf,
  edgesOf,
  lumensOf,
  wattsOf,
  type Fixture,
} from '../../../../functions/fixture/fixture.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { fixtureIn } from '../cells.ts';
import { words } from '../../../words/words.ts';

/** Candela along a plane: by degrees from the aim line, to the right (above zero) and to the left. */
export type Curve = readonly (readonly [degrees: number, candela: number])[];

/** Full angles of beam and field, in degrees; missing where nothing is so bright. */
export interface Wide {
  readonly level: number | undefined;
  readonly upright: number | undefined;
}

export interface Polar {
  readonly name: string;
  readonly peak: number;
  readonly level: Curve;
  readonly upright: Curve;
  readonly beam: Wide;
  readonly field: Wide;
  readonly lumens: number;
  readonly watts: number | undefined;
  /** Some of it goes backwards: the whole circle is drawn. */
  readonly whole: boolean;
}

export function readPolar(given: Given): Polar | Undrawn {
  const fixture = fixtureIn(given, 'fixture') ?? { reason: words.polar.empty };
  if ('reason' in fixture) return fixture;
  const [level, upright] = [curveOf(fixture, 0), curveOf(fixture, 90)];
  const peak = Math.max(...[...level, ...upright].map(([, candela]) => candela));
  if (!(peak > 0)) return { reason: words.polar.dark(fixture.name) };
  return {
    ...{ name: fixture.name, peak, level, upright },
    beam: wide(fixture, 0.5),
    field: wide(fixture, 0.1),
    lumens: lumensOf(fixture),
    watts: wattsOf(fixture),
    whole: [...level, ...upright].some(
      ([degrees, candela]) => Math.abs(degrees) > 90 && candela > peak / 200,
    ),
  };
}

/** Every half degree: narrower beams than that no fixture has. */
function curveOf(fixture: Fixture, c: number): Curve {
  const side = (way: 1 | -1) =>
    Array.from({ length: 361 }, (_, index): readonly [number, number] => {
      const gamma = index / 2;
      return [way * gamma, candelaOf(fixture, gamma, way > 0 ? c : c + 180)];
    });
  return [...side(-1).reverse(), ...side(1).slice(1)];
}

function wide(fixture: Fixture, share: number): Wide {
  const across = (c: number) => {
    const edges = edgesOf(fixture, share, c);
    return edges && edges.left + edges.right;
  };
  return { level: across(0), upright: across(90) };
}
