import { createBook } from '../book/book.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { readBook } from '../book/form/read.ts';
import { writeBook } from '../book/form/write.ts';
import type { Document } from '../book/types.ts';
import { connectEngine, isFunction, valuesFor } from '../engine/index.ts';
import { newBookFrom } from '../files/in/newBook.ts';
import { readForeign } from '../files/in/read.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { filesOf, outForms } from '../files/out/forms.ts';
import { contentOf, countingMeans } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io, type Subcommand } from './types.ts';

const endings = ['json', ...outForms] as const;
type Ending = (typeof endings)[number];

export const convert: Subcommand = {
  name: 'convert',
  usage: words.commandLine.convert.usage,
  summary: words.commandLine.convert.summary,
  options: { decimal: words.commandLine.pointOrComma },
  flags: ['values'],
  async run({ options, rest }, io) {
    const [from, to, more] = rest;
    if (from === undefined || to === undefined) throw new Unusable(words.commandLine.twoFiles);
    if (more !== undefined) throw new Unusable(words.commandLine.notMore);
    const decimal = options['decimal'];
    if (decimal !== undefined && decimal !== '.' && decimal !== ',')
      throw new Unusable(
        words.commandLine.wantsNot('decimal', words.commandLine.pointOrComma, decimal),
      );
    const form = endingOf(to);
    const { document, leftOut } = await opened(from, decimal, io);
    for (const sentence of leftOut) io.err(`${sentence}\n`);
    if (form === 'json') await io.writeFile(to, writeBook(document));
    else {
      const engine = connectEngine(createBook(document), {
        fixtures: fixturesIn,
        spectra: spectraIn,
      });
      const formulas = options['values'] === undefined ? 'live' : 'values';
      const files = await filesOf(document, valuesFor(document, engine), form, { formulas });
      for (const { sheet, content } of files) await io.writeFile(pathOf(to, sheet), content);
    }
    return leftOut.length > 0 ? 1 : 0;
  },
};

function endingOf(path: string): Ending {
  const ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase();
  const found = endings.find((one) => one === ending);
  if (found) return found;
  throw new Unusable(words.commandLine.ending(path, endings.map((one) => `.${one}`).join(', ')));
}

async function opened(
  path: string,
  decimal: '.' | ',' | undefined,
  io: Io,
): Promise<{ document: Document; leftOut: readonly string[] }> {
  const ending = endingOf(path);
  const content = await contentOf(path, io);
  if (ending === 'json') {
    const read = readBook(new TextDecoder().decode(content));
    if (!read.ok) throw new Unusable(`${path}: ${read.reason}`);
    return { document: read.document, leftOut: [] };
  }
  const read = readForeign(content, path, { isFunction, ...(decimal && { decimal }) });
  if (!read.ok) throw new Unusable(`${path}: ${read.reason}`);
  const made = newBookFrom(read.imported, countingMeans());
  if (!made.ok) throw new Unusable(`${path}: ${made.reason}`);
  return { document: made.document, leftOut: read.imported.leftOut };
}

/** `walk.csv` and the sheet Boat shed: `walk-Boat shed.csv`. */
function pathOf(path: string, sheet: string | undefined): string {
  if (sheet === undefined) return path;
  const dot = path.lastIndexOf('.');
  return `${path.slice(0, dot)}-${sheet.replace(/[\\/:*?"<>|]/g, ' ')}${path.slice(dot)}`;
}
