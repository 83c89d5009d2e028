import { describe, expect, it } from 'vitest';
import DENSITYSTOPS from '../../functions/filter/DENSITYSTOPS.ts';
import DENSITYTRANSMISSION from '../../functions/filter/DENSITYTRANSMISSION.ts';
import DIFFUSIONLOSS from '../../functions/filter/DIFFUSIONLOSS.ts';
import FDIFFUSIONLOSS from '../../functions/filter/FDIFFUSIONLOSS.ts';
import FILTERSTACK from '../../functions/filter/FILTERSTACK.ts';
import NDFOR from '../../functions/filter/NDFOR.ts';
import NDREST from '../../functions/filter/NDREST.ts';
import STOPSDENSITY from '../../functions/filter/STOPSDENSITY.ts';
import STOPSTRANSMISSION from '../../functions/filter/STOPSTRANSMISSION.ts';
import TRANSMISSIONDENSITY from '../../functions/filter/TRANSMISSIONDENSITY.ts';
import TRANSMISSIONSTOPS from '../../functions/filter/TRANSMISSIONSTOPS.ts';
import { checkCases, inCell, number, refusal } from '../support/cases.ts';
import cases from './cases/filters.json' with { type: 'json' };

const labels = ['ND 0.3', 'ND 0.6', 'ND 0.9', 'ND 1.2', 'ND 1.8', 'ND 3.0'];

function stacked(): number[] {
  const stops = number(FILTERSTACK, ...[0.3, 0.6, 0.9].map((d) => number(DENSITYSTOPS, d)));
  return [number(STOPSDENSITY, stops), number(STOPSTRANSMISSION, stops), stops];
}

checkCases('filters', cases, {
  'filters-001-D-to-T': () => number(DENSITYTRANSMISSION, 0.3),
  'filters-002-T-to-D': () => number(TRANSMISSIONDENSITY, 0.125),
  'filters-004-D-to-stops-nominal': () => labels.map((label) => number(DENSITYSTOPS, label)),
  'filters-007-factor-from-stops': () => 1 / number(STOPSTRANSMISSION, 2 / 3),
  'filters-008-stops-from-factor': () => number(TRANSMISSIONSTOPS, 1 / 3),
  'filters-009-factor-from-D': () => 1 / number(DENSITYTRANSMISSION, 2),
  'filters-010-stack-D': stacked,
  'filters-016-E-after': () => 1200 * 0.32 * number(DENSITYTRANSMISSION, 0.6),
});

describe('ND labels (tables that filter makers print)', () => {
  /** Label, per cent printed, stops printed. */
  const printed = [
    ['ND 0.3', 50, 1],
    ['ND 0.6', 25, 2],
    ['ND 0.9', 12.5, 3],
    ['ND 1.2', 6.25, 4],
    ['ND 1.5', 3.125, 5],
    ['ND 1.8', 1.5625, 6],
    ['ND 2.1', 0.781_25, 7],
    ['ND 3.0', 0.097_656_25, 10],
  ] as const;

  it.each(printed)('%s passes %d %% and loses %d stops', (label, percent, stops) => {
    expect(number(DENSITYSTOPS, label)).toBeCloseTo(stops, 12);
    expect(100 * number(DENSITYTRANSMISSION, label)).toBeCloseTo(percent, 10);
  });

  it.each(printed)('%s is what NDFOR picks from a full kit for its stops', (label, _, stops) => {
    const kit = printed.map((row) => number(STOPSDENSITY, row[2]));
    expect(inCell(NDFOR, stops, ...kit)).toBe(label);
    expect(number(NDREST, stops, ...kit)).toBeCloseTo(0, 12);
  });

  it('a measured density is not a label: 3.0 loses 9.966 stops (ISO 5)', () => {
    expect(number(DENSITYSTOPS, 3)).toBeCloseTo(9.966, 3);
    expect(number(DENSITYSTOPS, 0.3)).toBeCloseTo(0.996_58, 5);
  });

  it('ND 8 is refused: it could be a density or a factor', () => {
    expect(refusal(DENSITYSTOPS, 'ND 8')).toMatch(/density or .*factor/i);
  });
});

describe('on set (common practice)', () => {
  it('four stops of ND are a 1.2', () => {
    expect(inCell(NDFOR, 4)).toBe('ND 1.2');
  });

  it('three stops over as reckoned still gets the 0.9', () => {
    const over = number(FDIFFUSIONLOSS, 'f/8', 'f/2.8');
    expect(inCell(NDFOR, over)).toBe('ND 0.9');
    expect(number(NDREST, over)).toBeCloseTo(0, 12);
  });

  it('a kit may be typed as labels, numbers or densities', () => {
    expect(inCell(NDFOR, 5, 'ND 0.3', 'ND 1.2')).toBe('ND 1.2');
    expect(inCell(NDFOR, 5, 0.3, 1.2)).toBe('ND 1.2');
    expect(inCell(NDFOR, 5, Math.log10(2), 4 * Math.log10(2))).toBe('ND 1.2');
    expect(inCell(NDFOR, 0.5, 'ND 0.15')).toBe('ND 0.15');
  });

  it('a double scrim loses a stop: half of the reading is left', () => {
    expect(number(DIFFUSIONLOSS, '200 fc', '100 fc')).toBe(1);
  });

  it('gel, diffusion and scrim add up in stops', () => {
    expect(number(FILTERSTACK, '2/3', '1 1/2', '1')).toBeCloseTo(3 + 1 / 6, 12);
  });

  it('nothing through a filter has no stops', () => {
    expect(refusal(TRANSMISSIONSTOPS, 0)).toBe('no light at transmission');
  });
});
