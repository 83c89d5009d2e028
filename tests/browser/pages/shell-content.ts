import { catalogue } from '../../../functions/index.ts';
import type { AnyDefinition } from '../../../functions/define.ts';
import { signal, type Signal } from '../../../src/panels/kit/signals.ts';
import type { HeadView, Shape, SheetEntry, SlipView, Target } from '../../../src/panels/shown.ts';
import type { Workbook } from '../../../src/panels/workbook.ts';

/** A workbook without a book behind it: fixed content, and a list of what panels asked for. */
export interface PaperWorkbook extends Workbook {
  readonly asked: [what: string, ...details: unknown[]][];
  readonly page: Signal<'start' | 'book'>;
}

const place = (row: number, column: number): Target => ({ sheet: 'key', from: { row, column } });

const point = (label: string, shape: Shape, words: string, row: number) => ({
  label,
  shape,
  words,
  target: place(row, 5),
});

const head: HeadView = {
  sheet: 'key',
  title: 'Key, fill and background',
  purpose:
    'How far each reading is from what was planned, and what closes the gap. Sail loft, all lights on.',
  tolerance: 0.25,
  ownTolerance: true,
  filtered: '',
  isHeld: true,
  agreement: '4 of 9 points agree, 4 are off, 1 waits',
  points: [
    point('Key side of face', 'agrees', 'taking stop', 4),
    point('Fill side of face', 'over', '1/3 stop over', 5),
    point('Back light on shoulder', 'agrees', 'agrees', 6),
    point('Canvas left', 'agrees', 'agrees', 7),
    point('Canvas right', 'over', '0.4 stop over', 8),
    point('Rope bench', 'over', '0.4 stop over', 9),
    point('Ice box door', 'waits', 'waiting for Reading', 10),
    point('Window gap', 'clips', 'clips by 1.1 stops', 11),
    point('Dark corner', 'agrees', 'agrees', 12),
  ],
};

const slip: SlipView = {
  address: 'E6',
  role: 'result',
  title: 'Fill side of face',
  caption: 'From key',
  value: { text: '−1 2/3', unit: 'stops' },
  facts: [
    { label: 'Wanted', text: '−2 ± 1/4' },
    { label: 'Off by', text: '1/3 stop over', shape: 'over' },
    { label: 'Reading', text: 'f/1.4 1/3' },
    { label: 'as light on a dome', text: '53.5 lx · 5.0 fc' },
    { label: 'Ratio, key side to fill side', text: '3.2:1' },
  ],
  row: [
    { label: 'Wanted', text: '−2 stops', target: place(5, 1) },
    { label: 'Verdict', text: '1/3 stop over', shape: 'over', target: place(5, 5) },
  ],
  why: {
    function: 'FSTOPS',
    handed: [
      { label: 'reading, C6', text: 'f/1.4 1/3' },
      { label: 'reference, key side', text: 'f/2.8' },
    ],
    worked: [
      { text: '2 × log2(', number: false },
      { text: '1.587', number: true },
      { text: ' / ', number: false },
      { text: '2.828', number: true },
      { text: ') = −1.667', number: false },
    ],
    summary: 'Stops from one f-number reading to another, at one speed and time.',
  },
  comesFrom: {
    more: 0,
    links: [
      { label: 'C6 Reading', target: place(5, 2) },
      { label: 'key_side', target: place(4, 2) },
    ],
  },
  goesTo: {
    more: 0,
    links: [
      { label: 'F6 Verdict', target: place(5, 5) },
      { label: 'Contrast by sides', target: place(1, 8) },
      { label: 'Rebuild in the shed E4', target: place(3, 4) },
    ],
  },
  remarks: [
    'The canvas was metered flat, the face with the dome: up to 0.44 stop of the difference is the meter.',
  ],
  note: '',
};

const sheet = (
  title: string,
  phase: SheetEntry['phase'],
  count?: string,
): Omit<SheetEntry, 'shown'> => ({
  id: title === head.title ? 'key' : title,
  title,
  phase,
  ...(count !== undefined && { count }),
});

const sheets = [
  sheet('Sail loft', 'recce'),
  sheet('Boat shed', 'recce'),
  sheet('Camera', 'plan'),
  sheet('Key, fill and background', 'plan', '4 off'),
  sheet('Reflected survey', 'plan'),
  sheet('Marks', 'plan'),
  sheet('Fixtures and distances', 'rig'),
  sheet('Power', 'rig', '11 A free'),
  sheet('Package', 'order'),
  sheet('Walk, loft', 'meter', '12 of 13'),
  sheet('Walk, shed', 'meter', '11 of 13'),
  sheet('Colour', 'match', '2 off'),
  sheet('Set-up log', 'log', '41'),
];

