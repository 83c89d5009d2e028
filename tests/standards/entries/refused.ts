import type { QuantityName, WritingSettings } from '../../../functions/quantities/index.ts';

/** An entry that a cell of that quantity must refuse, and what its sentence must say. */
export interface Refused {
  readonly cell: QuantityName;
  readonly typed: string;
  readonly says: string;
  readonly writing?: Partial<WritingSettings>;
}

function inCellsOf(
  cell: QuantityName,
  rows: readonly (readonly [typed: string, says: string])[],
  writing: Partial<WritingSettings> = {},
): readonly Refused[] {
  return rows.map(([typed, says]) => ({ cell, typed, says, writing }));
}

export const refused = [
  ...inCellsOf('illuminance', [
    ['bright', 'Expected an illuminance such as 250 lx, 25 fc or 2.5 klx; “bright” is not one.'],
    ['3.2 m', '3.2 m is a distance.'],
    ['80 nits', '80 nits is a luminance.'],
    ['12 kcd', '12 kcd is a luminous intensity.'],
    ['f/2.8', 'f/2.8 is an f-number.'],
    ['1/50', '“1/50” is not one.'],
    ['5600 K', '5600 K is a colour temperature.'],
    ['-250 lx', 'Illuminance must be zero or more; -250 lx was typed.'],
    ['1.2.3', '“1.2.3” is not one.'],
    ['12,34,56', '“12,34,56” is not one.'],
    ['250 lx?', '“250 lx?” is not one.'],
    ['lx', '“lx” is not one.'],
    ['#N/A', '“#N/A” is not one.'],
    ['1e999', '“1e999” is not one.'],
    ['250 2500', '“250 2500” is not one.'],
  ]),
  ...inCellsOf('luminance', [
    ['250 lx', '250 lx is an illuminance.'],
    ['grey', 'Expected a luminance such as 80 cd/m2, 80 nits or 23 fL'],
    ['-1 nit', 'Luminance must be zero or more'],
    ['80 cd', '80 cd is a luminous intensity.'],
  ]),
  ...inCellsOf('intensity', [['4000 lm', '4000 lm is a luminous flux.']]),
  ...inCellsOf('flux', [['650 W', '650 W is a power.']]),
  ...inCellsOf('length', [
    ['250 fc', 'Expected a distance such as 3.2 m or 10\'6"; 250 fc is an illuminance.'],
    ['near', 'Expected a distance such as 3.2 m or 10\'6"; “near” is not one.'],
    ['10\'14"', '“10\'14"” is not one.'],
    ['3 m 20', '“3 m 20” is not one.'],
    ['30°', '30° is an angle.'],
    ['2 d', '“2 d” is not one.'],
    ['3.2 miles', '“3.2 miles” is not one.'],
    ['4:1', '“4:1” is not one.'],
  ]),
  ...inCellsOf('length', [['near', 'such as 3,2 m']], { decimal: ',' }),
  ...inCellsOf('area', [['3.2 m', '3.2 m is a distance.']]),
  ...inCellsOf('angle', [
    ['half', 'Expected an angle such as 172.8°'],
    ['1/50 s', 'without a frame rate it gives no shutter angle'],
    ['10 ft', '10 ft is a distance.'],
  ]),
  ...inCellsOf('time', [
    ['180°', 'without a frame rate it gives no time. Write a time such as 1/50 s'],
    ['fast', 'Expected an exposure time such as 1/50, 1/50 s or 20 ms'],
    ['0', 'Exposure time must be more than zero'],
    ['-1/50', 'Exposure time must be more than zero'],
    ['1/0', '“1/0” is not one.'],
    ['25 fps', '25 fps is a frame rate.'],
    ['1:50', '“1:50” is not one.'],
  ]),
  ...inCellsOf('time', [['180', 'without a frame rate']], { shutter: 'angle' }),
  ...inCellsOf('frameRate', [
    ['0', 'Frame rate must be more than zero'],
    ['-24', 'Frame rate must be more than zero'],
    ['1/50 s', '1/50 s is an exposure time.'],
    ['180°', '180° is an angle.'],
    ['slow', 'Expected a frame rate such as 24, 23.976 or 25 fps'],
  ]),
  ...inCellsOf('fNumber', [
    ['wide open', 'Expected an f-number such as f/2.8, f/2.8 1/3, f/2.8+0.3 or T2.8'],
    ['1/50', '“1/50” is not one.'],
    ['4/8', '“4/8” is not one.'],
    ['0', '“0” is not one.'],
    ['-2.8', '“-2.8” is not one.'],
    ['f/', '“f/” is not one.'],
    ['f/2.81/3', '“f/2.81/3” is not one.'],
    ['f/2.8+1', '“f/2.8+1” is not one.'],
    ['5.6.5', '“5.6.5” is not one.'],
    ['250 lx', '250 lx is an illuminance.'],
    ['ISO 800', 'ISO 800 is a speed.'],
    ['2.8-4', '“2.8-4” is not one.'],
    ['4:1', '“4:1” is not one.'],
  ]),
  ...inCellsOf('iso', [
    ['fast', 'Expected a speed such as ISO 800 or EI 800'],
    ['0', 'Speed must be more than zero'],
    ['f/2.8', 'f/2.8 is an f-number.'],
    ['ISO', '“ISO” is not one.'],
  ]),
  ...inCellsOf('ev', [['1 stop', '1 stop is a number of stops.']]),
  ...inCellsOf('stops', [
    ['a bit', 'Expected a number of stops such as +1, -2/3 or 1 1/3 stops'],
    ['f/2.8', 'f/2.8 is an f-number.'],
    ['ND 0.6', 'ND 0.6 is a density.'],
    ['50 %', '50 % is a share.'],
    ['4:1', '“4:1” is not one.'],
    ['+1 under', '“+1 under” is not one.'],
    ['1 1/0', '“1 1/0” is not one.'],
    ['+-1', '“+-1” is not one.'],
  ]),
  ...inCellsOf('ratio', [
    ['4:0', 'A ratio to nothing has no value'],
    ['0', 'Ratio must be more than zero'],
    ['4:1:1', '“4:1:1” is not one.'],
    ['4 stops', '4 stops is a number of stops.'],
  ]),
  ...inCellsOf('factor', [
    ['-2x', 'Factor must be more than zero'],
    ['xx', 'Expected a factor such as 8x or 8'],
  ]),
  ...inCellsOf('density', [
    ['ND 8', 'density or factor? Write ND 0.9 for a factor of 8, or 8.0 for a density.'],
    ['ND8', 'density or factor?'],
    ['ND 2', 'Write ND 0.3 for a factor of 2'],
    ['-0.3', 'Density must be zero or more'],
    ['2 stops', '2 stops is a number of stops.'],
    ['light', 'Expected a density such as 0.6 or ND 0.6'],
  ]),
  ...inCellsOf('greenCorrection', [
    ['30 B', '“30 B” is not one.'],
    ['third minus green', 'half minus green'],
    ['-30M', '“-30M” is not one.'],
  ]),
  ...inCellsOf('share', [
    ['65', 'A share without % goes from 0 to 1. Write 65 % if that is meant.'],
    ['1.5', 'Write 1.5 % if that is meant.'],
    ['-5 %', 'Share must be zero or more'],
    ['1 stop', '1 stop is a number of stops.'],
  ]),
  ...inCellsOf('colourTemperature', [
    ['3.2k', 'Write 3200 K if that is meant.'],
    ['warm', 'Expected a colour temperature such as 5600 K'],
    ['178 mired', '178 mired is a mired value.'],
    ['-3200 K', 'Colour temperature must be more than zero'],
  ]),
  ...inCellsOf('mired', [['5600 K', '5600 K is a colour temperature.']]),
  ...inCellsOf('duv', [['green', 'Expected a Duv such as +0.0040']]),
  ...inCellsOf('chromaticity', [['x', 'Expected a chromaticity coordinate such as 0.3457']]),
  ...inCellsOf('power', [
    ['3 kVA', '3 kVA is an apparent power.'],
    ['16 A', '16 A is a current.'],
  ]),
  ...inCellsOf('conductorArea', [
    ['99 AWG', 'Wire gauges go from 4/0 to 40 AWG'],
    ['-2.5', 'Conductor area must be more than zero'],
  ]),
  ...inCellsOf('frequency', [['50 fps', '50 fps is a frame rate.']]),
  ...inCellsOf('temperature', [['5600 K', '5600 K is a colour temperature.']]),
  ...inCellsOf('duration', [
    ['8:75', '“8:75” is not one.'],
    ['long', 'Expected a length of time such as 10 h, 8 h 30 min or 2 d'],
  ]),
  ...inCellsOf('money', [
    ['$5', 'The workbook counts in EUR; $5 is another currency.'],
    ['18 CHF', 'is another currency'],
    ['free', '“free” is not one.'],
  ]),
  ...inCellsOf('number', [['12 lamps', 'Expected a number such as 12 or 0.5']]),
  ...inCellsOf('dateTime', [
    ['11/24/2026', 'Expected a date or a time such as 2026-11-24'],
    ['2026-02-30', 'There is no day 2026-02-30.'],
    ['25:00', '“25:00” is not one.'],
  ]),
  ...inCellsOf('truth', [['maybe', 'Expected yes or no such as yes, no, TRUE or FALSE']]),
];
