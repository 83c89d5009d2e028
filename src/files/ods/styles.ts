import type { NumberLook, PlainCell } from '../plain/types.ts';
import { numberStyle } from './numberStyle.ts';
import { element } from './xml.ts';

/** A name for each thing that looks like no other, and how all of them are written down. */
class Named<Thing> {
  readonly #names = new Map<string, string>();
  readonly #prefix: string;
  readonly #write: (name: string, thing: Thing) => string;
  text = '';

  constructor(prefix: string, write: (name: string, thing: Thing) => string) {
    this.#prefix = prefix;
    this.#write = write;
  }

  of(thing: Thing): string {
    const key = JSON.stringify(thing);
    const known = this.#names.get(key);
    if (known !== undefined) return known;
    const name = this.#prefix + String(this.#names.size + 1);
    this.#names.set(key, name);
    this.text += this.#write(name, thing);
    return name;
  }
}

interface CellLook {
  readonly data: string | undefined;
  readonly unlocked: boolean;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly align: string | undefined;
  readonly wrap: boolean;
  readonly hides: string | undefined;
}

const aligns = { left: 'start', centre: 'center', right: 'end' } as const;

/** The name of the style in which an error cannot be seen; it stands among the common styles. */
export const unseen = 'Waiting';

/** Collects the automatic styles of a document. */
export class Styles {
  readonly #numbers = new Named<NumberLook>('N', numberStyle);
  readonly #columns = new Named<number>('co', (name, pixels) =>
    element(
      'style:style',
      { 'style:name': name, 'style:family': 'table-column' },
      element('style:table-column-properties', {
        'style:column-width': `${(pixels / 96).toFixed(4)}in`,
      }),
    ),
  );
  readonly #cells = new Named<CellLook>('ce', writeCellStyle);

  column(pixels: number): string {
    return this.#columns.of(pixels);
  }

  /** Undefined for a cell that looks like any other. `address` with its sheet, where it may wait. */
  cell(cell: PlainCell, address: string): string | undefined {
    const { look, unlocked, bold, italic, align, wrap, waits } = cell;
    const plain = !look && !unlocked && !bold && !italic && !align && !wrap && !waits;
    if (plain) return undefined;
    return this.#cells.of({
      data: look && this.#numbers.of(look),
      unlocked: unlocked === true,
      bold: bold === true,
      italic: italic === true,
      align: align && aligns[align],
      wrap: wrap === true,
      hides: waits && address,
    });
  }

  get text(): string {
    return this.#numbers.text + this.#columns.text + this.#cells.text;
  }
}

function writeCellStyle(name: string, look: CellLook): string {
  const { data, unlocked, bold, italic, align, wrap, hides } = look;
  const cell = element('style:table-cell-properties', {
    'style:cell-protect': unlocked ? 'none' : undefined,
    'fo:wrap-option': wrap ? 'wrap' : undefined,
    'style:text-align-source': align && 'fix',
  });
  const paragraph = align ? element('style:paragraph-properties', { 'fo:text-align': align }) : '';
  const text = element('style:text-properties', {
    'fo:font-weight': bold ? 'bold' : undefined,
    'fo:font-style': italic ? 'italic' : undefined,
  });
  const map = hides
    ? element('style:map', {
        'style:condition': `is-true-formula(ISNA([.${hides}]))`,
        'style:apply-style-name': unseen,
        'style:base-cell-address': `.${hides}`,
      })
    : '';
  return element(
    'style:style',
    {
      'style:name': name,
      'style:family': 'table-cell',
      'style:parent-style-name': 'Default',
      'style:data-style-name': data,
    },
    cell + paragraph + text + map,
  );
}
