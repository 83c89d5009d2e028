import type { PlannedOrder, PlannedPackage } from './planned.ts';
import { order } from './tables.ts';

const [loft, shed, ice] = ['Sail loft', 'Boat shed', 'Ice house'];
const [house, own] = ['Quay Hire', 'our own'];

export const items = [
  {
    item: 'Fresnel 650 at flood',
    supplier: house,
    kind: 'fixture',
    spares: '1',
    each: '4.5 kg',
    volume: '0.04',
    rate: '18',
  },
  {
    item: 'Frame 120 × 120',
    supplier: house,
    kind: 'fixture',
    each: '3 kg',
    volume: '0.06',
    rate: '12',
  },
  {
    item: 'Small profile 19°',
    supplier: house,
    kind: 'fixture',
    each: '6 kg',
    volume: '0.05',
    rate: '16',
  },
  {
    item: 'Tube 120',
    supplier: own,
    kind: 'fixture',
    spares: '1',
    each: '1.4 kg',
    volume: '0.01',
    rate: '0',
  },
  {
    item: 'Open face 800',
    supplier: house,
    kind: 'fixture',
    each: '2.5 kg',
    volume: '0.03',
    rate: '15',
  },
  {
    item: 'Stand',
    supplier: house,
    kind: 'stand',
    spares: '1',
    each: '5 kg',
    volume: '0.02',
    rate: '3',
  },
  { item: 'Sandbag', supplier: house, kind: 'grip', each: '10 kg', volume: '0.01', rate: '1' },
  {
    item: 'Safety bond',
    supplier: house,
    kind: 'grip',
    spares: '2',
    each: '0.2 kg',
    volume: '0.001',
    rate: '0.50',
  },
  {
    item: 'Lead 20 m',
    supplier: house,
    kind: 'cable',
    spares: '1',
    each: '6 kg',
    volume: '0.02',
    rate: '2',
  },
  {
    item: 'Board with device 30 mA',
    supplier: house,
    kind: 'distribution',
    each: '4 kg',
    volume: '0.02',
    rate: '6',
  },
  {
    item: 'Generator 3 kVA',
    supplier: house,
    kind: 'distribution',
    each: '45 kg',
    volume: '0.2',
    rate: '60',
  },
] as const satisfies readonly PlannedOrder[];

/** The item of the order, read from its row, so that it is typed once. */
export const named = (item: (typeof items)[number]['item']): string =>
  `=$A$${order.first + items.findIndex((one) => one.item === item)}`;

type Need = readonly [item: (typeof items)[number]['item'], count: string, from?: string];
const at = (place: string, needs: readonly Need[]) =>
  needs.map(([item, count, from = '']) => ({ item: named(item), place, count, from }));

/** Three places and four days of shoot, with a day before and two for the way. Invented. */
export const harbourPackage: PlannedPackage = {
  budget: '1200',
  charged: '3',
  insurance: '4 %',
  firstDay: '2026-09-20',
  places: [
    { place: loft, days: ['preparation', 'shoot', 'shoot'] },
    { place: shed, days: ['', '', 'preparation', 'shoot'] },
    { place: ice, days: ['', '', '', '', 'travel', 'shoot', 'return'] },
  ],
  needs: [
    ...at(loft, [
      ['Fresnel 650 at flood', '1', 'plan'],
      ['Frame 120 × 120', '1', 'plan'],
      ['Small profile 19°', '1', 'plan'],
      ['Tube 120', '3', 'plan'],
      ['Stand', '=SUM(D15:D18)+1', 'lights and a frame'],
      ['Sandbag', '=D19'],
      ['Safety bond', '=SUM(D15:D18)', 'a light each'],
      ['Lead 20 m', '4'],
      ['Board with device 30 mA', '2'],
    ]),
    ...at(shed, [
      ['Open face 800', '2'],
      ['Frame 120 × 120', '1'],
      ['Stand', '=SUM(D24:D25)', 'lights'],
      ['Sandbag', '=2*D26', 'wind'],
      ['Lead 20 m', '3'],
      ['Board with device 30 mA', '1'],
    ]),
    ...at(ice, [
      ['Tube 120', '4'],
      ['Stand', '=D30', 'lights'],
      ['Generator 3 kVA', '1'],
      ['Lead 20 m', '5'],
    ]),
  ],
  order: items,
  used: [
    {
      item: 'Warming gel',
      supplier: 'Quay Hire',
      from: 'lights with gel',
      count: '4',
      width: '0.6 m',
      height: '0.5 m',
      waste: '20 %',
      holds: '9 m2',
      price: '60',
    },
    {
      item: 'Diffusion',
      supplier: 'Quay Hire',
      from: 'lights with diffusion',
      count: '3',
      width: '1.2 m',
      height: '1.2 m',
      waste: '10 %',
      holds: '9 m2',
      price: '55',
    },
    {
      item: 'Cloth tape',
      supplier: 'our own',
      from: 'leads, 6 m each',
      count: '12',
      width: '6 m',
      waste: '10 %',
      holds: '50 m',
      price: '12',
    },
  ],
};
