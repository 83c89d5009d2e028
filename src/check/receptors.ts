import type { CellPlace, Engine, ExplainedArgument } from '../engine/types.ts';

/** log2(340 / 250): what the same light differs by between the two receptors' usual constants. */
const remark = 'Dome against flat: up to 0.44 stop of the difference is the meter; meter alike.';

const incident = ['dome', 'flat'];

/**
 * A remark where a formula holds readings of different incident receptors against each other: in
 * its own arguments, or one cell further back, where the readings were turned into f-numbers.
 */
export function receptorRemark(engine: Engine, place: CellPlace): string | undefined {
  const { call } = engine.explain(place);
  if (!call) return undefined;
  const meters = new Set(call.args.flatMap((argument) => meterOf(engine, argument) ?? []));
  return meters.size > 1 ? remark : undefined;
}

/** How the reading in the cell that an argument points at was metered. */
function meterOf(engine: Engine, { block }: ExplainedArgument): string | undefined {
  if (!block) return undefined;
  const { call } = engine.explain({ sheet: block.sheet, ...block.from });
  const meter = call?.args.find(({ name }) => name === 'meter')?.value;
  return typeof meter === 'string' && incident.includes(meter) ? meter : undefined;
}
