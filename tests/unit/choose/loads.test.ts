import { describe, expect, it } from 'vitest';
import { packLoads } from '../../../src/choose/pick/loads.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { readAddress } from '../../../src/book/look.ts';
import { planMeans, run } from '../../../templates/build.ts';
import { build } from '../../../templates/power/plan.ts';
import { build as other } from '../../../templates/hire/plan.ts';

function open(book = build()) {
  const engine = connectEngine(book);
  const sheet = book.document.sheets[0]?.id ?? '';
  const at = (address: string) => ({ sheet, ...(readAddress(address) ?? { row: -1, column: -1 }) });
  let minted = 0;
  const means = { ...planMeans(), newId: () => `n${minted++}` };
  return {
    type(address: string, text: string) {
      run(book, enter(book.document, means, [{ ...at(address), text }]));
    },
    valueOf: (address: string) => engine.valueOf(at(address)),
    hang: () => packLoads({ document: book.document, engine, sheet }, means),
    book,
  };
}

describe('the loads of a sheet of power on its circuits', () => {
  it('none is split, none goes over, and one undo takes it back', () => {
    const { type, hang, valueOf, book } = open();
    // Everything on the bench: 18 A of a breaker of 10 A.
    for (const row of [13, 14, 15, 16, 17]) type(`B${row}`, 'bench');
    expect(String(valueOf('B7'))).toMatch(/^over by/);
    run(book, hang());
    for (const row of [5, 6, 7]) expect(Number(valueOf(`J${row}`))).toBeGreaterThanOrEqual(0);
    const names = [13, 14, 15, 16, 17].map((row) => valueOf(`B${row}`));
    expect(names.every((name) => ['blue', 'red', 'bench'].includes(String(name)))).toBe(true);
    book.undo();
    expect(valueOf('B15')).toBe('bench');
  });

  it('says how much is to be hung and how much is free where there is no way', () => {
    const { type, hang } = open();
    type('D15', '9');
    expect(hang()).toEqual({
      ok: false,
      reason:
        'The circuits do not carry it: 36.6 A are to be hung, 30.6 A are free. Take less, or give fixtures that may hang apart a row each.',
    });
  });

  it('a load without a power factor is asked for it', () => {
    const { type, hang } = open();
    type('F13', '');
    const made = hang();
    expect(made.ok || made.reason).toMatch(/F13/);
  });

  it('another sheet has none', () => {
    expect(open(other()).hang()).toMatchObject({ ok: false });
  });
});
