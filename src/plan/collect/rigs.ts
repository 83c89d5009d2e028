import { keyOf } from '../../book/fixtures.ts';
import { addressAt } from '../../book/look.ts';
import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import { captionsIn, cellsOf, type Cells } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';

/** Fixtures of one name on one rig sheet. */
export interface RigItem {
  readonly name: string;
  readonly key: string;
}

/** The lights of a sheet, as an order has to count them. */
export interface Rig {
  readonly sheet: string;
  readonly title: string;
  /** Name, title and purpose: what says which place it is of. */
  readonly told: string;
  /** The column of fixtures with the row below it, so that rows put under the last are counted too. */
  readonly range: string;
  readonly items: readonly RigItem[];
}

const plans = 'set-plan';

/**
 * The rigs of a book: its set plans, or where it has none its other rig sheets and lists of lights,
 * each light on the first that names it.
 */
export function rigsOf(look: Look): readonly Rig[] {
  const { sheets } = look.document;
  const isPlan = (template: string | null | undefined) => template === plans;
  const planned = sheets.filter(({ properties }) => isPlan(properties.template));
  if (planned.length > 0) return planned.flatMap(({ id }) => rigOn(look, id, () => true));
  const known = new Set<string>();
  return sheets
    .filter(({ properties: { phase } }) => phase === 'rig' || phase === null)
    .flatMap(({ id }) =>
      rigOn(look, id, (light) => {
        const key = keyOf(light);
        return key === '' || !known.has(key) ? known.add(key) : undefined;
      }),
    );
}

/** None where the sheet has no lights that are counted. */
function rigOn(look: Look, sheet: string, counts: (light: string) => unknown): readonly Rig[] {
  const cells = cellsOf(look, sheet);
  const { name = '', title = '', purpose = '' } = look.document.sheet(sheet)?.properties ?? {};
  return headsOf(cells).flatMap(({ row: head, light, fixture }): Rig[] => {
    const items = new Map<string, RigItem>();
    let row = head + 1;
    // A row that is kept for a light may be empty between two.
    for (; cells.said(row, fixture) !== '' || cells.at(row, fixture)?.role; row += 1) {
      const said = cells.said(row, fixture);
      const key = keyOf(said);
      if (key !== '' && counts(cells.said(row, light)) && !items.has(key))
        items.set(key, { name: said, key });
    }
    if (items.size === 0) return [];
    const corner = (at: number) => addressAt({ row: at, column: fixture });
    const range = `${writeSheetPrefix(name)}${fixed(corner(head + 1))}:${fixed(corner(row))}`;
    const told = [name, title, purpose].join(' ').toLowerCase();
    const shown = isAlone(look, title) ? title : name;
    return [{ sheet, title: shown, told, range, items: [...items.values()] }];
  });
}

/** Two sheets of one template have one title until somebody gives them their own. */
const isAlone = ({ document }: Look, title: string): boolean =>
  title !== '' &&
  document.sheets.filter(({ properties }) => keyOf(properties.title) === keyOf(title)).length === 1;

const fixed = (address: string): string => address.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');

interface Head {
  readonly row: number;
  readonly light: number;
  readonly fixture: number;
}

/** Rows of captions that have one for the light and one for its fixture. */
function headsOf(cells: Cells): readonly Head[] {
  const heads: Head[] = [];
  for (let row = 0; row < cells.rows; row += 1) {
    const captions = captionsIn(cells, row);
    const [light, fixture] = [
      captions.get('light') ?? captions.get('job'),
      captions.get('fixture'),
    ];
    if (light !== undefined && fixture !== undefined) heads.push({ row, light, fixture });
  }
  return heads;
}
