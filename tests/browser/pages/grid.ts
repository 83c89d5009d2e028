import {
  createGrid,
  type GridEvents,
  type GridKind,
  type GridView,
  type Place,
} from '../../../src/grid/index.ts';
import { testModel, type TestModel } from './grid-content.ts';

/** What the tests reach from outside: the grid, its model, and what it told its host. */
export interface TestBench {
  readonly view: GridView;
  readonly model: TestModel;
  readonly told: [name: string, ...details: unknown[]][];
  /** Sentence with which the next entries are refused; empty takes them. */
  refusal: string;
  /** Sentence with which an editor may not open. */
  closed: string;
  /** Keys the host takes for itself. */
  readonly taken: Set<string>;
  /** Clicks during an entry become references. */
  pointing: boolean;
  /** Where Enter goes. */
  next: ((from: Place) => Place | undefined) | null;
}

declare global {
  interface Window {
    bench: TestBench;
  }
}

const wanted = new URLSearchParams(location.hash.slice(1));
const model = testModel(Number(wanted.get('rows') ?? 60), Number(wanted.get('columns') ?? 26));
model.frozen = {
  rows: Number(wanted.get('frozenRows') ?? 0),
  columns: Number(wanted.get('frozenColumns') ?? 0),
};
const told: TestBench['told'] = [];
const tell = (name: string, ...details: unknown[]): void => {
  told.push([name, ...details.map((detail) => structuredClone(detail))]);
};

const events: GridEvents = {
  selected: (selection, origin) => tell('selected', selection, origin),
  edit(place, text, then) {
    tell('edit', place, text, then);
    if (bench.refusal) return { reason: bench.refusal };
    model.entries.set(`${place.row},${place.column}`, text);
    bench.view.paint([place]);
    return true;
  },
  mayEdit: () => (bench.closed ? { reason: bench.closed } : true),
  editing: (place, text) => tell('editing', place, text),
  clear: (selection) => tell('clear', selection),
  fill: (from, to) => tell('fill', from, to),
  resizeColumn(column, width) {
    tell('resizeColumn', column, width);
    model.widths.set(column, width);
    bench.view.refresh();
  },
  moveLines: (lines, to) => tell('moveLines', lines, to),
  fitColumn: (column) => tell('fitColumn', column),
  copy(event, selection) {
    event.clipboardData?.setData('text/plain', 'copied by the host');
    tell('copy', selection);
  },
  cut: (_event, selection) => tell('cut', selection),
  paste: (event, selection) => tell('paste', selection, event.clipboardData?.getData('text/plain')),
  menu: (request) => tell('menu', request),
  key(event, editing) {
    tell('key', event.key, editing);
    return bench.taken.has(event.key);
  },
  escapeGrid: () => tell('escapeGrid'),
  point(range, again) {
    tell('point', range, again);
    return bench.pointing;
  },
  next: (from) => bench.next?.(from),
  scrolled: (visible) => tell('scrolled', visible),
};

const bench: TestBench = {
  view: undefined as unknown as GridView,
  model,
  told,
  refusal: '',
  closed: '',
  taken: new Set(),
  pointing: false,
  next: null,
};
const host = document.querySelector<HTMLElement>('#host');
if (!host) throw new Error('The page has no host.');
const kind = (wanted.get('kind') ?? 'sheet') as GridKind;
Object.assign(bench, { view: await createGrid(host, model, events, kind) });
window.bench = bench;
document.body.dataset['ready'] = 'true';
