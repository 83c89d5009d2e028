import type { Throw } from '../../../../functions/fixture/throw.ts';
import { photometryOf, type Photometry } from '../../../../functions/fixture/photometry.ts';
import type { Projector } from '../../../../functions/fixture/fixture.ts';

/** A throw by its angles and one row of candela for each plane; a point unless said otherwise. */
export function throwOf(
  planes: readonly number[],
  gammas: readonly number[],
  rows: readonly (readonly number[])[],
  more: Partial<Throw> = {},
): Throw {
  return {
    ...{ name: 'Lamp', watts: undefined, face: { width: 0, height: 0, round: false } },
    planes: Float64Array.from(planes),
    gammas: Float64Array.from(gammas),
    candela: Float64Array.from(rows.flat()),
    ...more,
  };
}

export const photometry = (...given: Parameters<typeof throwOf>): Photometry =>
  photometryOf(throwOf(...given));

export const projector = (name: string, of: Photometry): Projector => ({
  ...{ kind: 'projector', name },
  photometry: of,
});

/** 100 cd to the right of its aim, 200 up, 300 to the left and 400 down, whatever γ. */
export const fourWays = projector(
  'Four ways',
  photometry(
    [0, 90, 180, 270, 360],
    [0, 180],
    [100, 200, 300, 400, 100].map((candela) => [candela, candela]),
  ),
);
