import { buildBook } from '../build.ts';
import { choice, given, heading, numberHeading, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';

/** Per cent of the light: round figures, and those at whole stops. */
const shares = [100, 90, 80, 70, 60, 50, 40, 30, 25, 20, 15, 12.5, 10, 6.25, 5];

const head = 4;
const [lamp, white, allowed] = ['$B$1', '$D$1', '$B$2'];

const matching = [
  'Two tungsten lamps of one kind match when both give the same share, whatever that share is: dim them together.',
  'To take one down alone and keep its colour, use scrims, nets or distance. Blue gel brings a dimmed lamp back and costs light.',
  'The share is of the light, not the level on the desk: measure it. Lamps differ a little, old ones more; meter the colour.',
];

const cautions = [
  'Dimmed lamps and lampholders stay hot: keep them clear of cloth, paper and hands, and let them cool before they are moved.',
  'For incandescent lamps only. LED, discharge and fluorescent lamps follow other rules, and some are damaged by a dimmer.',
  'Long runs at a low level can blacken halogen lamps: take them up to full now and then.',
];

function shareRow(share: PlannedCell, row: number): Record<string, PlannedCell> {
  const off = `D${row}`;
  return {
    [`A${row}`]: share,
    [`B${row}`]: { typed: `=DIMMERSTOPS(A${row})` },
    [`C${row}`]: { typed: `=TUNGSTENKELVIN(${lamp},A${row})` },
    [off]: { typed: `=MIREDSHIFT(${white},C${row})` },
    [`E${row}`]: {
      typed: `=IF(ABS(${off})<=${allowed},"matches",ROUND(ABS(${off}),0)&" mired too "&IF(${off}>0,"warm","blue"))`,
      quantity: 'text',
    },
  };
}

/** The first row below the table: a share of one’s own. */
const own = head + 1 + shares.length;

/** What dimming does to a tungsten lamp, from full down to a twentieth of its light. */
export const dimmingSheet: PlannedSheet = {
  name: 'Tungsten dimming',
  title: 'Tungsten dimming',
  purpose: 'How warm a tungsten lamp turns as it is dimmed, and how far from the camera’s white.',
  phase: 'rig',
  template: 'tungsten-dimming',
  widths: [148, 116, 164, 116, 180],
  cells: {
    A1: words('Lamp at full'),
    B1: choice('3200 K', 'colourTemperature'),
    C1: words('Camera’s white'),
    D1: choice('3200 K', 'colourTemperature'),
    A2: words('Matches within'),
    B2: choice('10', 'mired'),
    [`A${head}`]: numberHeading('Light left'),
    [`B${head}`]: numberHeading('Stops lost'),
    [`C${head}`]: numberHeading('Colour temperature'),
    [`D${head}`]: numberHeading('From white'),
    [`E${head}`]: heading('In words'),
    ...Object.assign(
      {},
      ...shares.map((share, index) => shareRow(given(`${share} %`, 'share'), head + 1 + index)),
    ),
    ...shareRow(choice('35 %', 'share'), own),
    ...remarks('Matching', own + 2, matching),
    ...remarks('Cautions', own + 4 + matching.length, cautions),
  },
};

export const build = () => buildBook({ title: 'Untitled', sheets: [dimmingSheet] });
