import { describe, expect, test } from 'vitest';
import { replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { become } from '../../../src/book/make/become.ts';
import { playRandomMove } from '../../fuzz/book/moves.ts';
import { Pair } from '../../fuzz/book/pair.ts';
import { Random } from '../../fuzz/book/random.ts';
import { runs } from '../../support/runs.ts';
import { stage } from './stage.ts';

const first = Number(process.env['SEED'] ?? 3_310);
const seeds = Array.from({ length: runs(12) }, (_, i) => first + i);

function opened(text: string) {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  return read.document;
}

describe('a book becomes an earlier or later state of itself in one gesture', () => {
  test.each(seeds)('seed %i: the same file, undone the same file, and from the journal', (seed) => {
    const pair = new Pair();
    const random = new Random(seed);
    const start = writeBook(pair.document);
    const texts = [start];
    for (let move = 0; move < 400; move++) {
      playRandomMove(pair, random);
      if (random.chance(0.02)) texts.push(writeBook(pair.document));
    }
    for (const text of random.shuffled(texts)) {
      const before = writeBook(pair.document);
      const made = become(pair.document, opened(text), 'Restore');
      if (!made.ok) expect.fail(made.reason);
      const done = pair.book.run(made.transaction);
      if (!done.ok) expect.fail(done.reason);
      expect(writeBook(pair.document)).toBe(text);
      if (done.change && random.chance(0.5)) {
        pair.book.undo();
        expect(writeBook(pair.document), 'undone').toBe(before);
        pair.book.redo();
        expect(writeBook(pair.document), 'redone').toBe(text);
      }
    }
    const again = replay(opened(start), pair.journal);
    if (!again.ok) expect.fail(again.reason);
    expect(writeBook(again.book.document)).toBe(writeBook(pair.document));
  });

  test('the same state asks for nothing', () => {
    const { document } = stage({ Loft: { A1: 'Key side', B1: '=A1' }, Shed: { A1: '2 m' } });
    const made = become(document, opened(writeBook(document)), 'Restore');
    expect(made).toMatchObject({ transaction: { steps: [] } });
  });

  test('one changed reading is one changed cell', () => {
    const scene = stage({ Loft: { A1: 'Key side', B1: 'f/2', B2: '=B1' } });
    const text = writeBook(scene.document);
    scene.type({ 'Loft!B1': 'f/2.8' });
    const made = become(scene.document, opened(text), 'Restore');
    expect(made).toMatchObject({
      transaction: { steps: [{ kind: 'setCells', cells: [{ cell: { typed: 'f/2' } }] }] },
    });
  });

  test('sheets that changed their names among them get them back', () => {
    const scene = stage({ Loft: { A1: '1' }, Shed: { A1: '=Loft!A1' } });
    const text = writeBook(scene.document);
    const [loft, shed] = scene.document.sheets;
    scene.book.run({
      label: 'Swap',
      steps: [
        { kind: 'setSheet', sheet: loft?.id ?? '', properties: { name: 'Ice house' } },
        { kind: 'setSheet', sheet: shed?.id ?? '', properties: { name: 'Loft' } },
        { kind: 'setSheet', sheet: loft?.id ?? '', properties: { name: 'Shed' } },
      ],
    });
    scene.run(become(scene.document, opened(text), 'Restore'));
    expect(writeBook(scene.document)).toBe(text);
    expect(scene.text('Shed!A1')).toBe('=Loft!A1');
  });
});
