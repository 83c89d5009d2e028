import type { RecordedLight } from '../book/records.ts';
import { captionsIn, cellsOf, type Cells } from '../panels/handover/cells.ts';
import type { Look } from '../panels/views/look.ts';

/** More lights than any set has. */
const most = 200;
const names = ['light', 'job', 'fixture'];

/**
 * The lights of every rig sheet, each with all that stands in its row under a caption: fixture,
 * job, place, distance, height, modifiers, gel, output. A sheet without a phase, a list taken in
 * from another program, counts as one where it has a column of fixtures.
 */
export function rigIn(look: Look, points: string): RecordedLight[] {
  return look.document.sheets
    .filter(({ id, properties: { phase } }) => id !== points && (phase === 'rig' || phase === null))
    .flatMap(({ id, properties }) => {
      const cells = cellsOf(look, id);
      const title = properties.title || properties.name;
      return headsOf(cells).flatMap((head) => lightsUnder(look, cells, head, title));
    })
    .slice(0, most);
}

interface Head {
  readonly row: number;
  readonly fixture: number;
  readonly captions: ReadonlyMap<string, number>;
}

/** Rows of captions that have one for the fixture. */
function headsOf(cells: Cells): readonly Head[] {
  const heads: Head[] = [];
  for (let row = 0; row < cells.rows; row += 1) {
    const captions = captionsIn(cells, row);
    const fixture = captions.get('fixture');
    if (fixture !== undefined) heads.push({ row, fixture, captions });
  }
  return heads;
}

function lightsUnder(look: Look, cells: Cells, head: Head, sheet: string): RecordedLight[] {
  const lights: RecordedLight[] = [];
  for (let row = head.row + 1; row < cells.rows; row += 1) {
    if (cells.said(row, head.fixture) === '') break;
    const says = [...head.captions].flatMap(([caption, column]) => {
      const text = cells.said(row, column);
      const value = look.engine.valueOf({ sheet: cells.sheet, row, column });
      return text === ''
        ? []
        : [{ caption, text: text.slice(0, 400), ...(typeof value === 'number' && { value }) }];
    });
    const of = (caption: string) => says.find((one) => one.caption === caption)?.text;
    const name = names.map(of).find(Boolean) ?? '';
    lights.push({ name: name.slice(0, 60), sheet, says });
  }
  return lights;
}
