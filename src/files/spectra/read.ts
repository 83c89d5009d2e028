import {
  checkReadings,
  mostReadings,
  mustBegin,
  mustEnd,
  widestGap,
  type Fault as ReadingFault,
} from '../../../functions/spectrum/readings.ts';
import type { MadeUp, Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { Fault } from '../photometric/fault.ts';
import { linesOf } from '../photometric/words.ts';
import { looksLikeCgats, readCgats } from './cgats.ts';
import type { Found, Row } from './found.ts';
import { readTable } from './table.ts';
import { looksLikeXml, readTm27 } from './tm27.ts';
import { words } from '../../words/words.ts';

export interface NamedSpectrum {
  /** What the file calls it; empty where it says nothing. */
  readonly name: string;
  readonly spectrum: Spectrum;
  /** What people should know about what was read. */
  readonly notes: readonly string[];
}

export type SpectrumFile =
  | { readonly ok: true; readonly spectra: readonly NamedSpectrum[] }
  | {
      readonly ok: false;
      /** Counted from 1. */
      readonly line: number;
      /** A sentence with the line; nothing was taken. */
      readonly reason: string;
    };

const mostCharacters = 5_000_000;
/** More columns are no list of lights. */
const mostSpectra = 200;

/** Reads a table, CGATS.17 text or TM-27 XML, told apart by what stands in it. All of it, or nothing. */
export function readSpectra(text: string): SpectrumFile {
  try {
    if (text.length > mostCharacters) throw new Fault(1, words.spectra.tooLarge);
    const lines = linesOf(text);
    const found = looksLikeXml(text)
      ? readTm27(text)
      : looksLikeCgats(lines)
        ? readCgats(lines)
        : readTable(lines);
    if (found.length > mostSpectra)
      throw new Fault(1, words.spectra.tooMany(found.length, mostSpectra));
    return { ok: true, spectra: found.map(checked) };
  } catch (reason) {
    if (!(reason instanceof Fault)) throw reason;
    const { line, message } = reason;
    return { ok: false, line, reason: words.photometric.lineReason(line, message) };
  }
}

function checked({ name, measures, rows }: Found): NamedSpectrum {
  const result = checkReadings(rows, measures);
  if (!result.ok) throw new Fault(...faultOf(result.fault, rows));
  const { spectrum } = result;
  return { name, spectrum, notes: (spectrum.madeUp ?? []).map(noteOf) };
}

function faultOf(fault: ReadingFault, rows: readonly Row[]): [line: number, reason: string] {
  const { spectra } = words;
  if (fault.kind === 'few' || fault.kind === 'dark') {
    const few = fault.kind === 'few';
    return [rows.at(-1)?.line ?? 1, few ? spectra.count(rows.length, mostReadings) : spectra.dark];
  }
  const { nm, value, line } = rows[fault.at]!;
  const before = rows[fault.at - 1]?.nm ?? nm;
  switch (fault.kind) {
    case 'short':
      return [line, fault.end === 'low' ? spectra.late(nm, mustBegin) : spectra.early(nm, mustEnd)];
    case 'unit':
      return [line, spectra.notNanometres(nm)];
    case 'order':
      return [line, spectra.order(nm, before)];
    case 'gap':
      return [line, spectra.gap(before, nm, widestGap)];
    case 'huge':
      return [line, spectra.huge(nm)];
    case 'negative':
      return [line, spectra.negative(value, nm)];
    case 'passing':
      return [line, spectra.passing(value, nm)];
  }
}

/** What was made up where nothing was read, in a sentence. */
export const noteOf = ({ kind, from, to }: MadeUp): string => words.spectra.madeUp[kind](from, to);
