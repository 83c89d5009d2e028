import { towardsColumn } from '../../../../functions/fixture/rigColumns.ts';
import type { Block, Given, Hand, HandCell } from '../../figure.ts';
import type { SetPicture } from './read.ts';
import { words } from '../../../words/words.ts';

type AxisWords = (axis: string) => string;

const axisWords = [words.set.axisX, words.set.axisY, words.set.axisZ] as const;

/** Everything that can be moved along the axes of the picture: fixtures, aims, points. */
export function handsOf({ axes, lights, points }: SetPicture, { inputs }: Given): readonly Hand[] {
  const [across, up] = axes;
  const cell = (input: string, row: number, first: number, axis: 0 | 1 | 2, say: AxisWords) => {
    const column = first + axis;
    return {
      ...{ input, row, column, words: say(axisWords[axis]) },
      ...formulaAt(inputs[input], row, column),
    };
  };
  const pair = (
    input: string,
    row: number,
    first: number,
    say: AxisWords = (axis) => axis,
  ): Hand['cells'] => [cell(input, row, first, across, say), cell(input, row, first, up, say)];
  return [
    ...lights.flatMap(({ row, name, at, aim, towards, placed }): Hand[] => [
      { id: `rig ${row}`, name, at: [at[across], at[up]], cells: pair('rig', row, 1) },
      {
        id: `aim ${row}`,
        name: words.set.aimOf(name),
        at: [aim[across], aim[up]],
        cells: pair('rig', row, 4, words.set.aimAxis),
      },
      ...(towards && placed.lamp
        ? [
            {
              id: `towards ${row}`,
              name: words.set.towardsOf(name),
              at: [towards[across], towards[up]] as const,
              cells: pair('rig', row, towardsColumn, words.set.towardsAxis),
            },
          ]
        : []),
    ]),
    ...points.map(({ row, name, at }): Hand => ({
      id: `point ${row}`,
      ...{ name, at: [at[across], at[up]], cells: pair('points', row, 1) },
    })),
  ];
}

function formulaAt(
  block: Block | undefined,
  row: number,
  column: number,
): Pick<HandCell, 'formula'> {
  const datum = block?.[row]?.[column];
  return datum?.formula ? { formula: datum.at ?? '' } : {};
}
