import type { Surroundings } from '../../figure.ts';
import { saidNumber } from '../../kit/words.ts';
import { nameOfReference, titleOf } from '../spectrum/describe.ts';
import type { RenderingRead } from './read.ts';
import { words } from '../../../words/words.ts';

const said = words.renderingFigure;

/** Whole numbers, as the standard reports them. */
export const whole = (index: number, writing: Surroundings['writing']): string =>
  saidNumber('number', Math.round(index), writing);

export function describeRendering(
  read: RenderingRead,
  { writing }: Surroundings,
): readonly string[] {
  const { general, tested, reference } = read;
  const all = tested.map(({ index }, at) => said.one(at + 1, whole(index, writing)));
  const lowest = tested.reduce((low, { index }, at) => (index < tested[low]!.index ? at : low), 0);
  return [
    said.lead(
      titleOf(read),
      whole(general, writing),
      said.colourOf[lowest]!,
      whole(tested[lowest]!.index, writing),
    ),
    said.against(nameOfReference(reference, writing)),
    said.all(words.figures.listed(all)),
    said.pairs,
  ];
}
