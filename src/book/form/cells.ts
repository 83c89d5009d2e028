import type { Cell, Content, EntrySettings, Formula, Photo, Taken } from '../types.ts';
import { words } from '../../words/words.ts';

/** A cell as JSON. How a formula and the settings of an entry are said differs by form. */
export interface CellJson<F extends string | object, U> {
  readonly typed?: string | undefined;
  readonly number?: number | undefined;
  readonly text?: string | undefined;
  readonly truth?: boolean | undefined;
  readonly formula?: F | undefined;
  readonly under?: U | undefined;
  readonly target?: number | F | undefined;
}

export interface Writer<F extends string | object, U> {
  formula(formula: Formula): F;
  /** `undefined` for the usual ones, which need not be said. */
  under(under: EntrySettings | undefined): U | undefined;
}

type Said = Omit<Cell, 'content' | 'typed' | 'under' | 'target'>;

/** Keys stand in one order. What was typed is left out where the content says it already. */
export function cellToJson<F extends string | object, U>(
  cell: Cell,
  writer: Writer<F, U>,
): CellJson<F, U> & Said {
  const { content, typed, target } = cell;
  const plain = typed === undefined || typed === plainText(content);
  const under = typed === undefined ? undefined : writer.under(cell.under);
  return {
    ...(!plain && { typed }),
    ...contentToJson(content, writer),
    ...(under !== undefined && { under }),
    ...(cell.quantity !== undefined && { quantity: cell.quantity }),
    ...(cell.yields && { yields: true as const }),
    ...(cell.role !== undefined && { role: cell.role }),
    ...(cell.format !== undefined && { format: formatInOrder(cell.format) }),
    ...(cell.note !== undefined && { note: cell.note }),
    ...(target !== undefined && {
      target: typeof target === 'number' ? target : writer.formula(target),
    }),
    ...(cell.tolerance !== undefined && { tolerance: cell.tolerance }),
    ...(cell.receptor !== undefined && { receptor: cell.receptor }),
    ...(cell.pointed !== undefined && { pointed: cell.pointed }),
    ...(cell.taken !== undefined && { taken: takenInOrder(cell.taken) }),
    ...(cell.photos !== undefined && { photos: cell.photos.map(photoInOrder) }),
  };
}

function contentToJson<F extends string | object, U>(
  content: Content,
  writer: Writer<F, U>,
): CellJson<F, U> {
  switch (content.kind) {
    case 'blank':
      return {};
    case 'number':
      return { number: content.value };
    case 'text':
      return { text: content.text };
    case 'truth':
      return { truth: content.value };
    case 'formula':
      return { formula: writer.formula(content.formula) };
  }
}

/** What one types to get this content, where nothing else was typed. */
function plainText(content: Content): string | undefined {
  if (content.kind === 'number') return String(content.value);
  if (content.kind === 'truth') return content.value ? 'TRUE' : 'FALSE';
  return content.kind === 'text' ? content.text : undefined;
}

export function formatInOrder(format: NonNullable<Cell['format']>): NonNullable<Cell['format']> {
  const { decimals, bold, italic, align, wrap, unit } = format;
  return {
    ...(decimals !== undefined && { decimals }),
    ...(bold !== undefined && { bold }),
    ...(italic !== undefined && { italic }),
    ...(align !== undefined && { align }),
    ...(wrap !== undefined && { wrap }),
    ...(unit !== undefined && { unit }),
  };
}

const takenInOrder = ({ date, time, meter }: Taken): Taken => ({
  date,
  time,
  ...(meter !== undefined && { meter }),
});
const photoInOrder = ({ hash, name, size }: Photo): Photo => ({ hash, name, size });

export interface Reader<F extends string | object, U> {
  formula(json: F): Formula | { readonly reason: string };
  under(json: U | undefined): EntrySettings | undefined;
}

type SaidJson = { readonly [K in keyof Said]?: Said[K] | undefined };

/** The cell again; a reason when it holds two things at once or a formula that cannot be read. */
export function cellFromJson<F extends string | object, U>(
  json: CellJson<F, U> & SaidJson,
  reader: Reader<F, U>,
): Cell | { readonly reason: string } {
  const content = contentFromJson(json, reader);
  if ('reason' in content) return content;
  const target =
    json.target === undefined || typeof json.target === 'number'
      ? json.target
      : reader.formula(json.target);
  if (typeof target === 'object' && 'reason' in target) return target;
  const { quantity, yields, role, format, note, tolerance, receptor, pointed, taken, photos } =
    json;
  const typed = json.typed ?? plainText(content);
  const under = typed === undefined ? undefined : reader.under(json.under);
  return {
    content,
    ...(typed !== undefined && { typed }),
    ...(under && { under }),
    ...(quantity !== undefined && { quantity }),
    ...(yields && { yields }),
    ...(role !== undefined && { role }),
    ...(format !== undefined && { format }),
    ...(note !== undefined && { note }),
    ...(target !== undefined && { target }),
    ...(tolerance !== undefined && { tolerance }),
    ...(receptor !== undefined && { receptor }),
    ...(pointed !== undefined && { pointed }),
    ...(taken !== undefined && { taken }),
    ...(photos !== undefined && { photos }),
  };
}

function contentFromJson<F extends string | object, U>(
  { number, text, truth, formula }: CellJson<F, U>,
  reader: Reader<F, U>,
): Content | { readonly reason: string } {
  const held = [number, text, truth, formula].filter((each) => each !== undefined);
  if (held.length > 1) return { reason: words.bookFile.twoThings };
  if (number !== undefined) return { kind: 'number', value: number };
  if (text !== undefined) return { kind: 'text', text };
  if (truth !== undefined) return { kind: 'truth', value: truth };
  if (formula === undefined) return { kind: 'blank' };
  const bound = reader.formula(formula);
  return 'reason' in bound ? bound : { kind: 'formula', formula: bound };
}
