import { describe, expect, it } from 'vitest';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { shownText } from '../../../src/check/shown.ts';
import { openBook } from '../engine/support/openBook.ts';

const readings = [
  [
    '400 lx', // A
    '80 cd/m2', // B
    '2 m', // C
    '50 %', // D
    'f/4', // E
    '2 stops', // F
    '11 EV', // G
    '5000 K', // H
    '25 fps', // I
    '1/50 s', // J
    '2.3 kW', // K
    '230 V', // L
    '10 A', // M
    '900 cd', // N
    '3', // O: a plain number
    '180°', // P
    '1.2 kWh', // Q
    'ND 0.6', // R
    '100 lx', // S
    '4 h', // T
  ],
];

describe('a result knows what it measures and is written so', () => {
  it.each<[formula: string, quantity: QuantityName | undefined, shown: string]>([
    ['=A1*D1', 'illuminance', '200 lx'],
    ['=A1*O1', 'illuminance', '1200 lx'],
    ['=A1/S1', 'ratio', '4:1'],
    ['=A1*(A1/S1)', 'illuminance', '1600 lx'],
    ['=A1*2^F1', 'illuminance', '1600 lx'],
    ['=A1+S1', 'illuminance', '500 lx'],
    ['=A1-50', 'illuminance', '350 lx'],
    ['=AVERAGE(A1,S1)', 'illuminance', '250 lx'],
    ['=IF(A1>S1,A1,"")', 'illuminance', '400 lx'],
    ['=C1*C1', 'area', '4 m²'],
    ['=C1^2', 'area', '4 m²'],
    ['=PI()*C1^2', 'area', '12.57 m²'],
    ['=SQRT(C1*C1)', 'length', '2 m'],
    ['=C1*C1/C1', 'length', '2 m'],
    ['=N1/C1^2', 'illuminance', '225 lx'],
    ['=2^F1', 'factor', '× 4'],
    ['=LOG(A1/S1,2)', 'stops', '+2 stops'],
    ['=G1-9', 'ev', '2 EV'],
    ['=G1-G1', 'stops', '0 stops'],
    ['=G1+F1', 'ev', '13 EV'],
    ['=1000000/H1', 'mired', '200 mired'],
    ['=1/I1/2', 'time', '1/50 s'],
    ['=P1/360/I1', 'time', '1/50 s'],
    ['=J1*2', 'time', '1/25 s'],
    ['=K1/L1', 'current', '10 A'],
    ['=L1*M1', 'apparentPower', '2300 VA'],
    ['=K1*T1', 'energy', '9200 Wh'],
    ['=Q1/T1', 'power', '300 W'],
    ['=-LOG10(D1)', 'density', 'ND 0.3'],
    ['=10^-R1', 'share', '25 %'],
    ['=STOPS(A1,S1)', 'stops', '+2 stops'],
    ['=MAX(E1,E1)', 'fNumber', 'f/4'],
    ['=E1*E1', undefined, '16'],
    ['=A1*C1', undefined, '800'],
    ['=FOOTCANDLES(A1)', 'number', '37.161216'],
  ])('%s is %s: %s', (formula, quantity, shown) => {
    const { document, engine, type, spot, quantity: quantityAt } = openBook({ Walk: readings });
    type('A3', formula);
    expect(quantityAt('A3')).toBe(quantity);
    expect(shownText(document, engine, spot('A3'))).toBe(shown);
  });
});
