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
    numberHeading('In all'),
    numberHeading('Electronic'),
    numberHeading('The rest'),
  ]);
  for (const [index, line] of lines.entries()) {
    const row = first + index;
    cells[`A${row}`] = words(line);
    cells[`B${row}`] = amps(`=SUMIF(${down('B', circuits)},A${row},${down('G', circuits)})`);
    cells[`C${row}`] = amps(
      `=SUMIFS(${down('G', loads)},${down('F', loads)},A${row},${down('J', loads)},"yes")`,
    );
    cells[`D${row}`] = amps(`=B${row}-C${row}`);
  }
  const row = phases.last;
  const [all, electronic] = ['B', 'C'].map((column) => `${column}${first}:${column}${first + 2}`);
  const apart = `MAX(${all})-MIN(${all})`;
  cells[`A${row}`] = { ...words('Neutral at most'), note: neutralNote };
  cells[`B${row}`] = amps(
    `=NEUTRALAMPS(D${first},D${first + 1},D${first + 2})+${settings.neutralShare}*SUM(${electronic})`,
  );
  cells[`C${row}`] = {
    typed:
      `=IF(MAX(${all})=0,"no load yet",IF(${apart}<=MAX(${all})/5,"the phases are balanced",` +
      `"the fullest phase carries "&ROUND(${apart},1)&" A more than the emptiest"))`,
    quantity: 'text',
  };
  return cells;
}

const neutralNote =
  'On the safe side: what the unlike phases leave, and the electronic loads on top. Drivers without correction bring harmonics that add in the neutral and do not cancel.';

/** What a generator would have to give. */
export function supplyTable(): Cells {
  const row = supply.first;
  const watts = `SUMPRODUCT(${down('B', loads)},${down('C', loads)})`;
  const { volts, headroom } = settings;
  return {
    [`A${supply.head}`]: heading('Generator'),
    [`A${row}`]: words('Ours draw'),
    [`B${row}`]: { typed: `=${watts}`, quantity: 'power' },
    [`C${row}`]: { typed: `=SUM(${down('G', loads)})*${volts}`, quantity: 'apparentPower' },
    [`A${row + 1}`]: words('One phase, with headroom'),
    [`C${row + 1}`]: { typed: `=C${row}*(1+${headroom})`, quantity: 'apparentPower' },
    [`A${row + 2}`]: words('Three phases, as they are loaded'),
    [`C${row + 2}`]: {
      typed: `=3*MAX(${lines.map((line) => `SUMIF(${down('F', loads)},"${line}",${down('G', loads)})`).join(',')})*${volts}*(1+${headroom})`,
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
    [`B${row}`]: choice(planned?.amps ?? '', 'current'),
    [`C${row}`]: choice(planned?.length ?? '', 'length'),
    [`D${row}`]: choice(planned?.section ?? '', 'conductorArea'),
    [`E${row}`]: {
      typed: once(name, `VOLTDROP(B${row},C${row},D${row})`),
      quantity: 'voltage',
      decimals: 1,
    },
    [`F${row}`]: { typed: once(name, `E${row}/${volts}`), quantity: 'share', decimals: 1 },
    [`G${row}`]: {
      typed: once(name, `${volts}-E${row}`),
      quantity: 'voltage',
      decimals: 0,
    },
    [`H${row}`]: {
      typed: once(
        name,
        `IF(F${row}>${drop},"too much: shorter, thicker or less on it","within what is allowed")`,
      ),
      quantity: 'text',
    },
  };
}

export const leadTable = (planned: readonly PlannedLead[]): Cells => ({
  ...captionRow(leads.head, [
    heading('Lead'),
    numberHeading('Carries'),
    numberHeading('Length'),
    numberHeading('Section'),
    numberHeading('Lost'),
    numberHeading('of the mains'),
    numberHeading('Arrives'),
    heading('In words'),
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
        [`B${row}`]: choice(energy, 'energy'),
        [`C${row}`]: choice(watts, 'power'),
        [`D${row}`]: choice(efficiency, 'share'),
        [`E${row}`]: {
          typed: once(`A${row}`, `BATTERYHOURS(B${row},C${row},D${row})`),
          quantity: 'duration',
          decimals: 1,
        },
      };
    }),
  ),
});
