import { createBook } from '../book/book.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { addressAt } from '../book/look.ts';
import type { Document } from '../book/types.ts';
import { checkBook, remarkLine } from '../check/book.ts';
import type { Remark } from '../check/remark.ts';
import { connectEngine } from '../engine/index.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { openFile, type OpenFile } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Subcommand } from './types.ts';

export const check: Subcommand = {
  name: 'check',
  usage: words.commandLine.check.usage,
  summary: words.commandLine.check.summary,
  options: {},
  flags: ['json', 'notes'],
  async run({ options, rest }, io) {
    const [path, more] = rest;
    if (path === undefined) throw new Unusable(words.commandLine.noFile);
    if (more !== undefined) throw new Unusable(words.commandLine.oneFile);
    const file = await openFile(path, io);
    const { document } = file;
    const engine = connectEngine(createBook(document), {
      fixtures: fixturesIn,
      spectra: spectraIn,
    });
    const remarks = [...unread(file), ...checkBook(document, engine)];
    const isMark = ({ about }: Remark) => about === 'unit';
    const write = options['json'] === undefined ? remarkLine : jsonLine;
    for (const remark of remarks)
      if (options['notes'] !== undefined || isMark(remark)) io.out(`${write(document, remark)}\n`);
    return remarks.some(isMark) ? 1 : 0;
  },
};

/** Cells of a table that could not be read as what they say they are. */
function unread({ unread: cells }: OpenFile): readonly Remark[] {
  return cells.map(({ sheet, row, column, reason }) => ({
    place: { sheet, row, column },
    about: 'unit',
    sentence: reason,
  }));
}

function jsonLine(document: Document, { place, sentence, about }: Remark): string {
  const sheet = document.sheet(place.sheet)?.properties.name ?? '';
  return JSON.stringify({ sheet, cell: addressAt(place), about, sentence });
}
