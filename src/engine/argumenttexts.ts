import { layoutOf } from '../book/look.ts';
import type { Document, Formula } from '../book/types.ts';
import type { Call, Id, Node } from '../formula/types.ts';
import { lostText, writeReference } from '../formula/write.ts';
import { piecesForPeople } from './text.ts';

/** A part of a formula as people read it, seen from its sheet. */
export function partText(document: Document, part: Node, { references }: Formula, own: Id): string {
  const layout = layoutOf(document);
  return piecesForPeople(part)
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const reference = references[piece];
      return reference ? writeReference(reference, own, layout) : lostText;
    })
    .join('');
}

/** The arguments of a call in a formula as people read them. */
export function argumentTexts(
  document: Document,
  call: Call,
  formula: Formula,
  own: Id,
): readonly string[] {
  return call.arguments.map((argument) =>
    argument ? partText(document, argument, formula, own) : '',
  );
}
