import type { QuantityName } from '../../functions/quantities/names.ts';
import { isError } from '../../functions/values.ts';
import { addressAt, layoutOf, type Spot } from '../book/look.ts';
import type { Cell, Content, Document, Means } from '../book/types.ts';
import type { CellValue } from '../engine/types.ts';
import { formulaFrom } from '../formula/bind.ts';
import { typedFor } from './written.ts';

export const text = (said: string): Cell => ({
  content: { kind: 'text', text: said },
  typed: said,
});

/** `=’Sail loft’!B3`: the cell as it stands, live. */
export function referring(document: Document, spot: Spot): Cell {
  const name = document.sheet(spot.sheet)?.properties.name ?? '';
  const written = `='${name.replaceAll("'", "''")}'!${addressAt(spot)}`;
  const formula = formulaFrom(written, spot.sheet, layoutOf(document));
  return 'reason' in formula ? text(formula.reason) : { content: { kind: 'formula', formula } };
}

/** What a case came to, as content: a wait leaves the cell empty, a fault says what it is. */
export function contentOf(value: CellValue): Content {
  if (typeof value === 'number') return { kind: 'number', value };
  if (typeof value === 'string') return { kind: 'text', text: value };
  if (typeof value === 'boolean') return { kind: 'truth', value };
  return isError(value) && !value.waiting ? { kind: 'text', text: value.code } : { kind: 'blank' };
}

/** Content with the text that is shown when the cell is opened. */
export function writer({ settings }: Document, means: Pick<Means, 'readEntry'>) {
  return (
    content: Content,
    { quantity }: { readonly quantity: QuantityName | undefined },
  ): Cell => {
    const said = quantity !== undefined && content.kind === 'number' ? { quantity } : {};
    if (content.kind === 'text') return { content, typed: content.text };
    if (content.kind === 'truth') return { content, typed: content.value ? 'TRUE' : 'FALSE' };
    if (content.kind !== 'number') return { content };
    return { content, typed: typedFor(content.value, { quantity, means, settings }), ...said };
  };
}
