import { buildBook } from '../build.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';

/** One row of the points: where the reading goes and what is wanted there. */
interface PlannedPoint {
  readonly point: string;
  readonly wanted?: string;
  readonly meter: string;
  /** Distance of its lamp now, the nearest it may stand, its output now. */
  readonly lamp?: readonly [distance: string, nearest: string, output: string];
}

interface PlannedSpot {
  readonly point: string;
  readonly wanted?: string;
}

/** What differs from one sheet of points to another. */
export interface PlannedPoints {
  readonly name: string;
  readonly purpose: string;
  readonly tolerance?: number;
  readonly points: readonly PlannedPoint[];
  readonly spots: readonly PlannedSpot[];
  readonly colours: readonly string[];
}

const head = 10;

/** Speed to meter at, exposure time and the three constants, as every reading needs them. */
const metered = '$B$4,$D$3,$B$6,$D$6,$F$6';

const choice = (typed: string, quantity?: PlannedCell['quantity']): PlannedCell => ({
  typed,
  role: 'choice',
  ...(quantity && { quantity }),
});
const given = (typed: string): PlannedCell => ({ typed, role: 'given', quantity: 'number' });
const label = (typed: string): PlannedCell => ({ typed: `'${typed}` });
const caption = (typed: string): PlannedCell => ({ typed: `'${typed}`, bold: true });

const camera: Readonly<Record<string, PlannedCell>> = {
  A1: caption('Camera'),
  A2: label('Speed'),
  B2: choice('800', 'iso'),
  C2: label('Frame rate'),
  D2: choice('25', 'frameRate'),
  E2: label('Shutter'),
  F2: choice('180°'),
  G2: label('Filters lose'),
  H2: choice('0', 'stops'),
  A3: label('Taking stop'),
  B3: choice('f/2.8', 'fNumber'),
  C3: label('Exposure time'),
  D3: { typed: '=EXPOSURETIME(F2,D2)' },
  E3: label('White'),
  F3: choice('3200 K', 'colourTemperature'),
  G3: label('Mains'),
  H3: choice('50 Hz', 'frequency'),
  A4: label('Meter at'),
  B4: { typed: '=EIAFTER(B2,H2)' },
  C4: label('Middle grey'),
  D4: { typed: '=SPOTLUMINANCE(B3,B4,D3,F6)' },
  E4: label('Expose key'),
  F4: choice('0', 'stops'),
  G4: { typed: '="On "&H3&" Hz mains: "&FLICKERCHECK(D3,D2,H3)', quantity: 'text' },
  A5: label('Camera holds above grey'),
  B5: choice('6.5', 'stops'),
  C5: label('below grey'),
  D5: choice('4.5', 'stops'),
  E5: label('Grey sits at'),
  F5: choice('0', 'stops'),
  A6: label('Dome constant C'),
  B6: given('340'),
  C6: label('flat C'),
  D6: given('250'),
  E6: label('spot K'),
  F6: given('12.5'),
};

const ratios: Readonly<Record<string, PlannedCell>> = {
  A8: label('Contrast by sides'),
  B8: { typed: `=FCONTRASTRATIO(E${head + 1},E${head + 2})` },
  C8: label('Lighting ratio'),
  D8: { typed: `=LIGHTINGRATIO(T${head + 1},T${head + 2})` },
  E8: label('Key set for'),
  F8: { typed: `=FNUMBERAT(E${head + 1},-F4)` },
  G8: label('Lamps off, under the fill side'),
  H8: { typed: `=STOPS(READINGLUX(N${head + 2},M${head + 2},${metered}),R${head + 2})` },
};

const captions = [
  'Point',
  'Wanted',
  'Reading',
  'Meter',
  'As f-number',
  'From key',
  'Verdict',
  'Light',
  'New distance',
  'New output',
  'Counted on',
  'Alone',
  'With',
  'Lamps off',
  'Stands at',
  'Nearest',
  'Output now',
  'Here',
  'Wanted light',
  'Its own',
  'Note',
];

