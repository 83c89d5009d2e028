import { describe, expect, it } from 'vitest';
import { addFixtures, removeFixture, renameFixture } from '../../../src/book/make/fixtures.ts';
import { fixturesOf } from '../../../src/book/fixtures.ts';
import { fixturesIn } from '../../../src/files/photometric/shelf.ts';
import { openBook } from './support/openBook.ts';

const spot = { name: 'Key', kind: 'spot', candela: 9000, beam: 20, size: 0.3 } as const;

function rigged(rows: readonly (readonly string[])[]) {
  const opened = openBook({ Rig: rows }, { fixtures: fixturesIn });
  const add = (fixture: Parameters<typeof addFixtures>[2][number]) =>
    opened.must(addFixtures(opened.document, opened.means, [fixture]));
  const idOf = (name: string) =>
    fixturesOf(opened.document).find((kept) => kept.name === name)?.id ?? '';
  return { ...opened, add, idOf };
}

describe('a change on the shelf', () => {
  it('works out what looks the fixture up, and what reads that', () => {
    const { value, add, book } = rigged([['=FIXTURELUX("key", 3)', '=A1*2', '=1+1']]);
    expect(value('A1')).toMatchObject({
      code: '#N/A',
      message: 'FIXTURELUX: the book has no fixture “key”; none is kept in it yet.',
    });
    add(spot);
    expect([value('A1'), value('B1')]).toEqual([1000, 2000]);
    book.undo();
    expect(value('B1')).toMatchObject({ code: '#N/A' });
    book.redo();
    expect(value('B1')).toBe(2000);
  });

  it('is heard of for the cells that changed and for no others', () => {
    const { add, engine, value } = rigged([['=FIXTURELUX("Key", 3)', '=A1*2', '=1+1']]);
    const heard: number[][] = [];
    engine.listen(({ cells }) => heard.push(cells.map(({ column }) => column)));
    add(spot);
    expect(heard.flat().toSorted()).toEqual([0, 1]);
    expect(value('C1')).toBe(2);
  });

  it('reaches a rig table, and names the fixtures that there are when one is gone', () => {
    const { value, add, must, document, idOf } = rigged([
      ['fixture', 'x', 'y', 'z', 'aim x', 'aim y', 'aim z', 'output', 'loss'],
      ['Key', '0', '3', '1', '0', '0', '1', '50 %', ''],
      ['', '', '', '', '', '', '', '', ''],
      ['=POINTLUX(A1:I3, 0, 0, 1, 0, 0)'],
    ]);
    add(spot);
    expect(value('A4')).toBeCloseTo(500, 9);
    must(renameFixture(document, idOf('Key'), 'Fresnel'));
    expect(value('A4')).toMatchObject({
      message: 'POINTLUX: the book has no fixture “Key”; it has Fresnel.',
    });
    must(renameFixture(document, idOf('Fresnel'), 'KEY'));
    expect(value('A4')).toBeCloseTo(500, 9);
    must(removeFixture(document, idOf('KEY')));
    expect(value('A4')).toMatchObject({ code: '#N/A' });
  });

  it('waits for a place that is not laid out yet, and says where', () => {
    const { value, add, type } = rigged([
      ['Key', '0', '', '1', '0', '0', '1'],
      ['=POINTLUX(A1:G1, 0, 0, 1, 0, 0)'],
    ]);
    add(spot);
    expect(value('A2')).toMatchObject({ waiting: true, message: 'waiting for y of “Key” (C1)' });
    type('C1', '3');
    expect(value('A2')).toBeCloseTo(1000, 9);
  });
});

describe('a fixture so near that its file does not hold', () => {
  it('is remarked on and not refused', () => {
    const {
      add,
      engine,
      spot: at,
      value,
    } = rigged([['=FIXTURELUX("Key", 1)', '=FIXTURELUX("Key", 2)']]);
    add(spot);
    expect(value('A1')).toBe(9000);
    expect(engine.explain(at('A1')).remarks).toEqual([
      'FIXTURELUX: nearer than 1.5 m, five times its face, “Key” gives less than its file says.',
    ]);
    expect(engine.explain(at('B1')).remarks).toEqual([]);
  });
});
