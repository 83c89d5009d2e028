import { strToU8, zipSync } from 'fflate';
import { addressAt } from '../../book/look.ts';
import { isPlainError, type PlainBook, type PlainCell, type PlainSheet } from '../plain/types.ts';
import { openFormula } from './formula.ts';
import { Styles, unseen } from './styles.ts';
import { element, escaped, paragraphs } from './xml.ts';

const mimetype = 'application/vnd.oasis.opendocument.spreadsheet';
const declaration = '<?xml version="1.0" encoding="UTF-8"?>\n';

const manifestNamespace = 'urn:oasis:names:tc:opendocument:xmlns:manifest:1.0';

const namespaces = {
  'xmlns:office': 'urn:oasis:names:tc:opendocument:xmlns:office:1.0',
  'xmlns:style': 'urn:oasis:names:tc:opendocument:xmlns:style:1.0',
  'xmlns:text': 'urn:oasis:names:tc:opendocument:xmlns:text:1.0',
  'xmlns:table': 'urn:oasis:names:tc:opendocument:xmlns:table:1.0',
  'xmlns:number': 'urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0',
  'xmlns:meta': 'urn:oasis:names:tc:opendocument:xmlns:meta:1.0',
  'xmlns:config': 'urn:oasis:names:tc:opendocument:xmlns:config:1.0',
  'xmlns:fo': 'urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0',
  'xmlns:of': 'urn:oasis:names:tc:opendocument:xmlns:of:1.2',
  'xmlns:dc': 'http://purl.org/dc/elements/1.1/',
};
const versioned = { ...namespaces, 'office:version': '1.2' };

/** The book as a file of ISO/IEC 26300. The same book is the same bytes. */
export function odsOf(book: PlainBook): Uint8Array {
  const parts = {
    'content.xml': content(book),
    'styles.xml': commonStyles,
    'settings.xml': settings(book),
    'meta.xml': element(
      'office:document-meta',
      versioned,
      element('office:meta', {}, `<dc:title>${escaped(book.title)}</dc:title>`),
    ),
  };
  const named = Object.entries({ ...parts, 'META-INF/manifest.xml': manifest(Object.keys(parts)) });
  return zipSync(
    {
      // First and not packed, so that the kind of file can be seen from outside.
      mimetype: [strToU8(mimetype), { level: 0 }],
      ...Object.fromEntries(named.map(([name, text]) => [name, strToU8(declaration + text)])),
    },
    { mtime: new Date(1980, 0, 1) },
  );
}

function manifest(names: readonly string[]): string {
  const entry = (path: string, type: string) =>
    element('manifest:file-entry', { 'manifest:full-path': path, 'manifest:media-type': type });
  return element(
    'manifest:manifest',
    { 'xmlns:manifest': manifestNamespace, 'manifest:version': '1.2' },
    entry('/', mimetype) + names.map((name) => entry(name, 'text/xml')).join(''),
  );
}

const commonStyles = element(
  'office:document-styles',
  versioned,
  element(
    'office:styles',
    {},
    element('style:style', { 'style:name': 'Default', 'style:family': 'table-cell' }) +
      element(
        'style:style',
        {
          'style:name': unseen,
          'style:family': 'table-cell',
          'style:parent-style-name': 'Default',
        },
        element('style:text-properties', { 'fo:color': '#ffffff' }),
      ),
  ),
);

/** Texts compare as they do here: whole, without regard to case, with * and ? for what may vary. */
const calculation = element('table:calculation-settings', {
  'table:case-sensitive': 'false',
  'table:search-criteria-must-apply-to-whole-cell': 'true',
  'table:use-regular-expressions': 'false',
  'table:use-wildcards': 'true',
});

function content(book: PlainBook): string {
  const styles = new Styles();
  const tables = book.sheets.map((sheet) => table(sheet, styles)).join('');
  const names = book.names
    .map(({ name, formula }) =>
      element('table:named-expression', {
        'table:name': name,
        'table:expression': `of:=${openFormula(formula)}`,
        'table:base-cell-address': `$'${(book.sheets[0]?.name ?? '').replaceAll("'", "''")}'.$A$1`,
      }),
    )
    .join('');
  const named = names === '' ? '' : element('table:named-expressions', {}, names);
  const hidden = element(
    'style:style',
    { 'style:name': 'hidden', 'style:family': 'table' },
    element('style:table-properties', { 'table:display': 'false' }),
  );
  const body = element(
    'office:body',
    {},
    element('office:spreadsheet', {}, calculation + tables + named),
  );
  return element(
    'office:document-content',
    versioned,
    element('office:automatic-styles', {}, hidden + styles.text) + body,
  );
}

