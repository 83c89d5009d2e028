import { catalogue } from '../../../functions/index.ts';
import { isMeasured, isError } from '../../../functions/values.ts';
import { readSingle } from '../../../functions/arguments/single.ts';
import type { CallSettings } from '../../../functions/call.ts';
import type { AnyDefinition, Parameter } from '../../../functions/define.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { expand } from '../../formula/expand.ts';
import type { Call, Formula, Id, Layout, Node, Reference } from '../../formula/types.ts';
import { extentOf, lostText, writeReference } from '../../formula/write.ts';
import type { Spot } from '../../book/look.ts';
import { faultAbroad } from './abroad.ts';
import type { Helpers } from './helpers.ts';
import { forKind } from './readings.ts';
import { Writer } from './writer.ts';
import { words } from '../../words/words.ts';

/** A formula that any spreadsheet works out, or why there is none, as a sentence. */
export type PlainFormula =
  | { readonly ok: true; readonly text: string; readonly ours: boolean }
  | { readonly ok: false; readonly reason: string };

/** What is asked of the book while a formula is written out. */
export interface Around {
  readonly layout: Layout;
  readonly helpers: Helpers;
  settingsOf(sheet: Id): CallSettings;
  quantityOf(spot: Spot): QuantityName | undefined;
  /** A cell that waits to be filled in, now or whenever it is emptied. */
  mayBeBlank(spot: Spot): boolean;
}

/** Longer than this in one cell, some programs refuse a formula; helper cells take parts of it. */
const longest = 8_000;
/** A part longer than this may be written many times over by the function around it. */
const longPart = 120;

const definitions = new Map(catalogue.map((definition) => [definition.name, definition]));

class Impossible extends Error {}

/** The formula of a cell without our functions. `own` null: from nowhere, every sheet named. */
export function plainFormula(
  { shape, references }: Formula,
  home: Id,
  own: Id | null,
  around: Around,
): PlainFormula {
  try {
    const plain = new PlainWriter(references, home, own, around);
    const text = plain.node(shape.tree);
    if (text.length > longest) throw new Impossible(words.files.tooLongElsewhere);
    return { ok: true, text: `=${text}`, ours: plain.ours };
  } catch (fault) {
    if (fault instanceof Impossible) return { ok: false, reason: fault.message };
    throw fault;
  }
}

class PlainWriter extends Writer {
  ours = false;
  readonly #references: readonly Reference[];
  readonly #home: Id;
  readonly #own: Id | null;
  readonly #around: Around;

  constructor(references: readonly Reference[], home: Id, own: Id | null, around: Around) {
    super();
    this.#references = references;
    this.#home = home;
    this.#own = own;
    this.#around = around;
  }

  protected override reference(slot: number): string {
    const reference = this.#references[slot];
    return reference ? writeReference(reference, this.#own, this.#around.layout) : lostText;
  }

  /** Parts of what would be too long go to helper cells. */
  protected override fit(write: () => string, parts: readonly Node[]): string {
    const text = write();
    if (text.length <= longest) return text;
    for (const part of parts)
      if (this.node(part).length > longPart) this.replace(part, this.#helped(part));
    return write();
  }

  protected override call(call: Call): string {
    const definition = definitions.get(call.name);
    if (!definition) {
      const fault = faultAbroad(call.name);
      if (fault !== undefined) throw new Impossible(fault);
      return this.ordinary(call);
    }
    this.ours = true;
    const [first] = call.arguments;
    return this.#expanded(call, forKind(definition, this.#kindOf(first ?? undefined)));
  }

  #expanded(call: Call, definition: AnyDefinition): string {
    const texts = call.arguments.map((argument) => this.#argument(argument));
    const write = () => {
      const plain = expand(definition, texts, this.#around.settingsOf(this.#home));
      if (!plain.ok) throw new Impossible(plain.reason);
      return plain.text;
    };
    let text = write();
    if (text.length > longest / 4) {
      call.arguments.forEach((argument, index) => {
        if (argument && (texts[index]?.length ?? 0) > longPart)
          texts[index] = this.#helped(argument);
      });
      text = write();
    }
    const guards = call.arguments.flatMap((argument, index) =>
      argument ? this.#guards(argument, definition.parameters[index]) : [],
    );
    if (guards.length === 0) return `(${text})`;
    const [only] = guards;
    const blank = guards.length === 1 ? only : `OR(${guards.join(',')})`;
    return `IF(${blank ?? ''},NA(),${text})`;
  }

  #argument(argument: Node | null): string | undefined {
    return argument ? this.node(argument) : undefined;
  }

  /** A part of the formula in a cell of its own, seen from there. */
  #helped(part: Node): string {
    const from = new PlainWriter(this.#references, this.#home, null, this.#around);
    const text = from.node(part);
    if (text.length > longest) throw new Impossible(words.files.tooLongElsewhere);
    return this.#around.helpers.put(text);
  }

  /** While one of its readings is missing, the formula waits. */
  #guards(argument: Node, parameter: Parameter | undefined): readonly string[] {
    if (argument.kind !== 'reference') return [];
    const reference = this.#references[argument.slot];
    if (!reference || reference.kind === 'name' || reference.kind === 'lost') return [];
    const text = this.reference(argument.slot);
    if (reference.kind !== 'cell') return parameter?.range ? [`COUNT(${text})=0`] : [];
    const spot = this.#spot(reference);
    return spot && this.#around.mayBeBlank(spot) ? [`ISBLANK(${text})`] : [];
  }

  #spot(reference: Reference): Spot | undefined {
    const extent = extentOf(reference, this.#around.layout);
    return extent && { sheet: extent.sheet, row: extent.top, column: extent.left };
  }

  /** What the argument measures: by its cell, or by the unit written in the formula. */
  #kindOf(node: Node | undefined): QuantityName | undefined {
    if (node?.kind === 'text') {
      const settings = this.#around.settingsOf(this.#home);
      const slot = { name: '', parameter: anyReading, settings };
      const read = readSingle(slot, node.value);
      return !isError(read) && isMeasured(read) ? read.measured : undefined;
    }
    const reference = node?.kind === 'reference' ? this.#references[node.slot] : undefined;
    const spot = reference?.kind === 'cell' ? this.#spot(reference) : undefined;
    return spot && this.#around.quantityOf(spot);
  }
}

const anyReading: Parameter = {
  name: 'reading',
  quantity: 'measured',
  kinds: ['fNumber', 'illuminance', 'luminance', 'ev', 'angle', 'time'],
  help: '',
};
