import type { QuantityName } from '../../functions/quantities/names.ts';
import { isError } from '../../functions/values.ts';
import { cellAtSpot, formulaText, type Spot } from '../book/look.ts';
import { columnCaption } from '../check/captions.ts';
import { shownCell } from '../check/shown.ts';
import { verdictOf } from '../check/verdicts.ts';
import type { Document } from '../book/types.ts';
import type { CellValue } from '../engine/types.ts';
import type { Look } from '../panels/views/look.ts';
import { shapeOf } from '../panels/views/points.ts';
import { say, showCell } from '../panels/views/show.ts';
import type { Shape, Shown } from '../panels/shown.ts';
import { closing } from './closing.ts';
import type { WalkReading } from './order.ts';

/** Words on how a reading came out, with the shape that backs them. */
export interface Said {
  readonly words: string;
  readonly shape?: Shape;
}

/** All that is known of one reading while one stands at its point. */
export interface Standing {
  readonly value: Shown;
  readonly quantity: QuantityName | undefined;
  /** "f/1.4", "−2 stops": what should be read here, as far as it is known. */
  readonly wanted: readonly string[];
  readonly verdict?: Said;
  /** A second verdict of the same row: whether the camera holds it. */
  readonly also?: Said;
  readonly closes: string;
  /** Reading minus wanted in stops, and what still agrees. */
  readonly off?: number;
  readonly tolerance: number;
}

/** The verdict of a row, for lists: no captions are looked up. */
export function verdictOn(look: Look, { spot, isJudged }: WalkReading): Said | undefined {
  if (!isJudged) return undefined;
  const { said, others } = judged(look, spot);
  return said ?? others[0];
}

export function standingOf(look: Look, reading: WalkReading): Standing {
  const { document, engine, writing } = look;
  const { spot, isJudged } = reading;
  const captions = captionsOf(document, spot);
  const says = (caption: string): CellValue => {
    const column = captions.get(caption);
    return column === undefined ? null : engine.valueOf({ ...spot, column });
  };
  const own = verdictOf(document, engine, spot);
  const { said, others } = judged(look, spot);
  const verdict = isJudged ? (said ?? others[0]) : undefined;
  const also = isJudged && said ? others[0] : undefined;
  const counted = own?.off?.scale === 'stops' ? own.off.by : difference(says);
  const off = isJudged ? counted : undefined;
  return {
    value: showCell(look, spot),
    quantity: engine.quantityOf(spot),
    wanted: isJudged ? wantedOf(look, spot, captions, own?.target) : [],
    ...(verdict && { verdict }),
    ...(also && { also }),
    closes: closing(says, own, writing),
    ...(off !== undefined && Number.isFinite(off) && { off }),
    tolerance: document.sheet(spot.sheet)?.properties.tolerance ?? document.settings.tolerance,
  };
}

/** Columns by caption as they stand over this row. */
export function captionsOf(document: Document, { sheet, row }: Spot): ReadonlyMap<string, number> {
  const captions = new Map<string, number>();
  const { columns } = document.sheet(sheet) ?? {};
  for (let column = 0; column < (columns?.length ?? 0); column += 1) {
    const words = columnCaption(document, sheet, row, column).toLowerCase();
    if (words !== '' && !captions.has(words)) captions.set(words, column);
  }
  return captions;
}

const whereFrom = ['from key', 'from grey'];

/** Where a sheet counts from the key or from grey, and says what is wanted there. */
function difference(says: (caption: string) => CellValue): number | undefined {
  const from = whereFrom.map(says).find((value) => typeof value === 'number');
  const wanted = says('wanted');
  return typeof from === 'number' && typeof wanted === 'number' ? from - wanted : undefined;
}

function wantedOf(
  look: Look,
  spot: Spot,
  captions: ReadonlyMap<string, number>,
  target: number | undefined,
): readonly string[] {
  const { engine, writing } = look;
  const at = (caption: string): Spot | undefined => {
    const column = captions.get(caption);
    return column === undefined ? undefined : { ...spot, column };
  };
  const parts: string[] = [];
  // A target worked out in f-numbers says nothing to a meter that shows lux: the light does.
  const light = at('wanted light');
  const lux = engine.quantityOf(spot) === 'illuminance' && light ? engine.valueOf(light) : null;
  if (typeof lux === 'number') parts.push(say(lux, 'illuminance', writing));
  else if (target !== undefined) parts.push(say(target, quantityOfTarget(look, spot), writing));
  const wanted = at('wanted');
  const stops = wanted ? engine.valueOf(wanted) : null;
  if (wanted && typeof stops === 'number')
    parts.push(
      [say(stops, engine.quantityOf(wanted) ?? 'stops', writing), whereFrom.find(at)]
        .filter(Boolean)
        .join(' '),
    );
  return parts;
}

function quantityOfTarget({ document, engine }: Look, spot: Spot): QuantityName | undefined {
  const target = cellAtSpot(document, spot)?.target;
  if (typeof target !== 'object') return engine.quantityOf(spot);
  const { quantity } = engine.evaluate(formulaText(document, target, spot.sheet), spot.sheet);
  return quantity === 'number' ? engine.quantityOf(spot) : quantity;
}

/** The verdicts of a row: how far from wanted first, whether the camera holds it second. */
function judged(
  look: Look,
  spot: Spot,
): { readonly said: Said | undefined; readonly others: readonly Said[] } {
  const { document, engine } = look;
  const sheet = document.sheet(spot.sheet);
  const said: Said[] = [];
  const held: Said[] = [];
  const texts: Said[] = [];
  for (let column = 0; column < (sheet?.columns.length ?? 0); column += 1) {
    const at = { ...spot, column };
    if (cellAtSpot(document, at)?.content.kind !== 'formula') continue;
    const value = engine.valueOf(at);
    if (engine.quantityOf(at) === 'verdict') {
      const shape = shapeOf(value);
      const words = isError(value) ? value.message : String(value ?? '');
      if (words === '') continue;
      const one = { words, ...(shape && { shape }) };
      if (isHeld(words)) held.push(one);
      else said.push(one);
    } else if (typeof value === 'string' && value !== '') {
      texts.push({ words: value, ...sideOf(value) });
    }
  }
  const own = verdictOf(document, engine, spot);
  if (own && said.length === 0)
    said.push({ words: own.words, ...(own.shape && { shape: own.shape as Shape }) });
  const [first, ...rest] = said;
  return { said: first, others: [...rest, ...held, ...(first || held.length > 0 ? [] : texts)] };
}

const isHeld = (words: string) => /^(in range|clips by|lost by)/.test(words);

/** Words on a colour name the side that it is off to. */
function sideOf(words: string): { readonly shape?: Shape } {
  if (/ too warm|^(as the camera’s white, )?green by /.test(words)) return { shape: 'over' };
  if (/ too blue|^(as the camera’s white, )?magenta by /.test(words)) return { shape: 'under' };
  return /^(agrees|as the camera’s white)$/.test(words) ? { shape: 'agrees' } : {};
}

/** A reading in one line, for lists; a dash where there is none. */
export function valueInList({ document, engine }: Look, { spot }: WalkReading): string {
  const { text, whole } = shownCell(document, engine, spot);
  return whole ?? (text === '' ? '–' : text);
}
