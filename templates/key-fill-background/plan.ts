import { buildBook } from '../build.ts';
import type { PlannedFigure, PlannedSheet } from '../plan.ts';
import { camera } from './camera.ts';
import { captionRow, pointCaptions, widths } from './columns.ts';
import { ladders } from './ladders.ts';
import {
  colourCaptions,
  colourRow,
  head,
  pointRow,
  ratios,
  spotCaptions,
  spotRow,
  type PlannedPoint,
  type PlannedSpot,
} from './rows.ts';

/** What differs from one sheet of points to another. */
export interface PlannedPoints {
  readonly name: string;
  readonly purpose: string;
  readonly tolerance?: number;
  readonly points: readonly PlannedPoint[];
  readonly spots: readonly PlannedSpot[];
  readonly colours: readonly string[];
  /** Beside the ladders, which every sheet of points has. */
  readonly figures?: readonly PlannedFigure[];
}

const cautions = [
  'Lamps, clamps and scrims get hot: keep them clear of cloth, paper, sprinklers and people. Weigh down stands, tie off what hangs, keep water away from mains.',
  'Bright sources and the sun can hurt eyes. These sums plan light; local codes, a qualified electrician and a rigger decide what is safe.',
];

/** A sheet of points: camera, incident readings, spot readings, colour, cautions. */
export function pointsSheet(planned: PlannedPoints): PlannedSheet {
  const { name, purpose, tolerance, points, spots, colours, figures = [] } = planned;
  const spotHead = head + points.length + 2;
  const colourHead = spotHead + spots.length + 2;
  const cautionHead = colourHead + colours.length + 2;
  const rows = [
    ...points.map(pointRow),
    ...spots.map((spot, index) => spotRow(spot, spotHead + 1 + index)),
    ...colours.map((colour, index) => colourRow(colour, colourHead + 1 + index)),
    ...cautions.map((text, index) => ({ [`A${cautionHead + 1 + index}`]: { typed: text } })),
  ];
  return {
    name,
    title: name,
    purpose,
    phase: 'plan',
    template: 'key-fill-background',
    ...(tolerance !== undefined && { tolerance }),
    frozenColumns: 1,
    widths,
    cells: {
      ...camera,
      ...ratios,
      ...captionRow(head, pointCaptions),
      ...captionRow(spotHead, spotCaptions),
      ...captionRow(colourHead, colourCaptions),
      [`A${cautionHead}`]: { typed: 'Cautions', bold: true },
      ...Object.assign({}, ...rows),
    },
    figures: [...ladders(points.length, spots.length), ...figures],
  };
}

const sheet = pointsSheet({
  name: 'Key, fill and background',
  purpose: 'How far each reading is from what was planned, and what closes the gap.',
  points: [
    { point: 'Key side of face', meter: 'dome' },
    { point: 'Fill side of face', wanted: '-2', meter: 'dome' },
    { point: 'Back light on shoulder', wanted: '+1', meter: 'flat' },
    { point: 'Background left', wanted: '-2', meter: 'flat' },
    { point: 'Background right', wanted: '-2', meter: 'flat' },
  ],
  spots: [
    { point: 'Brightest in frame' },
    { point: 'Grey card at face', wanted: '0' },
    { point: 'Darkest in frame' },
  ],
  colours: ['Key colour', 'Fill colour', 'Window colour'],
});

export const build = () => buildBook({ title: 'Untitled', sheets: [sheet] });
