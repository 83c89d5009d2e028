import type { QuantityName } from '../../../functions/quantities/names.ts';
import { words } from '../../words/words.ts';
import type { HandOver } from './handover.ts';

type Told = Omit<HandOver, 'missing'>;

const settings = ['iso', 'time', 'fNumber', 'colourTemperature'] as const satisfies QuantityName[];

/** What a crew would have to ask for, in words; of a part of a set-up its readings alone. */
export function missingOf(
  { camera, points, ratios, rig, set, colour }: Told,
  isPart = false,
): readonly string[] {
  const { lacks } = words.print;
  const named = (lost: readonly { label: string }[], say: (names: string) => string) =>
    lost.length > 0 ? [say(lost.map(({ label }) => label).join(', '))] : [];
  const has = (quantity: QuantityName) => camera.some((pair) => pair.quantity === quantity);
  const says = (caption: string) => rig.captions.includes(caption);
  const { fixture, diffusion } = words.print.rigCaptions;
  const unread = named(
    points.filter(
      ({ reading, verdicts }) => reading === '' && verdicts.every(({ shape }) => shape === 'waits'),
    ),
    lacks.readings,
  );
  if (isPart) return unread;
  return [
    ...settings.filter((quantity) => !has(quantity)).map((quantity) => lacks[quantity]),
    ...unread,
    ...(ratios.length > 0 ? [] : [lacks.ratios]),
    ...(rig.rows.length + set.rows.length > 0 ? [] : [lacks.rig]),
    ...(set.rows.length > 0 || (says(fixture) && says(diffusion)) ? [] : [lacks.diffusion]),
    ...(colour.rows.some(([, reading]) => reading !== '') ? [] : [lacks.colour]),
  ];
}
