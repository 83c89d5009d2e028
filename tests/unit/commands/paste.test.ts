import { describe, expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { cellAtSpot, formulaText } from '../../../src/book/look.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { paste } from '../../../src/commands/clipboard.ts';
import { connectEngine, isFunction } from '../../../src/engine/index.ts';
import { createSession } from '../../../src/session/session.ts';
import { countingMeans } from '../engine/support/openBook.ts';

/** Pastes a text of another program at A1 of a blank book, with what that program showed. */
function pasteInto(text: string, values: readonly (readonly string[])[] = []) {
  const means = { ...countingMeans(), isFunction };
  const book = createBook(newDocument(means));
  const sheet = book.document.sheets[0]?.id ?? '';
  const session = createSession(sheet);
  const engine = connectEngine(book);
  const outcome = paste({ book, engine, session, means }, text, 'all', values);
  const cell = (row: number, column: number) => {
    const content = cellAtSpot(book.document, { sheet, row, column })?.content;
    if (content?.kind === 'formula') return formulaText(book.document, content.formula, sheet);
    if (content?.kind === 'number') return content.value;
    return content?.kind === 'text' ? content.text : null;
  };
  const said = outcome.ok ? (outcome.say ?? '') : outcome.reason;
  return {
    cell,
    said,
    value: (row: number, column: number) => engine.valueOf({ sheet, row, column }),
  };
}

describe('a pasted formula', () => {
  it('that can be worked out here stays one, whatever the other program showed', () => {
    const { cell, said, value } = pasteInto('2\t=A1*3', [['2', '7']]);
    expect(cell(0, 1)).toBe('=A1*3');
    expect(value(0, 1)).toBe(6);
    expect(said).toBe('');
  });

  it('with a function that is not here is its value, and the notice names both', () => {
    const { cell, said } = pasteInto('2\t=NOWHERE(A1)\t=A1+1', [['2', '4.5', '3']]);
    expect(cell(0, 1)).toBe(4.5);
    expect(cell(0, 2)).toBe('=A1+1');
    expect(said).toContain('1 formula cannot be worked out here, so the value');
    expect(said).toContain('B1: There is no function NOWHERE here.');
  });

  it('is found inside others, and counted', () => {
    const { cell, said } = pasteInto('=1+SUM(NOWHERE(2))\n=NOWHERE(3)', [['3'], ['85 lx']]);
    expect(cell(0, 0)).toBe(3);
    expect(cell(1, 0)).toBe(85);
    expect(said).toMatch(/^2 formulas cannot be worked out here/);
  });

  it('that points at a sheet of another book, or cannot be read, is its value', () => {
    const text = "='Other sheet'!A1\t=SUM(1;2";
    const { cell, said } = pasteInto(text, [['12', '3']]);
    expect([cell(0, 0), cell(0, 1)]).toEqual([12, 3]);
    expect(said).toContain('There is no sheet “Other sheet”.');
  });

  it('without a value beside it stays as it was written, and is named', () => {
    const { cell, said } = pasteInto('=NOWHERE(1)\t2');
    expect(cell(0, 0)).toBe('=NOWHERE(1)');
    expect(said).toContain('came without a value. A1: There is no function NOWHERE here.');
  });

  it('shown as a formula by the other program has no value either', () => {
    const { said } = pasteInto('=NOWHERE(1)\t2', [['=NOWHERE(1)', '2']]);
    expect(said).toContain('came without a value');
  });
});
