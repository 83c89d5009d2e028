import { words } from '../../words/words.ts';
import type { Look } from '../views/look.ts';
import { cellsOf, tablesWith, type Cells, type Table } from './cells.ts';
import type { Listed } from './handover.ts';

const said = words.print.set;

type Row = Readonly<Record<keyof typeof said.captions, string>>;
type Say = (caption: string) => string;

/** Stops that are lost need no plus, and none are not said. */
const lost = (text: string) => (/^0\s/.test(text) ? '' : text.replace(/^\+/, ''));

/** What is said of a light of a set plan, out of the cells under its captions. */
const told: { readonly [Name in keyof Row]: (say: Say) => string } = {
  fixture: (say) => say('fixture'),
  stands: (say) => placeOf(say, ''),
  aimed: (say) => placeOf(say, 'aim '),
  output: (say) => say('output'),
  diffusion: (say) => lost(say('diffusion')),
  filter: (say) => lost(say('gel')),
  // Where a plan does not tell them apart.
  loss: (say) => (say('diffusion') || say('gel') ? '' : lost(say('loss'))),
  frame: (say) =>
    say('width') && say('height')
      ? said.frame(
          say('width'),
          say('height'),
          say('distance'),
          lost(say('through')),
          say('bounce'),
        )
      : '',
  circuit: (say) => say('circuit'),
  channel: (say) => say('channel') || say('address'),
};

const names = Object.keys(told) as (keyof Row)[];

function placeOf(say: Say, before: string): string {
  const [x, y, z] = ['x', 'y', 'z'].map((axis) => say(`${before}${axis}`));
  return x && y && z ? said.place(x, y, z) : '';
}

/**
 * The rig sheets that tell of what is handed over. One that names a place of the book in its title or
 * purpose tells of that place alone.
 */
export function rigSheetsFor(look: Look, id: string): readonly string[] {
  const { sheets } = look.document;
  const places = sheets.filter(({ properties }) => properties.phase === 'plan');
  return sheets
    .filter(({ id: other, properties: { phase, title, purpose } }) => {
      if (other === id || phase !== 'rig') return other === id;
      const text = `${title} ${purpose}`.toLowerCase();
      const named = places.filter(({ properties }) =>
        text.includes(properties.title.toLowerCase()),
      );
      return named.length === 0 || named.some((place) => place.id === id);
    })
    .map((sheet) => sheet.id);
}

/** The lights of sheets that say where each stands, one row a light: what one leaves open the next may say. */
export function setOf(look: Look, sheets: readonly string[]): Listed {
  const all = new Map<string, readonly [label: string, Row]>();
  for (const sheet of sheets) {
    const cells = cellsOf(look, sheet);
    for (const table of tablesWith(cells, ['fixture'], cells.named)) {
      if (!['x', 'y', 'z'].every((axis) => table.columns.has(axis))) continue;
      for (const row of table.rows) join(all, cells.named(row, 0), rowSays(cells, table, row));
    }
  }
  return listedOf([...all.values()]);
}

function rowSays(cells: Cells, { columns }: Table, row: number): Row {
  const say: Say = (caption) => {
    const column = columns.get(caption);
    return column === undefined ? '' : cells.said(row, column);
  };
  return Object.fromEntries(names.map((name) => [name, told[name](say)])) as Row;
}

function join(all: Map<string, readonly [string, Row]>, label: string, says: Row): void {
  if (says.fixture === '') return;
  const key = label.toLowerCase();
  const [first, before] = all.get(key) ?? [label, says];
  const both = names.map((name) => [name, before[name] || says[name]]);
  all.set(key, [first, Object.fromEntries(both) as Row]);
}

function listedOf(all: readonly (readonly [label: string, Row])[]): Listed {
  const used = names.filter((name) => all.some(([, row]) => row[name] !== ''));
  return {
    captions: [words.print.lightOf, ...used.map((name) => said.captions[name])],
    rows: all.map(([label, row]) => [label, ...used.map((name) => row[name])]),
  };
}
