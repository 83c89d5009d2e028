/**
 * Tells, file by file, what the mutation tester found, as soon as it is through with one: long runs
 * may be broken off, and what they found until then is known.
 * @typedef {import('@stryker-mutator/api/core').MutantResult} Mutant
 * @typedef {import('@stryker-mutator/api/report').Reporter} Reporter
 */

/** Who is told. @type {{ told: (mutants: readonly Mutant[]) => void }} */
export const keeper = { told: () => undefined };

/** @implements {Reporter} */
class Keeper {
  static inject = /** @type {const} */ ([]);

  /** By file, how many are still to come. @type {Map<string, number>} */
  open = new Map();
  /** By file, those that are through. @type {Map<string, Mutant[]>} */
  found = new Map();

  /** @param {import('@stryker-mutator/api/report').MutationTestingPlanReadyEvent} event */
  onMutationTestingPlanReady({ mutantPlans }) {
    for (const { mutant } of mutantPlans)
      this.open.set(mutant.fileName, (this.open.get(mutant.fileName) ?? 0) + 1);
  }

  /** @param {Mutant} mutant */
  onMutantTested(mutant) {
    const { fileName } = mutant;
    const mutants = [...(this.found.get(fileName) ?? []), mutant];
    this.found.set(fileName, mutants);
    if (mutants.length === this.open.get(fileName)) keeper.told(mutants);
  }
}

/** Read by the mutation tester by this name. */
export const strykerPlugins = [{ kind: 'Reporter', name: 'keeper', injectableClass: Keeper }];
