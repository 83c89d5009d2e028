import type { AnyDefinition } from '../../../functions/define.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';

/** The incident constant of the receptor that is named; texts compare without regard to case. */
const constant = 'IF(TRIM(meter)="FLAT", flat_constant, dome_constant)';

/**
 * Functions whose equation depends on what a reading measures have one for each kind of reading.
 * A cell that is written out knows its kind.
 */
const equations: Readonly<Record<string, Partial<Record<QuantityName, string>>>> = {
  READINGLUX: {
    fNumber: `${constant} * reading^2 / (iso * time)`,
    illuminance: 'reading',
    ev: `${constant} * 2^reading / 100`,
  },
  READINGF: {
    fNumber: 'reading',
    illuminance: `SQRT(reading * iso * time / ${constant})`,
    luminance: 'SQRT(reading * iso * time / spot_constant)',
    ev: 'SQRT(2^reading * time * iso / 100)',
  },
  EXPOSURETIME: { angle: 'shutter / 360 / fps', time: 'shutter' },
};

/** The function as it works on a reading of this kind; a plain number is the first of its kinds. */
export function forKind(definition: AnyDefinition, kind: QuantityName | undefined): AnyDefinition {
  const [first, ...others] = definition.parameters;
  if (!first?.kinds) return definition;
  const { kinds, domain: _domain, ...rest } = first;
  const quantity = kind ?? kinds[0];
  const formula = equations[definition.name]?.[quantity];
  if (formula === undefined) return definition;
  return { ...definition, parameters: [{ ...rest, quantity }, ...others], formula };
}