const command = (id: string, name: string, group: string, keys: string[] = []) => ({
  id,
  name,
  group,
  keys,
  search: [],
});

export function paperWorkbook(): PaperWorkbook {
  const asked: PaperWorkbook['asked'] = [];
  const ask =
    <Answer>(what: string, answer: Answer) =>
    (...details: unknown[]): Answer => {
      asked.push([what, ...details]);
      return answer;
    };
  const text = signal('=FSTOPS(C6, key_side)');
  const entry = signal({
    address: 'E6',
    label: 'From key, Fill side of face',
    text: text.value,
    typing: false,
    quantity: 'stops' as const,
    result: { text: '−1 2/3', unit: 'stops' },
  });
  return {
    asked,
    page: signal<'start' | 'book'>('book'),
    start: signal({
      templates: [
        {
          id: 'key-fill-background',
          title: 'Key, fill and background',
          purpose: 'How far each reading is from what was planned, and what closes the gap.',
        },
      ],
      sample: true,
      kept: [
        { id: 'a', title: 'Harbour Hours', when: 'today, 14:02', size: '48 kB' },
        { id: 'b', title: 'Ice house, second unit', when: '3 November', size: '1.2 MB' },
      ],
      bin: [],
      busy: false,
    }),
    title: signal('Harbour Hours'),
    updateReady: signal(false),
    versions: signal({ busy: false, versions: [] }),
    comparison: signal(null),
    save: signal({
      state: 'saved' as const,
      sentence: 'Saved 14:02, nothing leaves this device',
    }),
    settings: signal({
      decimal: '.',
      illuminance: 'lx',
      length: 'm',
      shutter: 'angle',
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
      zone: 'Europe/Lisbon',
      page: 'A4',
      clock: '24',
      more: {},
    } as const),
    agreement: signal('7 of 12 points agree, 3 are off, 2 wait'),
    remarks: signal({ count: 0, marks: [], notes: [] }),
    contents: signal(sheets.map((one) => ({ ...one, shown: one.id === 'key' }))),
    head: signal(head),
    entry,
    slip: signal(slip),
    foot: signal({
      facts: [],
      hint: 'Select readings to see their average in light and their spread in stops',
      roles: ['reading', 'choice', 'given'] as const,
    }),
    figures: {
      shown: signal([]),
      kinds: signal([]),
      form: (kind) => ({ kind, title: '', fields: {}, options: {} }),
      planned: (form) => ({ ...form, cells: form.fields, values: {} }),
      placed: (_figure, { name }) => ({ name, entries: [] }),
    },
    notice: signal(null),
    commands: signal([
      command('edit.undo', 'Undo typing in C6', 'edit', ['Ctrl+Z']),
      { ...command('edit.redo', 'Redo', 'edit', ['Ctrl+Y']), unavailable: 'Nothing to redo.' },
      command('book.new', 'New book', 'book'),
      command('book.open', 'Open a file', 'book', ['Ctrl+O']),
      command('book.saveFile', 'Save as a file', 'book', ['Ctrl+S']),
      command('rows.insertAbove', 'Insert rows above', 'rows'),
    ]),
    fixtures: signal([]),
    spectra: signal([]),
    names: signal([
      {
        id: 'n1',
        name: 'key_side',
        meaning: 'C5',
        value: { text: 'f/2.8' },
        target: place(4, 2),
      },
    ]),
    format: signal({ format: {}, units: ['stops'] }),
    functions: signal<readonly AnyDefinition[]>(catalogue),
    run: ask('run', true),
    show: ask('show', undefined),
    jump: ask('jump', undefined),
    jumpTo: (written) => {
      asked.push(['jumpTo', written]);
      return /^[A-Z]+\d+$/i.test(written) ? null : `There is no place called ${written}.`;
    },
    type: (typed) => {
      asked.push(['type', typed]);
      entry.value = { ...entry.value, text: typed, typing: true };
    },
    enter: (typed, then) => {
      asked.push(['enter', typed, then]);
      entry.value = { ...entry.value, typing: false };
      return true;
    },
    cancel: () => {
      asked.push(['cancel']);
      entry.value = { ...entry.value, text: text.value, typing: false };
    },
    tryOut: ask('tryOut', { text: '' }),
    say: ask('say', undefined),
    photo: () => Promise.resolve(undefined),
    propertiesOf: () => ({
      name: 'Key',
      title: head.title,
      purpose: head.purpose,
      phase: 'plan',
      template: null,
      tolerance: 0.25,
      frozenRows: 4,
      frozenColumns: 1,
      filter: null,
    }),
    filterHere: () => undefined,
    findNext: ask('findNext', 'C6, Fill side of face'),
  };
}
