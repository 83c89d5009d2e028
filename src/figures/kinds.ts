import type { FigureKind } from './figure.ts';
import { chromaticity } from './kinds/chromaticity.ts';
import { cost } from './kinds/cost.ts';
import { evenness } from './kinds/evenness.ts';
import { falloff } from './kinds/falloff.ts';
import { ladder } from './kinds/ladder.ts';
import { over } from './kinds/over.ts';
import { plan } from './kinds/plan.ts';
import { polar } from './kinds/polar.ts';
import { rendering } from './kinds/rendering.ts';
import { section } from './kinds/section.ts';
import { spectrum } from './kinds/spectrum.ts';

/** Every kind of figure, in the order in which they are offered. */
export const figureKinds: readonly FigureKind[] = [
  ladder,
  falloff,
  plan,
  section,
  polar,
  evenness,
  spectrum,
  rendering,
  cost,
  over,
  chromaticity,
];

export const kindOf = (name: string): FigureKind | undefined =>
  figureKinds.find(({ kind }) => kind === name);
