import { describe, expect, it } from 'vitest';
import { openBook } from './support/openBook.ts';

function messageAt(opened: ReturnType<typeof openBook>, address: string, sheet?: string): string {
  const value = opened.value(address, sheet);
  if (typeof value === 'object' && value !== null) return `${value.code} ${value.message}`;
  throw new Error(`${address} has the value ${String(value)}`);
}

describe('a reading that is missing', () => {
  it('makes a function wait, and names argument and cell', () => {
    const { value } = openBook({ Walk: [['400', '', '=STOPS(A1,B1)']] });
    expect(value('C1')).toEqual({
      code: '#N/A',
      message: 'waiting for reference (B1)',
      waiting: true,
    });
  });

  it('passes through arithmetic, IF and cells behind, still waiting', () => {
    const { value } = openBook({
      Walk: [['400', '', '=STOPS(A1,B1)', '=C1+1', '=IF(C1>0,1,2)', '=-D1%', '=SUM(A1:D1)']],
    });
    for (const address of ['D1', 'E1', 'F1', 'G1'])
      expect(value(address)).toMatchObject({
        waiting: true,
        message: 'waiting for reference (B1)',
      });
  });

  it('is told from 0 and from an argument left out', () => {
    const opened = openBook({
      Walk: [
        ['100', '', '0'],
        ['=EVLUX(10,)', '=EVLUX(10,B1)', '=STOPS(A1,)', '=STOPS(A1,C1)'],
      ],
    });
    // E = 2^EV · C / 100 with the flat receptor's C of 250 (ISO 2720) left out.
    expect(opened.value('A2')).toBe(2 ** 10 * 2.5);
    expect(opened.value('B2')).toMatchObject({ waiting: true });
    expect(messageAt(opened, 'C2')).toBe('#VALUE! STOPS needs reference.');
    expect(opened.value('D2')).toEqual({
      code: '#NUM!',
      message: 'no light at reference',
      quiet: true,
    });
  });

  it('is still missing in a cell that only repeats it', () => {
    const { value } = openBook({ Walk: [['400', '', '=B1', '=STOPS(A1,C1)']] });
    expect(value('C1')).toBeNull();
    expect(value('D1')).toMatchObject({ waiting: true, message: 'waiting for reference (C1)' });
  });

  it('keeps its right address when rows move and the sheet gets another name', () => {
    const opened = openBook({
      Walk: [['note'], ['400', '', '=STOPS(A2,B2)']],
      Door: [['=STOPS(Walk!A2,Walk!B2)']],
    });
    opened.must({
      ok: true,
      transaction: {
        label: 'Delete 1 row',
        steps: [
          {
            kind: 'removeLines',
            sheet: opened.idOf('Walk'),
            axis: 'rows',
            ids: [opened.document.sheetNamed('Walk')?.rows.idAt(0) ?? ''],
          },
          { kind: 'setSheet', sheet: opened.idOf('Walk'), properties: { name: 'Ice house' } },
        ],
      },
    });
    expect(messageAt(opened, 'C1', 'Ice house')).toBe('#N/A waiting for reference (B1)');
    expect(messageAt(opened, 'A1', 'Door')).toBe("#N/A waiting for reference ('Ice house'!B1)");
  });

  it('can be caught like any error', () => {
    const { value } = openBook({ Walk: [['400', '', '=IFERROR(STOPS(A1,B1),"later")']] });
    expect(value('C1')).toBe('later');
  });
});

describe('an error', () => {
  it('in an argument comes out unchanged', () => {
    const opened = openBook({ Walk: [['=STOPS(-1,2)', '=STOPS(A1,2)', '=ROUND(B1,1)']] });
    const said = '#NUM! STOPS: level must be more than zero, not -1.';
    for (const address of ['A1', 'B1', 'C1']) expect(messageAt(opened, address)).toBe(said);
  });

  it('that is firm is shown before one that waits', () => {
    const opened = openBook({ Walk: [['', '=STOPS(A1,2)', '=STOPS(-1,2)', '=STOPS(B1,C1)']] });
    expect(messageAt(opened, 'D1')).toMatch(/^#NUM!/);
  });

  it.each([
    ['=1/A1', '#DIV/0! Divided by zero: A1 is empty.'],
    ['=1/B1', '#DIV/0! Divided by zero: B1 is 0.'],
    ['=C1*2', '#VALUE! C1 holds the text “Bench” where a number is wanted.'],
    ['=LGO(2)', '#NAME? There is no function LGO. The nearest is LOG.'],
    ['=STOP(2,1)', '#NAME? There is no function STOP. The nearest is STOPS.'],
    ['=Keey*2', '#NAME? No cell or value is named Keey. The nearest is Key.'],
    [
      '=B1:C1',
      '#VALUE! A cell holds one value: take one with INDEX, or join them with SUM, MAX and the like.',
    ],
    [
      '=SORT(B1:C1)',
      '#VALUE! A cell holds one value: take one with INDEX, or join them with SUM, MAX and the like.',
    ],
    ['=TODAY()', '#NAME? TODAY changes by itself and is not available here.'],
    ['=MATCH(7,B1:B1,0)', '#N/A Nothing found that matches.'],
    [
      '=SPREAD(C1:C2)',
      '#VALUE! SPREAD: levels has the text "Bench" in C1, where a number is wanted.',
    ],
    ['=STOPS("250 m",2)', expect.stringContaining('#VALUE! STOPS: level')],
    ['=STOPS(1,2,3)', expect.stringContaining('STOPS takes')],
    ['=10^400', '#NUM! The result is too large or has no value.'],
  ])('%s says what is wrong', (formula, said) => {
    const opened = openBook({ Walk: [['', '0', 'Bench']] });
    opened.must({
      ok: true,
      transaction: {
        label: 'Name Key',
        steps: [
          {
            kind: 'defineName',
            name: {
              id: 'key',
              name: 'Key',
              formula: {
                shape: { pieces: ['=4'], tree: { kind: 'number', value: 4 } },
                references: [],
              },
            },
          },
        ],
      },
    });
    opened.type('D1', formula);
    expect(messageAt(opened, 'D1')).toEqual(said);
  });

  it('of the engine’s own says in which cell it began', () => {
    const opened = openBook({ Walk: [['', '=1/A1', '=B1+1']], Door: [['=Walk!C1']] });
    expect(messageAt(opened, 'C1')).toBe('#DIV/0! Divided by zero: A1 is empty (in B1).');
    expect(messageAt(opened, 'A1', 'Door')).toBe(
      '#DIV/0! Divided by zero: Walk!A1 is empty (in Walk!B1).',
    );
  });

  it('of a formula that depends on itself names the round', () => {
    const opened = openBook({ Walk: [['=B1', '=C1+1', '=A1', '=A1+1']] });
    expect(messageAt(opened, 'A1')).toBe(
      '#CYCLE! The formula depends on itself: A1 → C1 → B1 → A1.',
    );
    expect(messageAt(opened, 'D1')).toContain('A1');
    opened.type('C1', '5');
    expect(['A1', 'B1', 'C1', 'D1'].map((address) => opened.value(address))).toEqual([6, 6, 5, 7]);
  });
});