const widths = [
  190, 84, 116, 84, 104, 96, 236, 84, 112, 112, 236, 96, 72, 96, 92, 92, 96, 92, 104, 92, 260,
];

function row(
  index: number,
  cells: Readonly<Record<string, PlannedCell>>,
): Record<string, PlannedCell> {
  return Object.fromEntries(
    Object.entries(cells).map(([column, cell]) => [`${column}${index}`, cell]),
  );
}

function letter(index: number): string {
  return String.fromCharCode(65 + index);
}

function pointRow(
  { point, wanted, meter, lamp = ['', '', ''] }: PlannedPoint,
  index: number,
): Record<string, PlannedCell> {
  const at = head + 1 + index;
  const isKey = index === 0;
  const from = isKey ? '$B$3' : `$E$${head + 1}`;
  const goal = isKey ? 'FNUMBERAT($B$3,$F$4)' : `FNUMBERAT($E$${head + 1},B${at})`;
  return row(at, {
    A: { typed: `'${point}` },
    B: isKey ? { typed: '=F4' } : { ...choice(wanted ?? '', 'stops') },
    C: { role: 'reading', target: `=${goal}` },
    D: { typed: meter, role: 'choice', quantity: 'text' },
    E: { typed: `=READINGF(C${at},D${at},${metered})` },
    F: { typed: `=FSTOPS(E${at},${from})` },
    G: { typed: `=VERDICT(F${at}-B${at})` },
    H: { typed: `=IF(G${at}="agrees","",LIGHTFACTOR(R${at},S${at},T${at}))`, quantity: 'factor' },
    I: {
      typed: `=IF(OR(G${at}="agrees",ISBLANK(O${at})),"",IF(ISBLANK(P${at}),NEWDISTANCE(O${at},H${at}),NEWDISTANCE(O${at},H${at},P${at})))`,
      quantity: 'length',
      decimals: 2,
    },
    J: {
      typed: `=IF(OR(G${at}="agrees",ISBLANK(Q${at})),"",NEWOUTPUT(Q${at},H${at}))`,
      quantity: 'share',
      decimals: 0,
    },
    K: {
      typed: `=IF(G${at}="agrees","",IF(ISBLANK(L${at}),"if this lamp alone lights the point",ROUND(100*T${at}/R${at},0)&" % of the light here is its own"))`,
      quantity: 'text',
    },
    L: { role: 'reading' },
    M: { typed: 'flat', role: 'choice', quantity: 'text' },
    N: { role: 'reading' },
    O: choice(lamp[0], 'length'),
    P: choice(lamp[1], 'length'),
    Q: choice(lamp[2], 'share'),
    R: { typed: `=READINGLUX(C${at},D${at},${metered})` },
    S: { typed: `=READINGLUX(${goal},D${at},${metered})` },
    T: {
      typed: `=IF(ISBLANK(L${at}),R${at},READINGLUX(L${at},M${at},${metered})-IF(ISBLANK(N${at}),0,READINGLUX(N${at},M${at},${metered})))`,
      quantity: 'illuminance',
    },
    U: { quantity: 'text' },
  });
}

function spotRow({ point, wanted }: PlannedSpot, at: number): Record<string, PlannedCell> {
  return row(at, {
    A: { typed: `'${point}` },
    B: choice(wanted ?? '', 'stops'),
    C: { role: 'reading', quantity: 'luminance' },
    D: { typed: 'spot', role: 'given', quantity: 'text' },
    E: { typed: `=SPOTF(C${at},$B$4,$D$3,$F$6)` },
    F: { typed: `=FSTOPS(E${at},$B$3)` },
    G: { typed: `=PLACEMENT(F${at},$B$5-$F$5,$D$5+$F$5)` },
    H: { typed: `=HEADROOM(C${at},$D$4,$B$5-$F$5)` },
    I: { typed: `=FOOTROOM(C${at},$D$4,$D$5+$F$5)` },
    J: { typed: `=IF(ISBLANK(B${at}),"",VERDICT(F${at}-B${at}))`, quantity: 'verdict' },
    U: { quantity: 'text' },
  });
}

