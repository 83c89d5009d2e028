import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, parse } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installed, isRequired } from './programs.ts';

/** The spreadsheet that our formulas are held against; undefined where it is not installed. */
export const libreOffice = installed('soffice', 'libreoffice');

/**
 * Why a test against LibreOffice is left out: to be shown beside it. Where REQUIRE names
 * libreoffice there is no such reason, and the test fails for want of it.
 */
export const withoutLibreOffice =
  libreOffice === undefined && !isRequired('libreoffice')
    ? 'LibreOffice (soffice) is not installed: nothing outside works these formulas out.'
    : undefined;

/** It takes the values stored in a file for current, unless told to work every formula out anew. */
const recalculateAlways = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
${['ODFRecalcMode', 'OOXMLRecalcMode']
  .map(
    (name) =>
      `<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="${name}" oor:op="fuse"><value>0</value></prop></item>`,
  )
  .join('\n')}
</oor:items>`;

/** Comma, quote, UTF-8, from line 1; numbers with all their digits and not as the cells show them. */
const exactCsv = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false';

/** The same for every sheet, each into a file that has its name behind a hyphen. */
const exactCsvOfEachSheet = `${exactCsv},false,false,-1`;

interface OutsideFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** Has LibreOffice open the files, work every formula out and write each in another form. */
function converted<Result>(
  files: readonly OutsideFile[],
  form: string,
  take: (folder: string) => Result,
): Result {
  if (libreOffice === undefined) throw new Error('LibreOffice (soffice) is not installed.');
  const folder = mkdtempSync(join(tmpdir(), 'halfstop-libreoffice-'));
  try {
    const profile = join(folder, 'profile');
    const out = join(folder, 'out');
    mkdirSync(join(profile, 'user'), { recursive: true });
    mkdirSync(out);
    writeFileSync(join(profile, 'user/registrymodifications.xcu'), recalculateAlways);
    const paths = files.map(({ name, content }) => {
      const path = join(folder, name);
      writeFileSync(path, content);
      return path;
    });
    execFileSync(
      libreOffice,
      [
        `-env:UserInstallation=${pathToFileURL(profile).href}`,
        ...['--headless', '--norestore', '--convert-to', form, '--outdir', out, ...paths],
      ],
      { stdio: ['ignore', 'pipe', 'pipe'], env: { ...process.env, LC_ALL: 'C.UTF-8' } },
    );
    return take(out);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Opens a file in LibreOffice, lets it work every formula out, and gives back its first sheet as CSV.
 * The stored values of the formulas should be wrong on purpose: then agreement proves the work.
 */
export function recalculated(name: string, content: string | Uint8Array): string {
  return converted([{ name, content }], exactCsv, (out) =>
    readFileSync(join(out, `${parse(name).name}.csv`), 'utf8'),
  );
}

/** The same for every sheet of every file: CSV by the name of the file and of the sheet. */
export function recalculatedSheets(
  files: readonly OutsideFile[],
): ReadonlyMap<string, ReadonlyMap<string, string>> {
  return converted(files, exactCsvOfEachSheet, (out) => {
    const written = readdirSync(out);
    return new Map(
      files.map(({ name }) => {
        const stem = `${parse(name).name}-`;
        const own = written.filter((file) => file.startsWith(stem) && file.endsWith('.csv'));
        const sheets = own.map((file): [string, string] => [
          file.slice(stem.length, -'.csv'.length),
          readFileSync(join(out, file), 'utf8'),
        ]);
        return [name, new Map(sheets)];
      }),
    );
  });
}

/** The files as LibreOffice writes them in another form (`ods`, `xlsx`), by their new names. */
export function savedAs(
  ending: string,
  files: readonly OutsideFile[],
): ReadonlyMap<string, Uint8Array> {
  return converted(files, ending, (out) => {
    const named = files.map(({ name }) => `${parse(name).name}.${ending}`);
    return new Map(named.map((name) => [name, new Uint8Array(readFileSync(join(out, name)))]));
  });
}
