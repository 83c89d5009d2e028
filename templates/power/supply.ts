import { choice, heading, numberHeading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow } from './circuits.ts';
import {
  batteries,
  circuits,
  down,
  leads,
  loads,
  once,
  phases,
  settings,
  supply,
} from './places.ts';

type Cells = Record<string, PlannedCell>;

const lines = ['L1', 'L2', 'L3'] as const;
const amps = (typed: string): PlannedCell => ({ typed, quantity: 'current', decimals: 1 });

/** Amps by phase, and what comes back in the neutral at worst. */
export function phaseTable(): Cells {
  const { first } = phases;
  const cells: Cells = captionRow(phases.head, [
    heading('Phase'),
    words(''),
    numberHeading('In all'),
    numberHeading('Electronic'),
    numberHeading('The rest'),
  ]);
  for (const [index, line] of lines.entries()) {
    const row = first + index;
    cells[`A${row}`] = words(line);
    cells[`C${row}`] = amps(`=SUMIF(${down('C', circuits)},A${row},${down('H', circuits)})`);
    cells[`D${row}`] = amps(
      `=SUMIFS(${down('G', loads)},${down('C', loads)},A${row},${down('J', loads)},"yes")`,
    );
    cells[`E${row}`] = amps(`=C${row}-D${row}`);
  }
  const row = phases.last;
  const [all, electronic] = ['C', 'D'].map((column) => `${column}${first}:${column}${first + 2}`);
  const apart = `MAX(${all})-MIN(${all})`;
  cells[`A${row}`] = { ...words('Neutral at most'), note: neutralNote };
  cells[`C${row}`] = amps(
    `=NEUTRALAMPS(E${first},E${first + 1},E${first + 2})+${settings.neutralShare}*SUM(${electronic})`,
  );
  cells[`B${row}`] = {
    typed:
      `=IF(MAX(${all})=0,"no load yet",IF(${apart}<=MAX(${all})/5,"the phases are balanced",` +
      `"fullest phase "&ROUND(${apart},1)&" A above the emptiest"))`,
    quantity: 'text',
  };
  return cells;
}

const neutralNote =
  'On the safe side: what the unlike phases leave, and the electronic loads on top. Drivers without correction bring harmonics that add in the neutral and do not cancel.';

/** What a generator would have to give. */
export function supplyTable(): Cells {
  const row = supply.first;
  const watts = `SUMPRODUCT(${down('D', loads)},${down('E', loads)})`;
  const { volts, headroom } = settings;
  return {
    [`A${supply.head}`]: heading('Generator'),
    [`A${row}`]: words('Ours draw'),
    [`C${row}`]: { typed: `=${watts}`, quantity: 'power' },
    [`D${row}`]: { typed: `=SUM(${down('G', loads)})*${volts}`, quantity: 'apparentPower' },
    [`A${row + 1}`]: words('One phase, with headroom'),
    [`D${row + 1}`]: { typed: `=D${row}*(1+${headroom})`, quantity: 'apparentPower' },
    [`A${row + 2}`]: words('Three phases, as they are loaded'),
    [`D${row + 2}`]: {
      typed: `=3*MAX(${lines.map((line) => `SUMIF(${down('C', loads)},"${line}",${down('G', loads)})`).join(',')})*${volts}*(1+${headroom})`,
      quantity: 'apparentPower',
    },
  };
}

export interface PlannedLead {
  readonly name: string;
  readonly amps: string;
  readonly length: string;
  readonly section: string;
}

function leadRow(row: number, planned: PlannedLead | undefined): Cells {
  const { volts, drop } = settings;
  const name = `A${row}`;
  return {
    [name]: choice(planned?.name ?? '', 'text'),
    [`C${row}`]: choice(planned?.amps ?? '', 'current'),
    [`D${row}`]: choice(planned?.length ?? '', 'length'),
    [`E${row}`]: choice(planned?.section ?? '', 'conductorArea'),
    [`F${row}`]: {
      typed: once(name, `VOLTDROP(C${row},D${row},E${row})`),
      quantity: 'voltage',
      decimals: 1,
    },
    [`G${row}`]: { typed: once(name, `F${row}/${volts}`), quantity: 'share', decimals: 1 },
    [`H${row}`]: {
      typed: once(name, `${volts}-F${row}`),
      quantity: 'voltage',
      decimals: 0,
    },
    [`B${row}`]: {
      typed: once(
        name,
        `IF(G${row}>${drop},"too much: shorter, thicker or less on it","within what is allowed")`,
      ),
      quantity: 'text',
    },
  };
}

export const leadTable = (planned: readonly PlannedLead[]): Cells => ({
  ...captionRow(leads.head, [
    heading('Lead'),
    heading('In words'),
    numberHeading('Carries'),
    numberHeading('Length'),
    numberHeading('Section'),
    numberHeading('Lost'),
    numberHeading('of the mains'),
    numberHeading('Arrives'),
  ]),
  ...Object.assign(
    {},
    ...Array.from({ length: leads.last - leads.head }, (_, index) =>
      leadRow(leads.first + index, planned[index]),
    ),
  ),
});

export interface PlannedBattery {
  readonly name: string;
  readonly energy: string;
  readonly watts: string;
  readonly efficiency: string;
}

export const batteryTable = (planned: readonly PlannedBattery[]): Cells => ({
  ...captionRow(batteries.head, [
    heading('On battery'),
    words(''),
    numberHeading('Battery'),
    numberHeading('Draws'),
    numberHeading('Efficiency'),
    numberHeading('Runs for'),
  ]),
  ...Object.assign(
    {},
    ...Array.from({ length: batteries.last - batteries.head }, (_, index): Cells => {
      const row = batteries.first + index;
      const { name = '', energy = '', watts = '', efficiency = '' } = planned[index] ?? {};
      return {
        [`A${row}`]: choice(name, 'text'),
        [`C${row}`]: choice(energy, 'energy'),
        [`D${row}`]: choice(watts, 'power'),
        [`E${row}`]: choice(efficiency, 'share'),
        [`F${row}`]: {
          typed: once(`A${row}`, `BATTERYHOURS(C${row},D${row},E${row})`),
          quantity: 'duration',
          decimals: 1,
        },
      };
    }),
  ),
});
