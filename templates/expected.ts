/** What a cell of a template must come to, and how that is worked out by hand. */
export interface ExpectedCell {
  readonly cell: string;
  readonly value: number | string;
  /** How far off a number may be: what was rounded on paper. */
  readonly within?: number;
  readonly why: string;
}

export const comesTo = (
  cell: string,
  value: number | string,
  why: string,
  within?: number,
): ExpectedCell => ({ cell, value, why, ...(within !== undefined && { within }) });
