import { enter, type Entry } from '../book/make/enter.ts';
import { keyOf } from '../book/fixtures.ts';
import { refused, type Made } from '../book/make/made.ts';
import { describeCells } from '../book/make/properties.ts';
import type { RecordedLight } from '../book/records.ts';
import type { Means } from '../book/types.ts';
import { cellsOf, type Cells } from '../panels/handover/cells.ts';
import type { Look } from '../panels/views/look.ts';
import { words } from '../words/words.ts';
import { recordOf } from './record.ts';

const template = 'set-up-log';
const plans = 'set-plan';
/** What one cell of the log holds at most. */
const longest = 400;

/** When it is logged, as the clock on the wall shows it: `2026-09-23`, `14:05`. */
interface When {
  readonly date: string;
  readonly time: string;
}

/**
 * The set-up as it stands now, written into the next free rows of the log of the book: a row a
 * light, readings and ratios in the first. One transaction.
 */
export function logSetUp(
  look: Look,
  means: Means,
  sheet: string,
  when: When,
): Made & { readonly says?: string } {
  const id = look.document.sheets.find(({ properties }) => properties.template === template)?.id;
  if (id === undefined) return refused(words.log.noLog);
  const read = recordOf(look, sheet, { name: '-', place: '', ...when });
  if (!read.ok) return read;
  const log = logIn(cellsOf(look, id));
  if (!log) return refused(words.log.noColumns);
  const { record } = read;
  const lights = lightsOf(look, record.rig);
  const rows = Math.max(1, lights.length);
  if (log.next + rows - 1 > log.last) return refused(words.log.full(rows));
  const named = nextSetUp(log.lastScene, log.lastSetUp);
  const said = (label: string) =>
    record.camera.settings.find((setting) => setting.label === label)?.text ?? '';
  const shared = {
    scene: named.scene,
    'set-up': named.setUp,
    day: when.date,
    time: when.time,
    camera: words.log.camera(said('Meter at'), said('Exposure time'), said('Taking stop')),
  };
  const readings = record.points.flatMap(({ name, reading }) =>
    reading ? [`${name} ${reading.said}`] : [],
  );
  const first = {
    readings: readings.join(', '),
    ratio: record.ratios.map(({ label, text }) => `${label} ${text}`).join(', '),
    note: record.points.flatMap(({ name, note }) => (note ? [`${name}: ${note}`] : [])).join('; '),
  };
  const entries = Array.from({ length: rows }, (_, index): Readonly<Record<string, string>> => ({
    ...shared,
    ...(index === 0 && first),
    ...lightCells(lights[index]),
  })).flatMap((cells, index) =>
    Object.entries(cells).flatMap(([caption, text]): Entry[] => {
      const column = log.columns.get(caption);
      const plain = text.replaceAll('\u00a0', ' ').slice(0, longest);
      return column === undefined || plain === ''
        ? []
        : [{ sheet: id, row: log.next + index, column, text: plain }];
    }),
  );
  const typed = enter(look.document, means, entries, { label: words.log.log });
  if (!typed.ok) return typed;
  const photos = record.points.flatMap((point) => point.photos ?? []);
  const at = log.columns.get('photo');
  const pinned =
    photos.length > 0 && at !== undefined
      ? describeCells(
          look.document,
          means,
          [{ sheet: id, top: log.next, left: at, height: 1, width: 1 }],
          { photos },
        )
      : undefined;
  if (pinned && !pinned.ok) return pinned;
  const steps = [...typed.transaction.steps, ...(pinned?.transaction.steps ?? [])];
  return {
    ok: true,
    transaction: { ...typed.transaction, steps },
    says: words.log.logged(named.setUp, lights.length, readings.length),
  };
}

interface Log {
  readonly columns: ReadonlyMap<string, number>;
  /** The first free row, and the last that the log has room for. */
  readonly next: number;
  readonly last: number;
  readonly lastScene: string;
  readonly lastSetUp: string;
}

/** The table of the log: the lowest row of captions that has a scene, a light and what is found. */
function logIn(cells: Cells): Log | undefined {
  for (let head = cells.rows - 1; head >= 0; head -= 1) {
    const columns = new Map<string, number>();
    for (let column = 0; column < cells.columns; column += 1) {
      const caption = cells.label(head, column).toLowerCase();
      if (caption !== '') columns.set(caption, column);
    }
    const [scene, light, found] = ['scene', 'light', 'found'].map((name) => columns.get(name));
    if (scene === undefined || light === undefined || found === undefined) continue;
    let last = head;
    while (cells.at(last + 1, found)?.content.kind === 'formula') last += 1;
    let end = last;
    while (end > head && cells.said(end, scene) === '' && cells.said(end, light) === '') end -= 1;
    const said = (column: number | undefined) =>
      end === head || column === undefined ? '' : cells.said(end, column);
    return {
      columns,
      next: end + 1,
      last,
      lastScene: said(scene),
      lastSetUp: said(columns.get('set-up')),
    };
  }
  return undefined;
}

/** 12A is followed by 12B; what ends in no letter gets one. */
function nextSetUp(scene: string, setUp: string): { readonly scene: string; setUp: string } {
  if (setUp === '') return { scene: scene || '1', setUp: `${scene || '1'}A` };
  const letter = /[A-Y]$/.exec(setUp)?.[0];
  if (letter === undefined) return { scene, setUp: `${setUp}A` };
  return { scene, setUp: setUp.slice(0, -1) + String.fromCharCode(letter.charCodeAt(0) + 1) };
}

/** Each light once: from the plans of the set where there are any, else from every rig sheet. */
function lightsOf(look: Look, rig: readonly RecordedLight[]): readonly RecordedLight[] {
  const titles = new Set(
    look.document.sheets
      .filter(({ properties }) => properties.template === plans)
      .map(({ properties }) => properties.title || properties.name),
  );
  const planned = rig.filter(({ sheet }) => titles.has(sheet));
  const byName = new Map<string, RecordedLight>();
  for (const light of planned.length > 0 ? planned : rig) {
    const key = keyOf(light.name);
    if (!byName.has(key)) byName.set(key, light);
  }
  return [...byName.values()];
}

function lightCells(light: RecordedLight | undefined): Readonly<Record<string, string>> {
  if (!light) return {};
  const of = (...captions: readonly string[]): string =>
    captions
      .map((name) => light.says.find(({ caption }) => caption === name)?.text)
      .find(Boolean) ?? '';
  // What they lose: a loss has no sign.
  const [gel, diffusion] = [of('gel'), of('diffusion')].map((text) => text.replace(/^\+/, ''));
  return {
    light: light.name,
    fixture: of('fixture'),
    channel: of('channel', 'address'),
    circuit: of('circuit'),
    level: of('level', 'output'),
    gel: [gel && words.log.gel(gel), diffusion && words.log.diffusion(diffusion)]
      .filter(Boolean)
      .join(', '),
  };
}
