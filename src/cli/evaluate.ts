import { writeForPeople } from '../../functions/quantities/index.ts';
import { isError } from '../../functions/values.ts';
import { createBook } from '../book/book.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, Settings } from '../book/types.ts';
import { connectEngine, type Engine, type Result } from '../engine/index.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { putFixtures } from './fixtures.ts';
import { putSpectra } from './spectra.ts';
import { emptyDocument, openFile } from './openfile.ts';
import { words } from '../words/words.ts';
import { Unusable, type ExitCode, type Io, type Subcommand } from './types.ts';

export const evaluate: Subcommand = {
  name: 'evaluate',
  usage: words.commandLine.evaluate.usage,
  summary: words.commandLine.evaluate.summary,
  options: {
    book: words.commandLine.aFile,
    sheet: words.commandLine.sheetName,
    decimal: words.commandLine.pointOrComma,
    fixture: words.commandLine.nameAndFile,
    spectrum: words.commandLine.nameAndSpectrum,
  },
  repeats: ['fixture', 'spectrum'],
  async run({ options, lists, rest }, io) {
    const decimal = decimalFrom(options['decimal']);
    const formulas = await formulasFrom(rest, io);
    const document =
      options['book'] === undefined
        ? emptyDocument(decimal ? { decimal } : {})
        : (await openFile(options['book'], io)).document;
    const sheet = sheetFrom(document, options['sheet']);
    const book = createBook(document);
    await putFixtures(book, lists['fixture'] ?? [], io);
    await putSpectra(book, lists['spectrum'] ?? [], io);
    const engine = connectEngine(book, { fixtures: fixturesIn, spectra: spectraIn });
    const settings = { ...document.settings, ...(decimal && { decimal }) };
    const codes = formulas.map((formula) => print(formula, engine, sheet, settings, io));
    return codes.includes(1) ? 1 : 0;
  },
};

function decimalFrom(text: string | undefined): Settings['decimal'] | undefined {
  if (text === undefined || text === '.' || text === ',') return text;
  throw new Unusable(words.commandLine.wantsNot('decimal', words.commandLine.pointOrComma, text));
}

function sheetFrom(document: Document, name: string | undefined): string | undefined {
  if (name === undefined) return undefined;
  const sheet = document.sheetNamed(name);
  if (!sheet) throw new Unusable(words.commandLine.noSheet(name));
  return sheet.id;
}

async function formulasFrom(rest: readonly string[], io: Io): Promise<readonly string[]> {
  if (rest.length === 0) throw new Unusable(words.commandLine.noFormula);
  if (!rest.includes('-')) return rest;
  if (rest.length > 1) throw new Unusable(words.commandLine.dashAlone);
  const lines = (await io.readInput()).split(/\r?\n/);
  return lines.filter((line) => line.trim() !== '');
}

function print(
  formula: string,
  engine: Engine,
  sheet: string | undefined,
  settings: Settings,
  io: Io,
): ExitCode {
  const { value, quantity } = engine.evaluate(formula.trim(), sheet);
  if (isError(value)) {
    const { code: error, message, waiting } = value;
    io.out(`${JSON.stringify({ formula, error, message, ...(waiting && { waiting }) })}\n`);
    return 1;
  }
  const display = displayed({ value, quantity }, settings);
  io.out(`${JSON.stringify({ formula, value, quantity: quantity ?? null, display })}\n`);
  return 0;
}

function displayed({ value, quantity }: Pick<Result, 'value' | 'quantity'>, settings: Settings) {
  if (typeof value === 'number')
    return writeForPeople(quantity ?? 'number', value, writingSettings(settings));
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'string' ? value : '';
}
