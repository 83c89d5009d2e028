import type { QuantityName } from '../../../functions/quantities/names.ts';
import { cellAtSpot, typedText, type Spot } from '../../book/look.ts';
import { writingSettings } from '../../book/settings.ts';
import type { Photo, Taken } from '../../book/types.ts';
import type { Context } from '../../commands/command.ts';
import type { Look } from '../../panels/views/look.ts';
import { passesOf, type Pass, type WalkReading } from '../order.ts';
import { meterOf, noteOn } from '../entries.ts';
import { stampOf } from '../meters.ts';
import { padFor, type Pad } from '../pad.ts';
import { standingOf, type Standing } from '../standing.ts';

/** The walk as it stands: which round, which point, what is known there. */
export interface Scene {
  readonly look: Look;
  readonly sheet: string;
  readonly title: string;
  readonly passes: readonly Pass[];
  readonly pass: Pass;
  readonly index: number;
  readonly reading: WalkReading;
  readonly standing: Standing;
  readonly isFirstRound: boolean;
  /** What was typed into the reading; empty for none. */
  readonly kept: string;
  readonly pad: Pad;
  /** What the meter may say here, to choose from; one where the cell has it settled. */
  readonly choices: readonly QuantityName[];
  readonly meter: ReturnType<typeof meterOf>;
  readonly note: string;
  /** When and with what the reading here was taken, where Walk took it. */
  readonly taken: Taken | undefined;
  readonly photos: readonly Photo[];
}

export function lookOf({ book, engine }: Context): Look {
  const writing = writingSettings(book.document.settings);
  return { document: book.document, engine, writing, remarksAt: () => [] };
}

/** `mode` is what the person at the meter has switched to. Undefined where there is nothing to walk. */
export function sceneOf(context: Context, mode: QuantityName | null): Scene | undefined {
  const { session } = context;
  const look = lookOf(context);
  const { document } = look;
  const { sheet, selection } = session.state;
  const passes = passesOf(document, sheet);
  const found = whereIs(passes, { sheet, ...selection.focus });
  if (!found) return undefined;
  const { pass, index, reading } = found;
  const isFirstRound = pass === passes[0];
  const { title, name } = document.sheet(sheet)?.properties ?? { title: '', name: '' };
  const meter = meterOf(document, reading.spot, isFirstRound);
  const choices = choicesAt(look, reading, meter?.says);
  const usual = usualMode(look, pass, index, meter?.says);
  const settled = choices.length === 1 ? choices[0] : undefined;
  return {
    look,
    sheet,
    title: title || name,
    passes,
    pass,
    index,
    reading,
    standing: standingOf(look, reading),
    isFirstRound,
    kept: typedText(document, reading.place),
    pad: padFor(settled ?? mode ?? usual, look.writing),
    choices,
    meter,
    note: noteOn(document, reading.spot),
    taken: stampOf(document, reading.spot),
    photos: cellAtSpot(document, reading.spot)?.photos ?? [],
  };
}

/** The selected reading; else another of its row; else the first that still waits; else the first. */
export function whereIs(
  passes: readonly Pass[],
  { row, column }: Spot,
): { readonly pass: Pass; readonly index: number; readonly reading: WalkReading } | undefined {
  const tests: readonly ((reading: WalkReading) => boolean)[] = [
    ({ spot }) => spot.row === row && spot.column === column,
    ({ spot }) => spot.row === row,
    () => true,
  ];
  for (const test of tests)
    for (const pass of passes) {
      const index = pass.readings.findIndex(test);
      const reading = pass.readings[index];
      if (reading) return { pass, index, reading };
    }
  return undefined;
}

/** What an incident meter says, and what a spot meter says. */
const incident: readonly QuantityName[] = ['fNumber', 'illuminance', 'ev'];
const anyMeter: readonly QuantityName[] = ['fNumber', 'illuminance', 'luminance', 'ev'];

function choicesAt(
  { document, engine }: Look,
  { spot }: WalkReading,
  meter: string | undefined,
): readonly QuantityName[] {
  const yields = cellAtSpot(document, spot)?.yields === true;
  const measured = engine.quantityOf(spot);
  if (measured !== undefined && measured !== 'number' && !yields) return [measured];
  return meter === 'dome' || meter === 'flat' ? incident : anyMeter;
}

/** What this reading says already; else what the reading before it said; else an f-number. */
function usualMode(
  { engine }: Look,
  { readings }: Pass,
  index: number,
  meter: string | undefined,
): QuantityName {
  const said = (at: number): QuantityName | undefined => {
    const spot = readings[at]?.spot;
    return spot && engine.valueOf(spot) !== null ? engine.quantityOf(spot) : undefined;
  };
  const here = said(index);
  if (here !== undefined && anyMeter.includes(here)) return here;
  if (meter === 'spot') return 'luminance';
  for (let at = index - 1; at >= 0; at -= 1) {
    const before = said(at);
    if (before !== undefined && incident.includes(before)) return before;
  }
  return 'fNumber';
}
