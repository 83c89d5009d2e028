/** @typedef {{ at: string, text?: string, number?: number, formula?: string, quantity?: string, role?: string, format?: object }} Cell */

const phases = ['recce', 'plan', 'order', 'rig', 'meter', 'match', 'log', 'strike', 'teach'];
const places = [
  'Sail loft, north windows',
  'Boat shed with the slipway doors open',
  'Ice house',
  'Net store',
  'Harbour wall after sunset, seen from the pilot boat',
];
const points = [
  'Key side of the sailmaker’s face at the cutting table',
  'Fill side of face',
  'Back light on shoulder, standing at the north window',
  'Canvas left',
  'Unvarnished planking behind the interview chair',
  'Rope bench',
];
const headings = [
  ['Point', 230],
  ['Wanted', 84],
  ['Reading', 96],
  ['From key', 96],
  ['Verdict', 150],
  ['Light', 84],
  ['Stands at', 90],
  ['Nearest', 84],
  ['Output now', 100],
  ['Colour', 90],
  ['From white', 100],
  ['Who looks after it', 150],
  ['Note', 220],
  ['Checked', 84],
];

const settings = {
  decimal: '.',
  illuminance: 'lx',
  length: 'm',
  shutter: 'time',
  fNumber: 'thirds',
  receptor: 'dome',
  domeConstant: 340,
  flatConstant: 250,
  reflectedConstant: 12.5,
  mainsHertz: 50,
  mainsVolts: 230,
  continuousShare: 0.8,
  currency: 'EUR',
  tolerance: 1 / 3,
  zone: 'Etc/UTC',
  page: 'A4',
  more: {},
};
const { decimal, illuminance, length, shutter } = settings;

/** The cells of one point; its row of the sheet counts from 1. @param {number} row */
function pointCells(row) {
  const place = /** @type {string} */ (points[(row * 5) % points.length]);
  const wanted = [-2, -1, 0, 1, -2.5][row % 5];
  const fNumber = 2 ** (((row * 7) % 17) / 6);
  return [
    { text: row <= points.length + 1 ? place : `${place}, position ${row - 1}` },
    { number: wanted, quantity: 'stops', role: 'choice' },
    row % 11 === 0
      ? { quantity: 'fNumber', role: 'reading' }
      : { number: fNumber, quantity: 'fNumber', role: 'reading' },
    { formula: `=FSTOPS(C${row},"f/2.8")` },
    { formula: `=VERDICT(D${row}-B${row})`, quantity: 'verdict' },
    { formula: `=2^(B${row}-D${row})`, quantity: 'factor' },
    { number: 1.5 + (row % 9) / 2, quantity: 'length', role: 'choice' },
    { number: 1.2, quantity: 'length', role: 'choice' },
    { number: ((row * 13) % 100) / 100, quantity: 'share', role: 'choice' },
    { number: 3000 + ((row * 170) % 3000), quantity: 'colourTemperature', role: 'reading' },
    { formula: `=MIREDSHIFT(3200,J${row})` },
    { text: row % 3 === 0 ? 'second electrician, with the rigger' : 'best boy' },
    { text: row % 4 === 0 ? 'only while the slipway doors are shut and the tide is out' : '' },
    { text: row % 2 === 0 ? 'yes' : 'no' },
  ];
}

/** @param {string} name @param {number} index @param {number} rows points on the sheet */
function sheet(name, index, rows) {
  const rowIds = Array.from({ length: rows + 1 }, (_, at) => `r${at}`);
  const columnIds = headings.map((_, at) => `c${at}`);
  const heads = headings.map(([text]) => ({ text, format: { bold: true } }));
  const lines = [heads, ...rowIds.slice(1).map((_, at) => pointCells(at + 2))];
  return {
    id: `s${index}`,
    properties: {
      name,
      title: name,
      purpose: 'Every point of the day, in the order in which the camera comes to it.',
      phase: phases[index % phases.length],
      template: null,
      tolerance: null,
      frozenRows: 1,
      frozenColumns: 1,
    },
    rows: rowIds,
    columns: columnIds,
    rowProperties: [],
    columnProperties: headings.map(([, size], at) => ({ id: `c${at}`, size })),
    areas: [],
    cells: lines.flatMap((line, row) =>
      line.flatMap((cell, at) =>
        'text' in cell && cell.text === '' ? [] : [{ at: `r${row} c${at}`, ...cell }],
      ),
    ),
  };
}

/** A book as a long day leaves it, as its file: 40 sheets, the first with 60 points in 14 columns. */
export function bigBook() {
  const sheets = Array.from({ length: 40 }, (_, index) => {
    const place = /** @type {string} */ (places[index % places.length]);
    return sheet(
      index === 0 ? 'Every point of the long day' : `${index}, ${place}`.slice(0, 31).trim(),
      index,
      index === 0 ? 60 : 6,
    );
  });
  const shelf = { version: 1, items: [] };
  return JSON.stringify({
    form: 'halfstop book',
    version: 1,
    title: 'Harbour Hours, the long day between two tides',
    settings,
    typedUnder: [{ decimal, illuminance, length, shutter }],
    sheets,
    names: [],
    figures: shelf,
    fixtures: shelf,
    spectra: shelf,
    records: shelf,
  });
}
