import type { Document } from '../../book/types.ts';
import { tableOf } from '../csv/write.ts';
import { odsOf } from '../ods/write.ts';
import { xlsxOf } from '../xlsx/write.ts';
import { plainBook, type OutOptions } from './plain.ts';
import type { Values } from './values.ts';

/** Forms that a book goes out in, by the endings of their files. */
export const outForms = ['xlsx', 'ods', 'csv', 'tsv'] as const;
export type OutForm = (typeof outForms)[number];

export const typeOf: Readonly<Record<OutForm, string>> = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  ods: 'application/vnd.oasis.opendocument.spreadsheet',
  csv: 'text/csv',
  tsv: 'text/tab-separated-values',
};

/** One file; in tables of text there is one for each sheet. */
export interface OutFile {
  /** Of the sheet, where the file holds only one. */
  readonly sheet?: string;
  readonly content: Uint8Array | string;
}

/** Writes a book in one of the forms of other programs. */
export async function filesOf(
  document: Document,
  values: Values,
  form: OutForm,
  options: OutOptions,
): Promise<readonly OutFile[]> {
  if (form === 'csv' || form === 'tsv') {
    return document.sheets.map((sheet) => ({
      sheet: sheet.properties.name,
      content: tableOf(document, values, sheet, form === 'csv' ? ',' : '\t'),
    }));
  }
  const plain = plainBook(document, values, options);
  return [{ content: form === 'xlsx' ? await xlsxOf(plain) : odsOf(plain) }];
}
