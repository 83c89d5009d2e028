import type { Block, Datum, FigureKind, Given } from '../../figures/figure.ts';
import { kindOf } from '../../figures/kinds.ts';
import { isError } from '../../../functions/values.ts';
import { figuresOn, type Figure } from '../../book/figures.ts';
import { addressAt, cellAtSpot, layoutOf } from '../../book/look.ts';
import { spectraIn } from '../../files/spectra/shelf.ts';
import { fixturesIn } from '../../files/photometric/shelf.ts';
import type { CellPlace, Engine } from '../../engine/types.ts';
import type { Reference } from '../../formula/types.ts';
import { extentOf, type Extent } from '../../formula/write.ts';
import type { Look } from '../views/look.ts';
import type { FigureView } from './seam.ts';
import { unbroken } from './unbroken.ts';
import { words } from '../../words/words.ts';

/** A range reaches no farther than this: a figure of more is no picture. */
const most = { rows: 2000, columns: 60 };

/** The figures of a sheet with what their cells come to now. */
export function figuresView(look: Look, sheet: string): readonly FigureView[] {
  return figuresOn(look.document, sheet).map((figure): FigureView => {
    const kind = kindOf(figure.kind);
    const lost = kind?.inputs.find(
      ({ name }) => figure.ranges[name] && !extentOfInput(look, figure, name),
    );
    return {
      id: figure.id,
      kind: figure.kind,
      kindName: kind?.name ?? words.figures.figure,
      title: figure.title || (kind?.name ?? words.figures.figure),
      made: !kind
        ? { reason: words.figures.unknownKind(figure.kind) }
        : lost
          ? { reason: words.figures.cellsGone(lost.words) }
          : madeOnce(look, kind, figure),
    };
  });
}

interface Remembered {
  readonly text: string;
  /** What lay on the shelves that figures look at. */
  readonly shelves: readonly unknown[];
  readonly made: FigureView['made'];
}

/** What each figure was last made of: a plan is not worked out anew for each key pressed elsewhere. */
const remembered = new Map<string, Remembered>();

function madeOnce(look: Look, kind: FigureKind, figure: Figure): FigureView['made'] {
  const { fixtures, spectra, ...given } = givenTo(look, figure);
  const text = JSON.stringify([kind.kind, given]);
  const shelves = (['fixtures', 'spectra'] as const).map((name) => look.document.shelf(name).items);
  const known = remembered.get(figure.id);
  const same = known?.text === text && shelves.every((items, at) => items === known.shelves[at]);
  if (same) return known.made;
  const made = unbroken(() => kind.make({ ...given, fixtures, spectra }));
  remembered.set(figure.id, { text, shelves, made });
  return made;
}

function givenTo(look: Look, figure: Figure): Given {
  const { document, writing } = look;
  const tolerance =
    document.sheet(figure.sheet)?.properties.tolerance ?? document.settings.tolerance;
  const kind = kindOf(figure.kind);
  const inputs = Object.fromEntries(
    (kind?.inputs ?? []).flatMap(({ name, quantities, wide }): (readonly [string, Block])[] => {
      const range = extentOfInput(look, figure, name);
      if (range) return [[name, blockOf(look, range, wide)]];
      const value = figure.values[name];
      const [quantity] = quantities ?? [];
      return value === undefined ? [] : [[name, [[{ value, ...(quantity && { quantity }) }]]]];
    }),
  );
  const fixtures = fixturesIn(document);
  const spectra = spectraIn(document);
  return { writing, tolerance, fixtures, spectra, inputs, options: figure.options };
}

/** Where an input lies now; a name is looked up as a formula would. */
export function extentOfInput(
  { document }: Look,
  { ranges }: Figure,
  name: string,
): Extent | undefined {
  const reference = ranges[name];
  return reference && extentOf(meant(document, reference), layoutOf(document));
}

function meant(document: Look['document'], reference: Reference): Reference {
  if (reference.kind !== 'name') return reference;
  return document.named(reference.name)?.formula.references[0] ?? { kind: 'lost' };
}

function blockOf(
  { document, engine }: Look,
  { sheet, top, left, bottom, right }: Extent,
  wide = most.columns,
): Block {
  const used = document.sheet(sheet);
  const last = {
    row: Math.min(bottom, (used?.rows.length ?? 0) - 1, top + most.rows - 1),
    column: Math.min(right, (used?.columns.length ?? 0) - 1, left + wide - 1),
  };
  const rows: Datum[][] = [];
  for (let row = top; row <= last.row; row += 1) {
    const data: Datum[] = [];
    for (let column = left; column <= last.column; column += 1)
      data.push(datumAt(document, engine, { sheet, row, column }));
    rows.push(data);
  }
  return rows;
}

function datumAt(document: Look['document'], engine: Engine, place: CellPlace): Datum {
  const value = engine.valueOf(place);
  const quantity = engine.quantityOf(place);
  const formula = cellAtSpot(document, place)?.content.kind === 'formula';
  const cell = { at: addressAt(place), ...(formula && { formula: true as const }) };
  if (!isError(value)) return { value, ...(quantity && { quantity }), ...cell };
  return { value: null, reason: value.message, ...(value.waiting && { waits: true }), ...cell };
}
