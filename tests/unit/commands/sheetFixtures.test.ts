import { expect, it } from 'vitest';
import { fixturesOf } from '../../../src/book/fixtures.ts';
import { addFixtures } from '../../../src/book/make/fixtures.ts';
import { emptySheet } from '../../../src/book/newdocument.ts';
import { add } from '../../../src/commands/sheets.ts';
import { createSession } from '../../../src/session/session.ts';
import { openBook } from '../engine/support/openBook.ts';

const key = { name: 'Key', kind: 'spot', candela: 900, beam: 20 } as const;
const other = { ...key, candela: 100, name: ' key' } as const;
const fill = { name: 'Fill', kind: 'panel', width: 1, height: 0.5, luminance: 4000 } as const;

it('a sheet brings the fixtures that the book lacks, in one gesture, and leaves its own as they are', async () => {
  const { document, means, must, book, engine } = openBook({ Rig: [[]] });
  must(addFixtures(document, means, [key]));
  const session = createSession(document.sheets[0]?.id ?? '');
  const content = emptySheet('plan', { name: 'Set plan' });
  const fixtures = [
    { ...other, id: 'a' },
    { ...fill, id: 'b' },
  ];
  const outcome = await add.run({ book, engine, session, means }, { content, fixtures });
  expect(outcome.ok).toBe(true);
  const kept = () => fixturesOf(document).map(({ name }) => name);
  expect(kept()).toEqual(['Fill', 'Key']);
  expect(fixturesOf(document)[1]).toMatchObject({ candela: 900 });
  expect(document.sheets.map(({ properties }) => properties.name)).toEqual(['Rig', 'Set plan']);
  book.undo();
  expect(kept()).toEqual(['Key']);
  expect(document.sheets).toHaveLength(1);
});
