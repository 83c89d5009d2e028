import { isError } from '../../../functions/values.ts';
import { addressAt, cellAtSpot } from '../../book/look.ts';
import type { Document, Id } from '../../book/types.ts';
import type { Engine } from '../../engine/types.ts';

/** As far as anyone looks for a table. */
export const reach = { rows: 400, columns: 60 } as const;

export interface Ground {
  readonly document: Document;
  readonly engine: Pick<Engine, 'valueOf'>;
  readonly sheet: Id;
}

export function firstRow(matches: (row: number) => boolean): number | undefined {
  for (let row = 0; row < reach.rows; row += 1) if (matches(row)) return row;
  return undefined;
}

/** A cell that is needed holds an error or waits: its own sentence is the reason. */
export class Unread extends Error {}

export function readers({ document, engine, sheet }: Ground) {
  return {
    text(row: number, column: number): string {
      const content = cellAtSpot(document, { sheet, row, column })?.content;
      return content?.kind === 'text' ? content.text.trim() : '';
    },
    number(row: number, column: number): number | undefined {
      const value = engine.valueOf({ sheet, row, column });
      if (isError(value)) throw new Unread(`${addressAt({ row, column })}: ${value.message}`);
      return typeof value === 'number' ? value : undefined;
    },
  };
}
