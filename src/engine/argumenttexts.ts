import { layoutOf } from '../book/look.ts';
import type { Document, Formula } from '../book/types.ts';
import type { Call, Id } from '../formula/types.ts';
import { lostText, writeReference } from '../formula/write.ts';
import { piecesForPeople } from './text.ts';

/** The arguments of a call in a formula as people read them, seen from its sheet. */
export function argumentTexts(
  document: Document,
  call: Call,
  { references }: Formula,
  own: Id,
): readonly string[] {
  const layout = layoutOf(document);
  return call.arguments.map((argument) =>
    (argument ? piecesForPeople(argument) : [])
      .map((piece) => {
        if (typeof piece === 'string') return piece;
        const reference = references[piece];
        return reference ? writeReference(reference, own, layout) : lostText;
      })
      .join(''),
  );
}
