import { inCellsOf } from './row.ts';

export const others = [
  ...inCellsOf('power', [
    ['650', 650],
    ['650 W', 650],
    ['650w', 650],
    ['2.4 kW', 2400],
    ['2.4 KW', 2400],
    ['2,4kW', 2400],
    ['1,200 watts', 1200],
  ]),
  ...inCellsOf('apparentPower', [
    ['3 kVA', 3000],
    ['3 kva', 3000],
    ['800 VA', 800],
  ]),
  ...inCellsOf('voltage', [
    ['230', 230],
    ['230 V', 230],
    ['14.8v', 14.8],
  ]),
  ...inCellsOf('current', [
    ['16 A', 16],
    ['16 amps', 16],
    ['30 mA', 0.03],
  ]),
  ...inCellsOf('energy', [
    ['98 Wh', 98],
    ['1.2 kWh', 1200],
  ]),
  ...inCellsOf('charge', [
    ['14 Ah', 14],
    ['5200 mAh', 5.2],
  ]),
  // ASTM B258 diameters in mil: 12 AWG 80.81, 4/0 AWG 460, 36 AWG 5; a mil is 0.0254 mm.
  ...inCellsOf('conductorArea', [
    ['2.5', 2.5],
    ['2.5 mm2', 2.5],
    ['2,5 mm²', 2.5],
    ['1.5 sq mm', 1.5],
    ['4/0 AWG', (Math.PI / 4) * (460 * 0.0254) ** 2],
    ['AWG 36', (Math.PI / 4) * (5 * 0.0254) ** 2],
  ]),
  ...inCellsOf('frequency', [
    ['50', 50],
    ['50 Hz', 50],
    ['50hz', 50],
    ['1.2 kHz', 1200],
  ]),
  // International pound, exact since 1959.
  ...inCellsOf('weight', [
    ['14 kg', 14],
    ['14kg', 14],
    ['850 g', 0.85],
    ['30 lb', 13.607_771_1],
    ['30 lbs', 13.607_771_1],
  ]),
  ...inCellsOf('temperature', [
    ['20', 20],
    ['20 °C', 20],
    ['20 C', 20],
    ['68 °F', 20],
    ['-40 F', -40],
  ]),
  ...inCellsOf('duration', [
    ['10', 10],
    ['10 h', 10],
    ['10 hours', 10],
    ['90 min', 1.5],
    ['8 h 30 min', 8.5],
    ['8h30', 8.5],
    ['8:30', 8.5],
    ['2 d', 48],
    ['2 days', 48],
    ['1 1/2 h', 1.5],
  ]),
  ...inCellsOf('money', [
    ['1250', 1250],
    ['1,250.00', 1250],
    ['1.250,00', 1250],
    ["1'250.00", 1250],
    ['€18', 18],
    ['18.00 €', 18],
    ['EUR 18', 18],
    ['-5.50', -5.5],
  ]),
  ...inCellsOf('money', [['£1,250.50', 1250.5]], { writing: { currency: 'GBP' } }),
  ...inCellsOf('number', [
    ['12', 12],
    ['-0.5', -0.5],
    ['1 1/2', 1.5],
  ]),
  // Days since 30 December 1899, as OpenFormula counts them: 1 January 2000 is 36526.
  ...inCellsOf('dateTime', [
    ['2000-01-01', 36_526],
    ['2000-01-01 12:00', 36_526.5],
    ['2000-01-01T06:00', 36_526.25],
    ['14:06', 14.1 / 24],
    ['2:06 pm', 14.1 / 24],
    ['12:00 am', 0],
  ]),
  ...inCellsOf('truth', [
    ['yes', true],
    ['TRUE', true],
    ['No', false],
  ]),
  ...inCellsOf('text', [
    ['250 fc', '250 fc'],
    ['1/50', '1/50'],
  ]),
];
