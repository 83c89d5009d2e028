import { buildBook, planMeans } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import { columnsOf } from '../columns.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { cautions, text } from '../rig.ts';
import { shelve } from '../shelve.ts';
import { frameTable, plannedFrames } from './frames.ts';

export interface PlannedThrow {
  readonly light: string;
  readonly fixture: string;
  readonly distance: string;
  readonly output?: string;
  readonly scrim?: string;
  readonly diffusion?: string;
  readonly gel?: string;
  readonly wanted?: string;
}

const rows = 8;
const head = 2;
const first = head + 1;
const number = (caption: string, width: number) => ({ caption, width, numbers: true }) as const;

const table = columnsOf({
  light: { caption: 'Light', width: 116 },
  fixture: { caption: 'Fixture', width: 160 },
  distance: number('Distance', 96),
  output: number('Output', 80),
  scrim: number('Scrim', 84),
  diffusion: number('Diffusion', 92),
  gel: number('Gel', 96),
  lux: number('There', 84),
  wanted: number('Wanted', 84),
  off: number('Off', 84),
  verdict: { caption: 'Verdict', width: 124 },
  comes: number('Comes at', 84),
  beam: number('Beam across', 96),
  softness: number('Softness', 80),
  holds: number('Holds from', 88),
  near: { caption: 'Near', width: 204 },
  draws: number('Draws', 76),
});

function throwRow(row: number, planned: PlannedThrow | undefined): Record<string, PlannedCell> {
  const cell = (name: Parameters<typeof table.letterOf>[0]) => `${table.letterOf(name)}${row}`;
  const once = (formula: string) => `=IF(ISBLANK(${cell('fixture')}),"",${formula})`;
  const kept = `${cell('output')}*STOPFACTOR(-SUM(${cell('scrim')}:${cell('gel')}))`;
  const face = `FIXTUREFARFIELD(${cell('fixture')},1)`;
  const aimed = `OR(ISBLANK(${cell('fixture')}),ISBLANK(${cell('wanted')}))`;
  return table.row(row, {
    light: text(planned?.light ?? ''),
    fixture: text(planned?.fixture ?? ''),
    distance: choice(planned?.distance ?? '', 'length'),
    output: choice(planned ? (planned.output ?? '100 %') : '', 'share'),
    scrim: choice(planned?.scrim ?? '', 'stops'),
    diffusion: choice(planned?.diffusion ?? '', 'stops'),
    gel: choice(planned?.gel ?? '', 'stops'),
    lux: {
      typed: once(`FIXTURELUX(${cell('fixture')},${cell('distance')})*${kept}`),
      quantity: 'illuminance',
    },
    wanted: choice(planned?.wanted ?? '', 'illuminance'),
    off: { typed: `=IF(${aimed},"",STOPS(${cell('lux')},${cell('wanted')}))`, quantity: 'stops' },
    verdict: { typed: `=IF(${aimed},"",VERDICT(${cell('off')}))`, quantity: 'verdict' },
    comes: {
      typed: `=IF(${aimed},"",FIXTUREDISTANCE(${cell('fixture')},${cell('wanted')}/(${kept})))`,
      quantity: 'length',
    },
    beam: {
      typed: once(`FIXTUREDIAMETER(${cell('fixture')},${cell('distance')})`),
      quantity: 'length',
    },
    softness: {
      typed: once(`IF(${face}=0,"a point",SOURCEANGLE(${face},${cell('distance')}))`),
      quantity: 'angle',
      decimals: 0,
    },
    holds: { typed: once(`FIXTUREFARFIELD(${cell('fixture')})`), quantity: 'length' },
    near: {
      // A round face as wide as the widest measure: what is really there is off by less.
      typed: once(
        `IF(${cell('distance')}<${cell('holds')},"near: up to "&ROUNDUP(LOG(1+(${face}/${cell('distance')}/2)^2,2),1)&" stop less","")`,
      ),
      quantity: 'text',
    },
    draws: {
      typed: once(`IFERROR(FIXTUREWATTS(${cell('fixture')}),"not stated")`),
      quantity: 'power',
    },
  });
}

const notes = [
  'There: from the fixture’s own file or data sheet, facing it on its aim line, less output, scrim, diffusion and gel. Comes at: where it gives what is wanted.',
  'Holds from: five times the lit face. Nearer than that a file promises too much, and Near says by how much at most; a panel typed in by hand is reckoned as the rectangle it is at any distance, and Near says what the inverse square law would promise too much.',
  'Diffusion close to the lamp is a loss. A frame in front of it is a source of its own: see below, or the set plan.',
];

/** What each light gives where it stands. */
export const distancesSheet = (planned: readonly PlannedThrow[]): PlannedSheet => {
  const frames = frameTable(first + rows + 2, plannedFrames);
  const below = first + rows + 2 + frames.rows;
  return {
    name: 'Fixtures and distances',
    title: 'Fixtures and distances',
    purpose:
      'What each light gives where it stands, how wide and how soft, and where it should go.',
    phase: 'rig',
    template: 'fixtures-and-distances',
    widths: table.widths,
    cells: {
      A1: { typed: 'Lights with a file or a data sheet', bold: true },
      ...table.captionRow(head, table.captions),
      ...Object.assign(
        {},
        ...Array.from({ length: rows }, (_, index) => throwRow(first + index, planned[index])),
      ),
      ...frames.cells,
      ...remarks('How it is reckoned', below + 1, notes),
      ...remarks('Cautions', below + 3 + notes.length, cautions),
    },
  };
};

export const loftThrows: readonly PlannedThrow[] = [
  {
    light: 'Back',
    fixture: 'Small profile 19°',
    distance: '3.2 m',
    output: '10 %',
    diffusion: '1/2',
    wanted: '240 lx',
  },
  {
    light: 'Canvas',
    fixture: 'Open face 800',
    distance: '2.8 m',
    output: '65 %',
    scrim: '1',
    wanted: '250 lx',
  },
  {
    light: 'Fill',
    fixture: 'Soft panel 60 × 30',
    distance: '2.1 m',
    output: '7 %',
    wanted: '54 lx',
  },
  {
    light: 'Window push',
    fixture: 'Fresnel 650 at spot',
    distance: `16'`,
    gel: '1 2/3',
    wanted: '600 lx',
  },
  { light: 'Frame', fixture: 'Frame 120 × 120', distance: '1.5 m', wanted: '900 lx' },
  { light: 'Bench', fixture: 'Tube 120', distance: '1.2 m', output: '40 %', wanted: '150 lx' },
];

export function build() {
  const means = planMeans();
  const book = buildBook({ title: 'Untitled', sheets: [distancesSheet(loftThrows)] }, means);
  shelve(book, means);
  return book;
}
