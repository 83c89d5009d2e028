import { readAs } from '../../functions/quantities/read.ts';
import { isError } from '../../functions/values.ts';
import { createBook } from '../book/book.ts';
import { handoutsOf, type Exercise, type Handout, type Question } from '../book/exercises.ts';
import { readBook } from '../book/form/read.ts';
import { cellAt, spotOf, typedText } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document } from '../book/types.ts';
import { connectEngine } from '../engine/index.ts';
import { utf8 } from '../files/in/bytes.ts';
import { reading, Refused } from '../files/in/refused.ts';
import { unzip } from '../files/in/unzip.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { sha256 } from '../files/photometric/sha256.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { words } from '../words/words.ts';
import type { Variant } from './variant.ts';
import { withNumber } from './workings.ts';

/** A file as it came back. */
export interface ReturnedFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** A file that holds a hand-out of ours, whoever’s it is. */
export interface ReturnedBook {
  readonly path: string;
  readonly hash: string;
  readonly document: Document;
  readonly handout: Handout;
}

/** A file that is not marked, and why. */
export interface LeftFile {
  readonly path: string;
  readonly kind: 'damaged' | 'foreign';
  readonly reason: string;
}

const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b;
/** A packed file of another program, an office book say: taken as one file, not as a folder. */
const isOffice = (names: readonly string[]) =>
  names.some((name) => name === '[Content_Types].xml' || name === 'mimetype');

/** How many entries a zip file itself says that it has: a list at its end, which one cut short lacks. */
function listedIn(bytes: Uint8Array): number | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const least = 22;
  for (let at = bytes.length - least; at >= Math.max(0, bytes.length - least - 65_535); at -= 1)
    if (view.getUint32(at, true) === 0x06054b50) return view.getUint16(at + 10, true);
  return undefined;
}

/** The files themselves and those in zip files among them. A zip that cannot be read is listed. */
export function unpacked(files: readonly ReturnedFile[]): {
  readonly files: readonly ReturnedFile[];
  readonly left: readonly LeftFile[];
} {
  const left: LeftFile[] = [];
  const all = files.flatMap((file): readonly ReturnedFile[] => {
    if (!isZip(file.bytes)) return [file];
    const read = reading(() => unzip(file.bytes, (name) => !name.endsWith('/')));
    if (!read.ok) {
      left.push({ path: file.path, kind: 'damaged', reason: read.reason });
      return [];
    }
    const { parts, others } = read.result;
    if (isOffice([...parts.keys()])) return [file];
    if (parts.size + others.length !== listedIn(file.bytes) || parts.size === 0)
      left.push({ path: file.path, kind: 'damaged', reason: words.teach.zipCut(parts.size) });
    return [...parts].map(([name, bytes]) => ({ path: `${file.path}/${name}`, bytes }));
  });
  return { files: all, left };
}

/** The hand-out in a file, or why it is not one. */
export function readReturned({ path, bytes }: ReturnedFile): ReturnedBook | LeftFile {
  const foreign = (reason: string): LeftFile => ({ path, kind: 'foreign', reason });
  let text: string;
  try {
    text = utf8(bytes, path);
  } catch (fault) {
    if (fault instanceof Refused) return foreign(words.teach.noBook);
    throw fault;
  }
  if (!/^\uFEFF?\s*\{/.test(text) || !text.slice(0, 400).includes('"halfstop book"'))
    return foreign(words.teach.noBook);
  const read = readBook(text);
  if (!read.ok) return { path, kind: 'damaged', reason: read.reason };
  const [handout] = handoutsOf(read.document);
  if (!handout) return foreign(words.teach.noHandout);
  return { path, hash: sha256(text), document: read.document, handout };
}

/** What stands in an answer cell. */
export interface Given {
  /** In the base unit; undefined where nothing counts as a number. */
  readonly value: number | undefined;
  /** As it was typed. */
  readonly typed: string;
}

/**
 * What a learner answered, in the order of the questions. Formulas are worked out with the true
 * givens, whatever was done to those in the file.
 */
export function answersIn(
  { document }: Pick<ReturnedBook, 'document'>,
  exercise: Exercise,
  { values, answers: expected }: Variant,
): readonly Given[] {
  const { sheet } = exercise;
  const places = exercise.questions.map(({ at }) => ({ sheet, ...at }));
  const hasFormula = places.some((at) => cellAt(document, at)?.content.kind === 'formula');
  const engine = hasFormula ? calculated(document, exercise, values) : undefined;
  const answers = places.map((place, index): Given => {
    const cell = cellAt(document, place);
    const typed = cell ? typedText(document, place) : '';
    const quantity = expected[index]?.quantity;
    const content = cell?.content;
    if (!content || content.kind === 'blank' || content.kind === 'truth')
      return { value: undefined, typed };
    if (cell.quantity !== undefined && cell.quantity !== quantity)
      return { value: Number.NaN, typed };
    if (content.kind === 'number')
      return { value: content.value, typed: typed || String(content.value) };
    if (content.kind === 'text') {
      const read = readAs(quantity ?? 'number', content.text, writingSettings(document.settings));
      return { value: read.ok ? read.value : Number.NaN, typed: content.text };
    }
    const spot = spotOf(document, place);
    const value = spot && engine ? engine.valueOf(spot) : null;
    return {
      value: typeof value === 'number' && !isError(value) ? value : Number.NaN,
      typed,
    };
  });
  engine?.dispose();
  return answers;
}

function calculated(document: Document, { sheet, givens }: Exercise, values: readonly number[]) {
  const book = createBook(document);
  const cells = givens.flatMap(({ at }, index) => {
    const cell = cellAt(document, { sheet, ...at });
    return cell ? [{ ...at, cell: withNumber(cell, values[index]) }] : [];
  });
  book.run({ label: '', steps: [{ kind: 'setCells', sheet, cells }] });
  return connectEngine(book, { fixtures: fixturesIn, spectra: spectraIn });
}

/** Whether the givens in a file are those that were handed out. */
export const givensStand = (
  document: Document,
  { sheet, givens }: Exercise,
  values: readonly number[],
): boolean =>
  givens.every(({ at }, index) => {
    const content = cellAt(document, { sheet, ...at })?.content;
    return content?.kind === 'number' && content.value === values[index];
  });

/** How often a learner checked a question: as the file says, and so only told. */
export const triesOf = ({ tries }: Handout, { id }: Question): number => tries[id] ?? 0;
