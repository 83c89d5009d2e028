import { Fault, numberFrom } from '../photometric/fault.ts';
import { shortened } from '../photometric/words.ts';
import type { Found, Row } from './found.ts';
import { words } from '../../words/words.ts';

export const looksLikeCgats = (lines: readonly string[]): boolean =>
  lines.some((line) => /^\s*BEGIN_DATA(?:_FORMAT)?\s*$/i.test(line));

/** Fields that are a wavelength: SPEC_380, SPECTRAL_NM_380, nm380 and their like. */
const band = /^(?:SPEC(?:TRAL)?_?(?:NM_?|DEC_?|PCT_?)?|NM_?)(\d+(?:\.\d+)?)$/i;
/** A list with a row for each wavelength. */
const lengthField = /^(?:SPECTRAL_NM|WAVELENGTH(?:_NM)?|NM)$/i;
const valueField = /^(?:SPECTRAL_(?:DEC|PCT|VALUE)|SPEC|VALUE|POWER)$/i;

interface Word {
  readonly text: string;
  readonly line: number;
}

/** Reads text as CGATS.17 lays it out: fields named in one block, rows of values in the next. */
export function readCgats(lines: readonly string[]): readonly Found[] {
  const fields = block(lines, 'BEGIN_DATA_FORMAT', 'END_DATA_FORMAT');
  const data = block(lines, 'BEGIN_DATA', 'END_DATA');
  if (fields.length === 0) throw new Fault(1, words.spectra.noFields);
  if (data.length === 0) throw new Fault(lines.length, words.spectra.noData);
  if (data.length % fields.length !== 0)
    throw new Fault(data.at(-1)!.line, words.spectra.unevenData(fields.length, data.length));
  const rows = Array.from({ length: data.length / fields.length }, (_, index) =>
    data.slice(index * fields.length, (index + 1) * fields.length),
  );
  const head = lines.slice(0, fields[0]!.line).join('\n');
  const filter = /TRANSMI/i.test(head);
  const norm = numberFrom(/SPECTRAL_NORM\s+"?([\d.eE+-]+)/i.exec(head)?.[1] ?? '');
  const factor = filter && norm > 0 ? 1 / norm : 1;
  const bands = fields.flatMap(({ text }, column) => {
    const nm = band.exec(text)?.[1];
    return nm === undefined ? [] : [{ column, nm: Number(nm) }];
  });
  const measures = filter ? 'transmission' : 'shape';
  if (bands.length === 0) return [{ name: '', measures, rows: listed(fields, rows, factor) }];
  const label = fields.findIndex(({ text }) => /^SAMPLE_(?:NAME|ID)$/i.test(text));
  return rows.map((row) => ({
    name: row[label]?.text ?? '',
    measures,
    rows: bands.map(({ column, nm }) => ({ nm, ...valueOf(row[column]!, factor) })),
  }));
}

function listed(
  fields: readonly Word[],
  rows: readonly (readonly Word[])[],
  factor: number,
): readonly Row[] {
  const length = fields.findIndex(({ text }) => lengthField.test(text));
  const value = fields.findIndex(({ text }) => valueField.test(text));
  if (length < 0 || value < 0) throw new Fault(fields[0]!.line, words.spectra.noBands);
  const share = /PCT/i.test(fields[value]!.text) ? 0.01 : factor;
  return rows.map((row) => ({
    nm: valueOf(row[length]!, 1).value,
    ...valueOf(row[value]!, share),
  }));
}

function valueOf({ text, line }: Word, factor: number): { value: number; line: number } {
  const value = numberFrom(text);
  if (Number.isFinite(value)) return { value: factor * value, line };
  throw new Fault(line, words.photometric.noNumber(shortened(text), words.spectra.aPower));
}

/** The words between two lines, quoted ones whole. */
function block(lines: readonly string[], begin: string, end: string): readonly Word[] {
  const from = lines.findIndex((line) => line.trim().toUpperCase() === begin);
  if (from < 0) return [];
  const length = lines.slice(from + 1).findIndex((line) => line.trim().toUpperCase() === end);
  if (length < 0) throw new Fault(from + 1, words.spectra.neverEnds(begin, end));
  return lines.slice(from + 1, from + 1 + length).flatMap((line, index) =>
    [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => ({
      text: quoted ?? plain ?? '',
      line: from + 2 + index,
    })),
  );
}