function table(sheet: PlainSheet, styles: Styles): string {
  const width = Math.max(0, ...sheet.widths.keys(), ...sheet.cells.map(({ column }) => column)) + 1;
  const columns = Array.from({ length: width }, (_, index) => {
    const pixels = sheet.widths.get(index);
    return element('table:table-column', {
      'table:style-name': pixels === undefined ? undefined : styles.column(pixels),
    });
  });
  return element(
    'table:table',
    {
      'table:name': sheet.name,
      'table:style-name': sheet.hidden && 'hidden',
      'table:protected': sheet.protected && 'true',
    },
    columns.join('') + rows(sheet, styles),
  );
}

function rows({ cells }: PlainSheet, styles: Styles): string {
  const byRow = new Map<number, PlainCell[]>();
  for (const cell of cells) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  let text = '';
  let next = 0;
  for (const [row, inRow] of [...byRow].sort(([a], [b]) => a - b)) {
    if (row > next) {
      text += element(
        'table:table-row',
        { 'table:number-rows-repeated': row - next },
        element('table:table-cell', {}),
      );
    }
    text += element('table:table-row', {}, cellsOf(inRow, styles));
    next = row + 1;
  }
  return text === '' ? element('table:table-row', {}, element('table:table-cell', {})) : text;
}

function cellsOf(inRow: readonly PlainCell[], styles: Styles): string {
  let text = '';
  let next = 0;
  for (const cell of inRow.toSorted((a, b) => a.column - b.column)) {
    const gap = cell.column - next;
    if (gap > 0) text += element('table:table-cell', { 'table:number-columns-repeated': gap });
    text += cellOf(cell, styles);
    next = cell.column + 1;
  }
  return text;
}

function cellOf(cell: PlainCell, styles: Styles): string {
  const { value, formula, note, look } = cell;
  const noted = note === undefined ? '' : element('office:annotation', {}, paragraphs(note));
  return element(
    'table:table-cell',
    {
      'table:style-name': styles.cell(cell, addressAt(cell)),
      'table:formula': formula === undefined ? undefined : `of:=${openFormula(formula)}`,
      ...valueOf(value, look?.percent === true),
    },
    noted + (typeof value === 'string' ? paragraphs(value) : shown(value)),
  );
}

function valueOf(value: PlainCell['value'], percent: boolean): Record<string, string | number> {
  if (value === null || isPlainError(value)) return {};
  if (typeof value === 'boolean')
    return { 'office:value-type': 'boolean', 'office:boolean-value': String(value) };
  if (typeof value === 'string') return { 'office:value-type': 'string' };
  return { 'office:value-type': percent ? 'percentage' : 'float', 'office:value': value };
}

function shown(value: PlainCell['value']): string {
  if (value === null) return '';
  return paragraphs(isPlainError(value) ? value.error : String(value).toUpperCase());
}

/** Frozen rows and columns are kept with the settings of the view. */
function settings({ sheets }: PlainBook): string {
  const item = (name: string, type: string, value: string | number) =>
    element('config:config-item', { 'config:name': name, 'config:type': type }, String(value));
  const views = sheets.map(({ name, frozenRows, frozenColumns }) => {
    const split = (axis: 'Horizontal' | 'Vertical', count: number) =>
      count === 0
        ? ''
        : item(`${axis}SplitMode`, 'short', 2) + item(`${axis}SplitPosition`, 'int', count);
    const right = frozenColumns > 0 ? item('PositionRight', 'int', frozenColumns) : '';
    const bottom = frozenRows > 0 ? item('PositionBottom', 'int', frozenRows) : '';
    return element(
      'config:config-item-map-entry',
      { 'config:name': name },
      split('Horizontal', frozenColumns) + split('Vertical', frozenRows) + right + bottom,
    );
  });
  const tables = element(
    'config:config-item-map-named',
    { 'config:name': 'Tables' },
    views.join(''),
  );
  const view = element(
    'config:config-item-map-indexed',
    { 'config:name': 'Views' },
    element('config:config-item-map-entry', {}, item('ViewId', 'string', 'view1') + tables),
  );
  return element(
    'office:document-settings',
    versioned,
    element(
      'office:settings',
      {},
      element('config:config-item-set', { 'config:name': 'ooo:view-settings' }, view),
    ),
  );
}
