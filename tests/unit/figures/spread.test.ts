import { expect, test } from 'vitest';
import { luxOver, type Field } from '../../../functions/fixture/field.ts';
import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import { place, type Placed } from '../../../functions/fixture/rig.ts';
import { luxSpread } from '../../../src/figures/kinds/set/spread.ts';

const light = (name: string, x: number, output = 1): Placed => {
  const fixture = exampleFixtures.named(name);
  if (typeof fixture !== 'object') throw new Error(name);
  const placed = place({ fixture, at: [x, 0, 3], aim: [1, 2, 1], output, loss: 0, roll: 0 });
  if (!placed) throw new Error(name);
  return placed;
};
const field: Field = {
  ...{ from: [-2, -2, 1], along: [0.5, 0, 0], down: [0, 0.5, 0], columns: 9, rows: 7 },
  ...{ facing: [0, 0, 1], receptor: 'dome' },
};

test('light by light it comes to what all give at once, whichever was moved or dimmed since', () => {
  const turns: readonly (readonly [readonly Placed[], Field])[] = [
    [[light('Spot', 0), light('Panel', 2), light('Bulb', -1)], field],
    [[light('Spot', 0.5), light('Panel', 2), light('Bulb', -1)], field],
    [[light('Spot', 0.5), light('Panel', 2, 0.5), light('Bulb', -1)], field],
    [[light('Bulb', 0.5), light('Bulb', 0.5), light('Panel', 2, 0.5)], field],
    [[light('Bulb', 0.5), light('Panel', 2)], { ...field, facing: [0, 1, 0] }],
  ];
  for (const [lights, over] of turns)
    expect([...luxSpread(lights, over)]).toEqual([...luxOver(lights, over)]);
});
