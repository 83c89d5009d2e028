import { describe, expect, test } from 'vitest';
import { cellAt, cellAtSpot } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { setColumnQuantity, setQuantity } from '../../../src/book/make/properties.ts';
import type { Step } from '../../../src/book/types.ts';
import { stage } from './stage.ts';

const set = (s: ReturnType<typeof stage>, ...steps: Step[]) =>
  s.run({ ok: true, transaction: { label: 'x', steps } });

describe('what typing does', () => {
  test('what was typed is kept beside the number it means, with its setting', () => {
    const s = stage({ Walk: { A1: '250 fc' } });
    expect(cellAt(s.document, s.place('A1'))).toMatchObject({
      content: { kind: 'number', value: 250 / 0.3048 ** 2 },
      typed: '250 fc',
      under: { illuminance: 'lx', decimal: '.' },
      quantity: 'illuminance',
    });
    expect(s.text('A1')).toBe('250 fc');
  });

  test('250 typed under footcandles stays that after a switch, and entered unchanged is no edit', () => {
    const s = stage();
    s.type({ A1: '1' });
    s.run(setColumnQuantity(s.document, s.means, s.sheet('Walk'), [0], 'illuminance'));
    set(s, { kind: 'setSettings', settings: { illuminance: 'fc' } });
    s.type({ A1: '250' });
    const before = cellAt(s.document, s.place('A1'));
    set(s, { kind: 'setSettings', settings: { illuminance: 'lx' } });
    expect(s.type({ A1: '250' })).toBeNull();
    expect(cellAt(s.document, s.place('A1'))).toBe(before);
    expect(before?.content).toEqual({ kind: 'number', value: 250 / 0.3048 ** 2 });
    expect(s.book.history.done.at(-1)?.label).not.toBe('Enter A1');
  });

  test('an unreadable entry refuses the whole with its sentence; nothing is lost or changed', () => {
    const s = stage({ Walk: { A1: '4 m' } });
    s.run(setQuantity(s.document, s.means, [s.region('A1:A3')], 'length'));
    const made = enter(s.document, s.means, [
      { ...s.spot('A2'), text: '5' },
      { ...s.spot('A3'), text: '800 K' },
    ]);
    if (made.ok) throw new Error('read');
    expect(made.reason).toMatch(/800 K/);
    expect(made.unread).toMatchObject([{ row: 2, column: 0, text: '800 K' }]);
  });

  test('asked to keep going, the rest is entered and the unread are listed', () => {
    const s = stage();
    s.run(setColumnQuantity(s.document, s.means, s.sheet('Walk'), [0], 'length'));
    const made = enter(
      s.document,
      s.means,
      [
        { ...s.spot('A1'), text: '800 K' },
        { ...s.spot('A2'), text: '5' },
        { ...s.spot('B1'), text: '=(1' },
      ],
      { keepGoing: true },
    );
    s.run(made);
    if (!made.ok) throw new Error(made.reason);
    expect(made.unread.map(({ text }) => text)).toEqual(['800 K', '=(1']);
    expect(made.unread[1]).toMatchObject({ reason: 'A bracket is not closed.', at: 1 });
    expect([s.text('A1'), s.text('A2')]).toEqual(['', '5']);
  });

  test('a decimal comma counts where a pasted file has it', () => {
    const s = stage();
    const entry = { ...s.spot('A1'), text: '2,8', under: { decimal: ',' } } as const;
    s.run(enter(s.document, s.means, [entry]));
    expect(cellAt(s.document, s.place('A1'))).toMatchObject({
      content: { kind: 'number', value: 2.8 },
      under: { decimal: ',' },
    });
  });

  test('a hint helps and stops no one', () => {
    const s = stage();
    const made = enter(s.document, s.means, [{ ...s.spot('A1'), text: '1/50' }]);
    s.run(made);
    expect(made).toMatchObject({ ok: true, hints: [{ row: 0, column: 0 }] });
    expect(cellAt(s.document, s.place('A1'))?.content).toEqual({ kind: 'text', text: '1/50' });
  });

  test('emptied, a cell keeps what it says about itself; one that says nothing is gone', () => {
    const s = stage({ Walk: { A1: '1', A2: '2' } });
    s.run(setQuantity(s.document, s.means, [s.region('A1')], 'stops'));
    s.type({ A1: '', A2: '' });
    expect(cellAtSpot(s.document, s.spot('A1'))).toEqual({
      content: { kind: 'blank' },
      quantity: 'stops',
    });
    expect(cellAtSpot(s.document, s.spot('A2'))).toBeUndefined();
  });

  test('nothing is entered beyond the last row, and emptying what is empty brings no row into use', () => {
    const s = stage();
    const beyond = { ...s.spot('A1'), row: 100_000, text: '1' };
    expect(enter(s.document, s.means, [beyond])).toMatchObject({
      reason: 'A sheet ends at row 100000 and column ALL.',
    });
    expect(s.type({ Z99: '' })).toBeNull();
    expect(s.document.sheets[0]?.rows.length).toBe(0);
  });

  test('a quantity reads again what was typed, and says which cell it cannot read', () => {
    const s = stage({ Walk: { A1: '1/50', A2: '3200 K' } });
    expect(setQuantity(s.document, s.means, [s.region('A1:A2')], 'time')).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/^A2: /) as unknown,
    });
    s.run(setQuantity(s.document, s.means, [s.region('A1')], 'time'));
    expect(cellAt(s.document, s.place('A1'))).toMatchObject({
      content: { kind: 'number', value: 0.02 },
      typed: '1/50',
    });
  });
});
