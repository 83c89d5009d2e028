import { verdictOf } from '../../check/verdicts.ts';
import { formulaText } from '../../book/look.ts';
import type { Cell } from '../../book/types.ts';
import type { CellPlace } from '../../engine/types.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { stopsInWords } from '../../../functions/stops/verdictWords.ts';
import type { Fact } from '../shown.ts';
import type { Look } from './look.ts';
import { shapeOf } from './points.ts';
import { say } from './show.ts';
import { words } from '../../words/words.ts';

/** What the cell should come to, and how far it is from that. */
export function targetFacts(
  look: Look,
  at: CellPlace,
  cell: Cell | undefined,
  quantity: QuantityName | undefined,
): readonly Fact[] {
  const { document, engine, writing } = look;
  const target = cell?.target;
  if (target === undefined) return [];
  const wanted =
    typeof target === 'number'
      ? { value: target, quantity }
      : engine.evaluate(formulaText(document, target, at.sheet), at.sheet);
  const { off, tolerance, words: said = '' } = verdictOf(document, engine, at) ?? {};
  const within =
    off?.scale === 'stops' && tolerance !== undefined ? ` ± ${stopsInWords(tolerance)}` : '';
  const shape = shapeOf(said);
  return [
    {
      label: words.slip.wanted,
      text: say(wanted.value, wanted.quantity ?? quantity, writing) + within,
    },
    ...(off ? [{ label: words.slip.offBy, text: said, ...(shape && { shape }) }] : []),
  ];
}
