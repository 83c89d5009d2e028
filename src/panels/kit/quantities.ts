import type { ParameterKind } from '../../../functions/define.ts';
import { units } from '../../../functions/quantities/units.ts';
import { words } from '../../words/words.ts';

const openings = {
  level: words.kinds.level,
  measured: words.kinds.measured,
  receptor: words.kinds.receptor,
  anything: words.kinds.anything,
  table: words.kinds.table,
} as const;

type Opening = keyof typeof openings;
const isOpening = (kind: ParameterKind): kind is Opening => kind in openings;

/** What a parameter or a result measures, in words and with its base unit. */
export function measure(kind: ParameterKind): string {
  if (isOpening(kind)) return openings[kind];
  const { words: name, base } = units[kind];
  return base === '' || name.includes(base) ? name : words.kinds.inUnit(name, base);
}