function colourRow(source: string, at: number): Record<string, PlannedCell> {
  return row(at, {
    A: { typed: `'${source}` },
    C: { role: 'reading', quantity: 'colourTemperature' },
    D: { role: 'reading', quantity: 'duv' },
    E: { typed: `=MIRED(C${at})` },
    F: { typed: `=MIREDSHIFT($F$3,C${at})` },
    G: {
      typed: `=IF(ROUND(F${at},0)=0,"as the camera’s white",ROUND(ABS(F${at}),0)&" mired too "&IF(F${at}>0,"warm","blue"))`,
      quantity: 'text',
    },
    U: { quantity: 'text' },
  });
}

const captionRow = (at: number, texts: readonly string[]): Record<string, PlannedCell> =>
  row(at, Object.fromEntries(texts.map((text, index) => [letter(index), caption(text)])));

const spotCaptions = [
  'Spot reading',
  'Wanted',
  'Reading',
  'Meter',
  'As f-number',
  'From grey',
  'In the camera',
  'Room above',
  'Room below',
  'Against wanted',
];

const colourCaptions = ['Colour', '', 'Reading', 'Tint', 'Mired', 'From white', 'In words'];

const cautions = [
  'Lamps, clamps and scrims get hot: keep them clear of cloth, paper, sprinklers and people. Weigh down stands, tie off what hangs, keep water away from mains.',
  'Bright sources and the sun can hurt eyes. These sums plan light; local codes, a qualified electrician and a rigger decide what is safe.',
];

/** A sheet of points: camera, incident readings, spot readings, colour, cautions. */
export function pointsSheet({
  name,
  purpose,
  tolerance,
  points,
  spots,
  colours,
}: PlannedPoints): PlannedSheet {
  const spotHead = head + points.length + 2;
  const colourHead = spotHead + spots.length + 2;
  const cautionHead = colourHead + colours.length + 2;
  const rows = [
    ...points.map(pointRow),
    ...spots.map((spot, index) => spotRow(spot, spotHead + 1 + index)),
    ...colours.map((colour, index) => colourRow(colour, colourHead + 1 + index)),
    ...cautions.map((text, index) => ({ [`A${cautionHead + 1 + index}`]: { typed: text } })),
  ];
  return {
    name,
    title: name,
    purpose,
    phase: 'plan',
    template: 'key-fill-background',
    ...(tolerance !== undefined && { tolerance }),
    frozenColumns: 1,
    widths,
    cells: {
      ...camera,
      ...ratios,
      ...captionRow(head, captions),
      ...captionRow(spotHead, spotCaptions),
      ...captionRow(colourHead, colourCaptions),
      [`A${cautionHead}`]: caption('Cautions'),
      ...Object.assign({}, ...rows),
    },
  };
}

const sheet = pointsSheet({
  name: 'Key, fill and background',
  purpose: 'How far each reading is from what was planned, and what closes the gap.',
  points: [
    { point: 'Key side of face', meter: 'dome' },
    { point: 'Fill side of face', wanted: '-2', meter: 'dome' },
    { point: 'Back light on shoulder', wanted: '+1', meter: 'flat' },
    { point: 'Background left', wanted: '-2', meter: 'flat' },
    { point: 'Background right', wanted: '-2', meter: 'flat' },
  ],
  spots: [
    { point: 'Brightest in frame' },
    { point: 'Grey card at face', wanted: '0' },
    { point: 'Darkest in frame' },
  ],
  colours: ['Key colour', 'Fill colour', 'Window colour'],
});

export const build = () => buildBook({ title: 'Untitled', sheets: [sheet] });
