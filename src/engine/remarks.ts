import { cautionOn, type CallSettings } from '../../functions/call.ts';
import { byName } from '../../functions/index.ts';
import { blank } from '../../functions/values.ts';
import { callsIn } from '../formula/callsIn.ts';
import type { Node } from '../formula/types.ts';
import type { CellValue } from './types.ts';
import { words } from '../words/words.ts';

/** Arguments outside what a standard recommends, and cautions, wherever they stand in a formula. */
export function remarksOn(
  tree: Node,
  valueOf: (argument: Node) => CellValue,
  settings: CallSettings,
): readonly string[] {
  const remarks: string[] = [];
  for (const call of callsIn(tree)) {
    const definition = byName.get(call.name);
    if (!definition) continue;
    const { name, parameters, remark, remarkFrom } = definition;
    if (remark ?? remarkFrom) {
      const args = call.arguments.map((node) => (node ? (valueOf(node) ?? blank) : undefined));
      const caution = cautionOn(definition, args, settings);
      if (caution !== undefined) remarks.push(caution);
    }
    for (const [index, { usual, name: parameter }] of parameters.entries()) {
      const argument = call.arguments[index];
      if (!usual || !argument) continue;
      const value = valueOf(argument);
      if (typeof value === 'number' && !usual.allows(value))
        remarks.push(words.engine.unusual(name, parameter, usual.says, usual.source, value));
    }
  }
  return remarks;
}

function mayRemark(name: string): boolean {
  const { parameters = [], remark, remarkFrom } = byName.get(name) ?? {};
  return Boolean(remark ?? remarkFrom) || parameters.some(({ usual }) => usual);
}

/** Whether a formula has arguments for which a standard recommends a range, or may be cautioned. */
export function hasUsual(tree: Node): boolean {
  for (const { name } of callsIn(tree)) if (mayRemark(name)) return true;
  return false;
}
