import * as all from './all.ts';
import { families, type AnyDefinition } from './define.ts';

export * from './all.ts';

const definitions: readonly AnyDefinition[] = Object.values(all);

/** Every function of the library, family by family, each in order of the alphabet. */
export const catalogue: readonly AnyDefinition[] = families.flatMap((family) =>
  definitions.filter((definition) => definition.family === family),
);

/** The same by name, in capitals. */
export const byName: ReadonlyMap<string, AnyDefinition> = new Map(
  catalogue.map((definition) => [definition.name, definition]),
);
