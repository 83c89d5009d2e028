import type { Block, Given, Hand, HandCell } from '../../figure.ts';
import type { SetPicture } from './read.ts';
import { words } from '../../../words/words.ts';

const axisWords = [words.set.axisX, words.set.axisY, words.set.axisZ] as const;

/** Everything that can be moved along the axes of the picture: fixtures, aims, points. */
export function handsOf({ axes, lights, points }: SetPicture, { inputs }: Given): readonly Hand[] {
  const [across, up] = axes;
  const cell = (input: string, row: number, first: number, axis: 0 | 1 | 2, aim: boolean) => {
    const column = first + axis;
    const name = axisWords[axis];
    return {
      ...{ input, row, column, words: aim ? words.set.aimAxis(name) : name },
      ...formulaAt(inputs[input], row, column),
    };
  };
  const pair = (input: string, row: number, first: number, aim = false): Hand['cells'] => [
    cell(input, row, first, across, aim),
    cell(input, row, first, up, aim),
  ];
  return [
    ...lights.flatMap(({ row, name, at, aim }): Hand[] => [
      { id: `rig ${row}`, name, at: [at[across], at[up]], cells: pair('rig', row, 1) },
      {
        id: `aim ${row}`,
        name: words.set.aimOf(name),
        at: [aim[across], aim[up]],
        cells: pair('rig', row, 4, true),
      },
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
