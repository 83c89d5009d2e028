import { addLight, type Field } from '../../../../functions/fixture/field.ts';
import type { Fixture } from '../../../../functions/fixture/fixture.ts';
import type { Placed } from '../../../../functions/fixture/rig.ts';

/** What each light gave over the picture that was drawn last. */
let last: ReadonlyMap<string, Float64Array> = new Map();

/**
 * Lux of all lights over a grid of points, light by light: while one is moved, the others give what
 * they gave in the picture before.
 */
export function luxSpread(lights: readonly Placed[], field: Field): Float64Array {
  const ground = JSON.stringify(field);
  const now = new Map<string, Float64Array>();
  const sum = new Float64Array(field.columns * field.rows);
  for (const light of lights) {
    const key = `${ground} ${saidOf(light)}`;
    const own = now.get(key) ?? last.get(key) ?? ownOf(light, field);
    now.set(key, own);
    for (let index = 0; index < sum.length; index += 1) sum[index]! += own[index]!;
  }
  last = now;
  return sum;
}

function ownOf(light: Placed, field: Field): Float64Array {
  const lux = new Float64Array(field.columns * field.rows);
  addLight(light, field, lux);
  return lux;
}

/** Everything that a light’s share of a picture depends on. */
function saidOf({ fixture, at, forward, right, up, share }: Placed): string {
  const body =
    fixture.kind === 'panel'
      ? [fixture.width, fixture.height, fixture.luminance]
      : [numberOf(fixture)];
  return [...body, fixture.kind, ...at, ...forward, ...right, ...up, share].join(' ');
}

/** A fixture that changes is another: it is known by itself. */
const numbers = new WeakMap<Fixture, number>();
let count = 0;

function numberOf(fixture: Fixture): number {
  const number = numbers.get(fixture) ?? (count += 1);
  numbers.set(fixture, number);
  return number;
}
