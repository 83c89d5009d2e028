import { outerCall } from '../engine/index.ts';
import type { CellBlock, CellPlace, Engine } from '../engine/types.ts';
import { words } from '../words/words.ts';

/** log2(340 / 250): what the same light differs by between the two receptors' usual constants. */
const remark = words.check.receptors;

const incident = ['dome', 'flat'];

/**
 * A remark where a formula holds readings of different incident receptors against each other: in
 * its own arguments, or one cell further back, where the readings were turned into f-numbers.
 */
export function receptorRemark(engine: Engine, place: CellPlace): string | undefined {
  const call = outerCall(engine, place);
  if (!call) return undefined;
  const meters = new Set(call.blocks.flatMap((block) => meterOf(engine, block) ?? []));
  return meters.size > 1 ? remark : undefined;
}

/** Whether a formula holds several readings against each other that say how they were metered. */
export function holdsReadings(engine: Engine, place: CellPlace): boolean {
  const blocks = outerCall(engine, place)?.blocks ?? [];
  return blocks.filter((block) => block && givenMeter(engine, block) !== undefined).length > 1;
}

/** How the reading in the cell that an argument points at was metered. */
function meterOf(engine: Engine, block: CellBlock | undefined): string | undefined {
  const meter = block && givenMeter(engine, block);
  return typeof meter === 'string' && incident.includes(meter) ? meter : undefined;
}

function givenMeter(engine: Engine, { sheet, from }: CellBlock) {
  return outerCall(engine, { sheet, ...from })?.given('meter');
}
