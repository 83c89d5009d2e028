import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { counting, day, timeOfDay } from './day.ts';
import { captions, hourRow, hours } from './hours.ts';

/** A place and a day. */
export interface PlannedDay {
  readonly place: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly date: string;
  /** How far the clock there is ahead of universal time on that day. */
  readonly ahead: string;
}

const head = 10;
const last = head + hours;

const cautions = [
  'Never look at the sun through a viewfinder, a lens or binoculars, and never leave a lens turned to it: eyes, sensors and shutters burn.',
  'A lamp close behind glass heats the pane until it cracks, the more so in the sun: leave air, and keep gel and curtains off the lamp.',
  'Hills, houses and cloud are not reckoned, and the light is good to about a stop. North is true north: a compass is some degrees off.',
  'Where it matters (boats, tides, flying, permits), go by the published almanac and by somebody who knows the place.',
];

const asDate = (typed: string): PlannedCell => choice(typed, 'dateTime');

/** The sun over one place on one day. */
export const sunSheet = ({
  place,
  latitude,
  longitude,
  date,
  ahead,
}: PlannedDay): PlannedSheet => ({
  name: 'Sun',
  title: 'Sun',
  purpose: 'Where the sun stands through the day, and how much light a clear sky gives.',
  phase: 'recce',
  template: 'sun',
  widths: [136, 108, 108, 108, 132, 112, 124],
  cells: {
    A1: words('Date'),
    B1: asDate(date),
    C1: words('Place'),
    D1: choice(place, 'text'),
    A2: words('Latitude'),
    B2: { ...choice(latitude, 'angle'), note: 'Degrees; north is positive, south negative.' },
    C2: words('Longitude'),
    D2: { ...choice(longitude, 'angle'), note: 'Degrees; east is positive, west negative.' },
    A3: words('Sun above'),
    B3: choice('10°', 'angle'),
    C3: words('Ahead of UTC'),
    D3: {
      ...choice(ahead, 'duration'),
      note: 'As the clock there stands on that day, summer time reckoned in.',
    },
    A4: words('Rows from'),
    B4: asDate('04:00'),
    C4: words('every'),
    D4: asDate('01:00'),
    A6: words('Sunrise'),
    B6: timeOfDay(day.sunrise),
    C6: words('Sunset'),
    D6: timeOfDay(day.sunset),
    A7: words('Highest at'),
    B7: timeOfDay(day.highestAt),
    C7: words('Altitude then'),
    D7: { typed: `=${day.highest}`, decimals: 1 },
    A8: words('Above it from'),
    B8: day.aboveFrom,
    C8: words('until'),
    D8: day.aboveUntil,
    ...captions(head),
    ...Object.assign(
      {},
      ...Array.from({ length: hours }, (_, index) => hourRow(head + 1 + index, index === 0)),
    ),
    ...remarks('Cautions', last + 2, cautions),
    ...counting,
  },
});

/** Invented. */
export const harbour = {
  place: 'Stonnel harbour',
  latitude: '55°',
  longitude: '-1.5°',
  ahead: '1 h',
} as const;

export const build = () =>
  buildBook({ title: 'Untitled', sheets: [sunSheet({ ...harbour, date: '2026-06-21' })] });
