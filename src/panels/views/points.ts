import { rowCaption } from '../../check/captions.ts';
import { agreementOf } from '../../check/agreement.ts';
import {
  pointsAmong,
  verdictShapeOf,
  type JudgedPoint,
  type JudgingPlaces,
} from '../../check/points.ts';
import type { CellValue } from '../../engine/types.ts';
import type { Point, Shape } from '../shown.ts';
import type { Look } from './look.ts';
import { words } from '../../words/words.ts';

/** What fits a camera's range is drawn as what agrees, and what sinks below it as what is under. */
const drawn: Readonly<Record<JudgedPoint['shape'], Shape>> = {
  over: 'over',
  under: 'under',
  agrees: 'agrees',
  waits: 'waits',
  clips: 'clips',
  'in range': 'agrees',
  lost: 'under',
};

/** Which shape stands before a value that is a verdict, or waits to be one. */
export function shapeOf(value: CellValue): Shape | undefined {
  const shape = verdictShapeOf(value);
  return shape && drawn[shape];
}

export function pointsOf({ document, engine }: Look, places: JudgingPlaces): readonly Point[] {
  return pointsAmong(document, engine, places).map(({ place, words: said, shape }) => {
    const { sheet, row, column } = place;
    return {
      shape: drawn[shape],
      label: rowCaption(document, sheet, row, column),
      words: said,
      target: { sheet, from: { row, column } },
    };
  });
}

/** Beside a sheet in the contents: "4 off", "1 waits", or nothing when all is well. */
export function countOf(points: readonly Point[]): string | undefined {
  const { off, waiting } = agreementOf(points);
  if (off > 0) return words.contents.off(off);
  if (waiting > 0) return words.contents.wait(waiting);
  return undefined;
}
