import type { ParameterKind } from '../../../functions/define.ts';
import { units } from '../../../functions/quantities/units.ts';

const openings = {
  level: 'any light level',
  measured: 'a reading with its unit',
  receptor: 'dome, flat or a constant',
  anything: 'anything',
  table: 'a table',
} as const;

type Opening = keyof typeof openings;
const isOpening = (kind: ParameterKind): kind is Opening => kind in openings;

/** What a parameter or a result measures, in words and with its base unit. */
export function measure(kind: ParameterKind): string {
  if (isOpening(kind)) return openings[kind];
  const { words, base } = units[kind];
  return base === '' || words.includes(base) ? words : `${words} in ${base}`;
}
