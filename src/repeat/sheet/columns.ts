import { columnsOf } from '../../../templates/columns.ts';
import { keyColumns as key } from '../../../templates/key-fill-background/columns.ts';

/**
 * The columns of a sheet of points with those of the record between them. Walk, import and the
 * hand-over know them by the captions that they share.
 */
const rebuildColumns = {
  point: key.point,
  then: { caption: 'Then', width: 96, numbers: true },
  // Labels of the camera stand in it too.
  wanted: { ...key.wanted, width: 118 },
  should: { caption: 'Should read', width: 108, numbers: true },
  reading: key.reading,
  meter: key.meter,
  verdict: key.verdict,
  fromKey: key.fromKey,
  ratio: { caption: 'Ratio', width: 150 },
  set: { caption: 'What to set', width: 420 },
  light: key.light,
  newDistance: key.newDistance,
  newOutput: key.newOutput,
  countedOn: key.countedOn,
  alone: key.alone,
  with: key.with,
  lampsOff: key.lampsOff,
  lamp: { caption: 'Lamp', width: 104 },
  standsAt: key.standsAt,
  nearest: key.nearest,
  farthest: { caption: 'Farthest', width: 88, numbers: true },
  outputNow: key.outputNow,
  pieces: { caption: 'Pieces in', width: 130 },
  faceWidth: { caption: 'Face width', width: 92, numbers: true },
  faceHeight: { caption: 'Face height', width: 96, numbers: true },
  note: key.note,
  asF: key.asF,
  here: key.here,
  wantedLight: key.wantedLight,
  own: key.own,
} as const;

export const columns = columnsOf(rebuildColumns);
export type RebuildColumn = keyof typeof rebuildColumns;
