import type { Refusal } from '../../book/types.ts';
import { cellsOf, tablesWith, type Cells } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';
import { words } from '../../words/words.ts';
import type { LitSet, Piece, SetLight, SetPoint } from '../advice/set.ts';
import { modelOf } from './model.ts';
import { kitHead, rebuildTemplate } from './rebuild.ts';

/** What a rebuild sheet comes to, and where its answers go. */
interface ReadRebuild {
  readonly set: LitSet;
  /** Row of each point, in their order. */
  readonly rows: readonly number[];
  readonly column: number;
}

/** Reads the lit set off a rebuild sheet. Points that were not metered yet are left out. */
export function readRebuild(
  look: Look,
  sheet: string,
): ({ readonly ok: true } & ReadRebuild) | Refusal {
  const { template, tolerance } = look.document.sheet(sheet)?.properties ?? {};
  const cells = cellsOf(look, sheet);
  const table = tablesWith(cells, ['what to set'])[0];
  if (template !== rebuildTemplate || !table) return refused(words.repeat.noRebuild);
  const column = (caption: string) => table.columns.get(caption) ?? -1;
  const number = (row: number, caption: string) => numberAt(look, sheet, row, column(caption));
  const model = modelOf(look);
  const lights: SetLight[] = [];
  const named = new Map<string, number>();
  const rows: number[] = [];
  const points: (Omit<SetPoint, 'gives'> & {
    readonly own: number;
    readonly here: number;
    readonly metered: boolean;
  })[] = [];
  for (const row of table.rows) {
    const [here, wanted] = [number(row, 'here'), number(row, 'wanted light')];
    if (here === undefined || wanted === undefined || here <= 0 || wanted <= 0) continue;
    const name = cells.label(row, 0);
    const lamp = cells.said(row, column('lamp'));
    const light = named.get(lamp.toLowerCase()) ?? lights.length;
    if (light === lights.length) {
      lights.push(lightAt(cells, row, lamp || name, column, number));
      if (lamp !== '') named.set(lamp.toLowerCase(), light);
    }
    const own = Math.min(here, number(row, 'its own') ?? here);
    rows.push(row);
    const metered = number(row, 'alone') !== undefined;
    points.push({ name, wanted, own, here, metered, rest: 0, light });
  }
  if (points.length === 0) return refused(words.repeat.notMetered);
  return {
    ok: true,
    set: {
      lights,
      kit: kitOn(look, cells),
      tolerance: tolerance ?? look.document.settings.tolerance,
      points: points.map(({ own, here, metered, ...point }) => {
        // A lamp that was metered alone in this place is known better than any plan knows it.
        const shares = metered ? undefined : model(point.name);
        const modelled = shares && lights.map(({ name }) => here * (shares(name) ?? 0));
        const alone = lights.map((_, at) => (at === point.light ? own : 0));
        const gives = modelled && (modelled[point.light] ?? 0) > 0 ? modelled : alone;
        const sum = gives.reduce((all, one) => all + one, 0);
        return { ...point, gives, rest: Math.max(0, here - sum) };
      }),
    },
    rows,
    column: column('what to set'),
  };
}

const refused = (reason: string): Refusal => ({ ok: false, reason });

function numberAt(look: Look, sheet: string, row: number, column: number): number | undefined {
  if (column < 0) return undefined;
  const value = look.engine.valueOf({ sheet, row, column });
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

function lightAt(
  cells: Cells,
  row: number,
  name: string,
  column: (caption: string) => number,
  number: (row: number, caption: string) => number | undefined,
): SetLight {
  const positive = (caption: string) => {
    const value = number(row, caption);
    return value !== undefined && value > 0 ? value : undefined;
  };
  const entries = {
    distance: positive('stands at'),
    nearest: positive('nearest'),
    farthest: positive('farthest'),
    output: positive('output now'),
  };
  const [width, height] = [positive('face width'), positive('face height')];
  return {
    name,
    ...Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)),
    ...(width !== undefined && height !== undefined && { face: { width, height } }),
    pieces: cells
      .said(row, column('pieces in'))
      .split(/[,;]/)
      .map((piece) => piece.trim())
      .filter(Boolean),
  };
}

/** The pieces under their heading, as long as there are any. */
function kitOn(look: Look, cells: Cells): readonly Piece[] {
  const pieces: Piece[] = [];
  for (let row = 0; row < cells.rows; row += 1) {
    if (cells.label(row, 0) !== kitHead) continue;
    for (let next = row + 1; cells.said(next, 0) !== ''; next += 1) {
      const stops = numberAt(look, cells.sheet, next, 1);
      if (stops !== undefined && stops > 0) pieces.push({ name: cells.said(next, 0), stops });
    }
  }
  return pieces;
}
