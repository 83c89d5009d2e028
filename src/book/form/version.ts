/** What a file of ours says it is, and the version of the form written now. */
export const form = 'halfstop book';
export const version = 1;

/** Turns the JSON of one version into that of the next. */
export type Migration = (json: Record<string, unknown>) => Record<string, unknown>;

/** By the version they start from. Version 1 is the first there is. */
export const migrations: Readonly<Record<number, Migration>> = {};
