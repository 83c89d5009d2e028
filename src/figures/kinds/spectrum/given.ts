import type { Light } from '../../../../functions/spectrum/light.ts';
import { lightFrom } from '../../../../functions/spectrum/parameters.ts';
import type { Spectrum } from '../../../../functions/spectrum/spectrum.ts';
import { isError, type TableRow } from '../../../../functions/values.ts';
import type { Block, Given, Input, Option, Undrawn } from '../../figure.ts';
import { words } from '../../../words/words.ts';

/** The spectrum that a figure is drawn from, behind a filter if there is one. */
export interface GivenSpectrum {
  readonly name: string;
  readonly filterName: string | undefined;
  /** Undefined where what was chosen is a filter alone. */
  readonly light: Light | undefined;
  readonly spectrum: Spectrum;
}

const said = words.spectrumFigure;

export const inputs: readonly Input[] = [
  {
    name: 'spectrum',
    words: said.cells,
    help: said.cellsHelp,
    shape: 'single',
    optional: true,
    captions: [/spectrum/i],
  },
  {
    name: 'filter',
    words: said.filterCells,
    help: said.filterCellsHelp,
    shape: 'single',
    optional: true,
  },
];

export const options: readonly Option[] = [
  {
    name: 'spectrum',
    words: said.spectrum,
    choices: [{ value: '', words: said.asCells }],
    shelf: 'spectra',
  },
  {
    name: 'filter',
    words: said.filter,
    choices: [{ value: '', words: said.asCells }],
    shelf: 'filters',
  },
];

/** Chosen by name, or what the cells hold: a name, or wavelengths and powers. */
export function spectrumIn(given: Given): GivenSpectrum | Undrawn {
  const rows = rowsOf(given, 'spectrum');
  if (!rows) return { reason: said.which };
  if ('reason' in rows) return rows;
  const filter = rowsOf(given, 'filter');
  if (filter && 'reason' in filter) return filter;
  const name = nameIn(rows) ?? said.ofCells;
  const alone = given.spectra.named(name);
  if (typeof alone === 'object' && alone.measures === 'transmission')
    return { name, filterName: undefined, light: undefined, spectrum: alone };
  const light = lightFrom(said.spectrum, given.spectra, rows, filter);
  if (isError(light)) return { reason: light.message };
  const filterName = filter && (nameIn(filter) ?? said.ofCells);
  return { name, filterName, light, spectrum: light.spectrum };
}

function rowsOf(
  { inputs: cells, options: chosen }: Given,
  name: 'spectrum' | 'filter',
): readonly TableRow[] | Undrawn | undefined {
  const named = chosen[name] ?? '';
  if (named !== '') return [[{ value: named }]];
  const block = cells[name];
  if (!block) return undefined;
  const wrong = block.flat().find(({ reason }) => reason !== undefined);
  return wrong?.reason === undefined ? tableOf(block) : { reason: wrong.reason };
}

const tableOf = (block: Block): readonly TableRow[] =>
  block.map((row) =>
    row.map(({ value, at }) => ({
      value: value ?? undefined,
      ...(at !== undefined && { at }),
    })),
  );

function nameIn(rows: readonly TableRow[]): string | undefined {
  const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0]?.value : undefined;
  return typeof only === 'string' ? only : undefined;
}
