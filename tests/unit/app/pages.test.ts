import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pagesOf, piecesOf, type Piece, type Row } from '../../../src/app/pages.ts';

/** Rows of 10, written by what they are: h headings, s says something, b blank. */
const rows = (text: string): readonly Row[] =>
  [...text].map((sign): Row => {
    const kind = sign === 'h' ? 'heads' : sign === 'b' ? 'blank' : 'says';
    return { height: 10, kind };
  });

/** First rows of pages that are so high, with letters of columns of 5 at the head of each. */
const begins = (text: string, height: number): readonly number[] =>
  pagesOf(piecesOf(rows(text), 5, height), height);

describe('where pages begin', () => {
  it('is where the next row would reach over the page', () => {
    expect(begins('ssssssssss', 55)).toEqual([0, 5]);
  });

  it('is not between a heading and its first two rows', () => {
    expect(begins('sssssbhsssssss', 85)).toEqual([0, 6]);
  });

  it('leaves room for the headings that are said again', () => {
    // Heading and nine rows, then the heading again and the rest: 5 + 10 + 80 is the second page.
    expect(begins('hsssssssssssssssss', 105)).toEqual([0, 10]);
    expect(piecesOf(rows('hsss'), 5, 10)[3]).toMatchObject({ again: 15, heads: [0] });
  });

  it('leaves no last row of a table alone', () => {
    expect(begins('ssssss', 55)).toEqual([0, 4]);
  });

  it('does not part a table of up to a third of the page', () => {
    expect(begins('ssssssssbhss', 105)).toEqual([0, 9]);
  });

  it('begins no page with a blank row, and needs no page for one', () => {
    expect(begins('sssssbssss', 55)).toEqual([0, 6]);
    expect(begins('sssssb', 55)).toEqual([0]);
  });

  it('begins a table with each heading under rows without one', () => {
    expect(piecesOf(rows('hsshss'), 5, 10).map(({ heads }) => heads)).toEqual([
      [],
      [0],
      [0],
      [],
      [3],
      [3],
    ]);
  });

  it('makes no page higher than paper and leaves none empty', () => {
    const piece = fc.record({
      height: fc.integer({ min: 0, max: 60 }),
      again: fc.integer({ min: 0, max: 10 }),
    });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 60 }), (pieces: readonly Piece[]) => {
        const starts = pagesOf(pieces, 100);
        expect(starts[0]).toBe(0);
        starts.forEach((start, index) => {
          const end = starts[index + 1] ?? pieces.length;
          expect(end).toBeGreaterThan(start);
          const [first, ...others] = pieces.slice(start, end);
          const used = others.reduce((sum, { height }) => sum + height, first?.height ?? 0);
          expect(used + (first?.again ?? 0)).toBeLessThanOrEqual(100);
        });
      }),
    );
  });
});
