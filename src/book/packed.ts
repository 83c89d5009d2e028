import { stepFromJson, stepToJson } from './form/stepjson.ts';
import type { StepJson } from './form/stepschema.ts';
import type { Block, Step, Transaction } from './types.ts';

/** What was done, and how it is taken back. */
export interface Done {
  readonly transaction: Transaction;
  readonly inverse: readonly Step[];
}

interface Text {
  readonly steps: readonly StepJson[];
  readonly inverse: readonly StepJson[];
  readonly go?: Block;
}

/** More cells than this stay as they are: writing them out would be felt in the change that does it. */
const most = 1_000;

const cellsOnly = (steps: readonly Step[]) =>
  steps.every(({ kind }) => kind === 'setCells') &&
  steps.reduce((sum, step) => sum + (step.kind === 'setCells' ? step.cells.length : 0), 0) <= most;

/**
 * A gesture on cells that lies far back, as text, which takes about half the room: it is its own
 * transaction, and is read again when it is undone or asked for its steps.
 */
class Packed implements Done, Transaction {
  readonly label: string;
  readonly #text: string;

  constructor({ transaction, inverse }: Done) {
    const { label, steps, go } = transaction;
    this.label = label;
    this.#text = JSON.stringify({
      steps: steps.map(stepToJson),
      inverse: inverse.map(stepToJson),
      go,
    });
  }

  get #read(): Text {
    return JSON.parse(this.#text) as Text;
  }

  get transaction(): Transaction {
    return this;
  }

  get go(): Block | undefined {
    return this.#read.go;
  }

  get steps(): readonly Step[] {
    return this.#read.steps.map(stepOf);
  }

  get inverse(): readonly Step[] {
    return this.#read.inverse.map(stepOf);
  }
}

/** What was written here can be read here: a text that cannot is a fault of ours. */
function stepOf(json: StepJson): Step {
  const step = stepFromJson(json);
  if ('reason' in step) throw new Error(step.reason);
  return step;
}

/** The same in less room, if it is a gesture on cells and no large one. */
export function pack(done: Done): Done {
  if (done instanceof Packed) return done;
  return cellsOnly(done.transaction.steps) && cellsOnly(done.inverse) ? new Packed(done) : done;
}
