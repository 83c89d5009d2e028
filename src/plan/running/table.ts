import { keyOf } from '../../book/fixtures.ts';
import { captionsIn, cellsOf } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';

/** A set-up as the list of a running order has it. */
export interface SetUp {
  readonly row: number;
  readonly name: string;
  readonly place: string;
  /** Where each light stands, empty where it is not used. */
  readonly lights: readonly string[];
  /** The how-manieth it is shot as, where a number stands there. */
  readonly shotAs: number | undefined;
  readonly stays: boolean;
}

export interface RunningTable {
  readonly sheet: string;
  readonly setUps: readonly SetUp[];
  readonly shotAs: number;
  /** Hours to rig, strike and move a light, and to travel. */
  readonly hours: Readonly<Record<keyof typeof labels, number>>;
}

/** By these words the parts of the sheet are found; the template sets them. */
const labels = {
  rig: 'To rig a light takes',
  strike: 'to strike',
  move: 'to move',
  travel: 'to travel',
} as const;

/** The list on a sheet that was made from the template; undefined where it lost its captions. */
export function runningOn(look: Look, sheet: string): RunningTable | undefined {
  const cells = cellsOf(look, sheet);
  for (let head = 0; head < cells.rows; head += 1) {
    const columns = captionsIn(cells, head);
    const [place, shotAs, takes, rigged] = ['place', 'shot as', 'shooting takes', 'to rig'].map(
      (caption) => columns.get(caption),
    );
    if (columns.get('set-up') !== 0) continue;
    if (place === undefined || shotAs === undefined) continue;
    if (takes === undefined || rigged === undefined) continue;
    const number = (row: number, column: number): number | undefined => {
      const value = look.engine.valueOf({ sheet, row, column });
      return typeof value === 'number' ? value : undefined;
    };
    const setUps: SetUp[] = [];
    for (let row = head + 1; cells.at(row, rigged)?.content.kind === 'formula'; row += 1) {
      const name = cells.said(row, 0);
      if (name === '') continue;
      setUps.push({
        row,
        name,
        place: keyOf(cells.said(row, place)),
        lights: Array.from({ length: rigged - takes - 1 }, (_, index) =>
          keyOf(cells.said(row, takes + 1 + index)),
        ),
        shotAs: number(row, shotAs),
        stays: keyOf(cells.said(row, columns.get('stays') ?? -1)) === 'yes',
      });
    }
    const beside = (label: string): number => {
      for (let row = 0; row < head; row += 1)
        for (let column = 0; column < cells.columns; column += 1)
          if (cells.label(row, column) === label) return number(row, column + 1) ?? 0;
      return 0;
    };
    const { rig, strike, move, travel } = labels;
    const hours = {
      ...{ rig: beside(rig), strike: beside(strike) },
      ...{ move: beside(move), travel: beside(travel) },
    };
    return { sheet, setUps, shotAs, hours };
  }
  return undefined;
}
