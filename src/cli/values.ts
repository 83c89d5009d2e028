import { isError } from '../../functions/values.ts';
import { createBook } from '../book/book.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { addressAt } from '../book/look.ts';
import type { Sheet } from '../book/types.ts';
import { connectEngine, type CellValue, type Engine } from '../engine/index.ts';
import { csvLine } from './csv.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { openFile, type OpenFile } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type Subcommand } from './types.ts';

export const values: Subcommand = {
  name: 'values',
  usage: words.commandLine.values.usage,
  summary: words.commandLine.values.summary,
  options: { sheet: words.commandLine.sheetName },
  async run({ options, rest }, io) {
    const [path, more] = rest;
    if (path === undefined) throw new Unusable(words.commandLine.noFile);
    if (more !== undefined) throw new Unusable(words.commandLine.oneFile);
    const file = await openFile(path, io);
    const sheets = sheetsFrom(file, options['sheet']);
    const engine = connectEngine(createBook(file.document), {
      fixtures: fixturesIn,
      spectra: spectraIn,
    });
    const named = sheets.length > 1;
    let failed = file.unread.length > 0;
    for (const sheet of sheets) {
      if (named) io.out(`# ${sheet.properties.name}\n`);
      for (const row of valuesOf(sheet, engine, file)) {
        failed ||= row.some((value) => isError(value) && value.waiting !== true);
        io.out(csvLine(row));
      }
    }
    for (const { reason, ...spot } of file.unread) io.err(`${addressAt(spot)}: ${reason}\n`);
    return failed ? 1 : 0;
  },
};

function sheetsFrom({ document }: OpenFile, name: string | undefined): readonly Sheet[] {
  if (name === undefined) return document.sheets;
  const sheet = document.sheetNamed(name);
  if (!sheet) throw new Unusable(words.commandLine.noSheet(name));
  return [sheet];
}

/** Row by row, as far as anything stands. */
function valuesOf(
  { id, rows, columns }: Sheet,
  engine: Engine,
  { unread }: OpenFile,
): readonly (readonly CellValue[])[] {
  const table = rows.ids.map((_, row) =>
    columns.ids.map((__, column) => engine.valueOf({ sheet: id, row, column })),
  );
  for (const { row, column, reason } of unread) {
    while (table.length <= row) table.push([]);
    const line = table[row] ?? [];
    while (line.length <= column) line.push(null);
    line[column] = { code: '#ERROR!', message: reason };
  }
  const width = 1 + Math.max(-1, ...table.map((line) => line.findLastIndex(isThere)));
  const height = 1 + table.findLastIndex((line) => line.some(isThere));
  return table
    .slice(0, height)
    .map((line) => Array.from({ length: width }, (_, column) => line[column] ?? null));
}

function isThere(value: CellValue): boolean {
  return value !== null && value !== '';
}
