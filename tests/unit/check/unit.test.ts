import { describe, expect, it } from 'vitest';
import { checkBook, remarkLine, remarksAt } from '../../../src/check/book.ts';
import { setQuantity, setTarget } from '../../../src/book/make/properties.ts';
import { defineName } from '../../../src/book/make/names.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { openBook } from '../engine/support/openBook.ts';

/** What stands in row 1, by column. */
const readings = [
  [
    '400 lx', // A
    '80 cd/m2', // B
    '2 m', // C
    'f/4', // D
    '+1 stops', // E
    '50 %', // F
    '11 EV', // G
    '5600 K', // H
    '178 mired', // I
    '2.4 kW', // J
    '230 V', // K
    '7', // L: a plain number
    '30°', // M
    '25 fps', // N
    '1/50 s', // O
    '9 cd', // P
    'ND 0.6', // Q
    '16 A', // R
    '50 Hz', // S
    'f/5.6', // T
    '100 lx', // U
    '4 klm', // V
    'ISO 800', // W
    '0.3 kWh', // X
    'dome', // Y: text
  ],
  ['100 lx', '40 cd/m2', '3 m', '', '', '25 %', '', '3200 K'],
];

function sentencesFor(formula: string, set?: QuantityName): readonly string[] {
  const { document, means, engine, type, must, spot, idOf } = openBook({ Walk: readings });
  const region = { sheet: idOf('Walk'), top: 4, left: 0, height: 1, width: 1 };
  if (set) must(setQuantity(document, means, [region], set));
  type('A5', formula);
  return remarksAt(document, engine, spot('A5')).map(({ sentence }) => sentence);
}

describe('a formula whose quantities do not go together is marked', () => {
  it.each([
    [
      '=INVERSESQUARE(A1,C1,A2)',
      'INVERSESQUARE wants a distance as new distance; A2 is an illuminance. Point it at a distance, such as 3.2 m or 10\'6".',
    ],
    [
      '=A1+E1',
      'A1 is an illuminance and E1 is a number of stops: they cannot be added. LEVELAT gives the level so many stops away.',
    ],
    [
      '=SUM(D1,T1)',
      'SUM does not hold for f-numbers (D1). Light adds as the square of f-numbers: use FCOMBINE.',
    ],
    [
      '=AVERAGE(D1,T1)',
      'AVERAGE does not hold for f-numbers (D1). Light averages as the square of f-numbers: use FAVERAGE.',
    ],
    [
      '=AVERAGE(H1:H2)',
      'AVERAGE does not hold for colour temperatures (H1:H2). Mired values add and average as filters do: MIRED turns kelvin into mired, KELVIN turns it back.',
    ],
    [
      '=STOPS(A1,B1)',
      'STOPS holds levels of one kind against each other; A1 is an illuminance and B1 is a luminance. LUMINANCEOF says what luminance an illuminance comes to on a surface.',
    ],
    [
      '=SPREAD(A1:B2)',
      'SPREAD holds levels against each other, and A1:B2 holds an illuminance and a luminance. Use readings of one kind.',
    ],
    [
      '=IF(L1>2,A1,C1)',
      'IF gives one kind in every case; A1 is an illuminance and C1 is a distance. Check which cells are meant.',
    ],
    [
      '=VLOOKUP(C1,A1:C2,3,FALSE)',
      'VLOOKUP looks for C1, a distance, where an illuminance stands (A1:C2). Look for the same kind.',
    ],
    ['=COS(M1)', 'COS takes radians; M1 is an angle in degrees. Write COS(RADIANS(M1)).'],
    [
      '=A1>E1',
      'A1 is an illuminance and E1 is a number of stops: they cannot be held against each other. Check which cells are meant.',
    ],
    [
      '=10^A1',
      'An exponent is a plain number or a number of stops; A1 is an illuminance. Check which cell is meant.',
    ],
    [
      '=D1+T1',
      'D1 and T1 are both an f-number: added, they do not give another. Light adds as the square of f-numbers: FCOMBINE gives the reading of both together.',
    ],
  ])('%s', (formula, sentence) => {
    expect(sentencesFor(formula)).toEqual([sentence]);
  });

  it.each([
    ['=E1*A1', /they cannot be multiplied\. LEVELAT/],
    ['=D1*(A1/A2)', /FACTORSTOPS/],
    ['=E1+F1', /TRANSMISSIONSTOPS/],
    ['=E1+A1/A2', /a ratio.*FACTORSTOPS/],
    ['=E1+Q1', /DENSITYSTOPS/],
    ['=H1+I1', /KELVINTHROUGH/],
    ['=D1-T1', /FWITHOUT/],
    ['=G1+G1', /add stops to one/],
    ['=W1-E1', /EIAFTER/],
    ['=SUM(A1:C1)', /A1:C1 holds an illuminance and a luminance\. Narrow the range/],
    ['=MAX(A1,C1)', /MAX takes values of one kind/],
    ['=INDEX(A1:C2,1,1)+C1', /INDEX.* is an illuminance and C1 is a distance/],
    ['=SUMIF(C1:C2,A1,A1:A2)', /SUMIF looks for A1, an illuminance/],
    ['=MATCH(D1,A1:A2,0)', /MATCH looks for D1, an f-number/],
    ['=COUNTIF(A1:A2,C1)', /COUNTIF looks for C1/],
    ['=SUMIFS(A1:A2,A1:A2,A1,C1:C2,D1)', /SUMIFS looks for D1, an f-number/],
    ['=COUNTIFS(A1:A2,C1)', /COUNTIFS looks for C1/],
    ['=MINIFS(A1:A2,C1:C2,D1)', /MINIFS looks for D1/],
    ['=MATCH(A1,Y1:Y1,0)', /MATCH looks for A1, an illuminance, where a text stands/],
    ['=DAYS(A1,L1)', /a date or a time as end; A1 is an illuminance/],
    ['=N(A1)+C1', /cannot be added/],
    ['=HIRE(L1,L1,L1)*HIRE(L1,L1,L1)', /both a sum of money: multiplied, they do not give another/],
    ['=VLOOKUP(A1,A1:C2,2,FALSE)+C1', /is a luminance and C1 is a distance/],
    ['=IFERROR(A1,D1)', /IFERROR gives one kind/],
    ['=CHOOSE(L1,A1,O1)', /CHOOSE gives one kind/],
    [
      '=READINGLUX(C1,"dome",W1,O1)',
      /an f-number, an illuminance, a luminance or an exposure value/,
    ],
    ['=EXPOSURETIME(S1,N1)', /an angle or an exposure time as shutter; S1 is a frequency/],
    ['=SHUTTERTIME(M1,S1)', /a frame rate as fps; S1 is a frequency\. The mains and the camera/],
    ['=FLICKERTIME(N1)', /a frequency as mains; N1 is a frame rate/],
    ['=LEVELAT(A1,F1)', /a number of stops as stops; F1 is a share/],
    ['=LEVELAT(A1,A1/A2)', /is a ratio\. STOPS turns two levels/],
    ['=DENSITYSTOPS(E1)', /a density as density; E1 is a number of stops/],
    ['=READINGF(A1,C1,W1,O1)', /a text as meter; C1 is a distance/],
    ['=AMPS(X1,K1,0.9)', /a power as watts; X1 is an energy/],
    ['=MIREDSHIFT(I1,H1)', /a colour temperature as from; I1 is a mired value/],
    ['=NEWOUTPUT(F1,F2)', /a factor as factor; F2 is a share/],
    ['=INVERSESQUARE("f/4",C1,C2)', /an illuminance as lux; "f\/4" is an f-number/],
    ['=ROUND(STOPS(A1,C1),1)', /a level of light as reference; C1 is a distance/],
    ['=IF(A1>B1,"over","under")', /cannot be held against each other/],
    ['=A1+A1*C1', /A1\*C1 is an amount in cd·m⁻¹/],
    ['=VERDICT(E1)*A1', /a verdict and A1 is an illuminance/],
    ['=FOOTCANDLES(A1)+A1', /a plain number of footcandles.*let the workbook show footcandles/],
    ['=A1=D1', /cannot be held against each other/],
  ])('%s', (formula, pattern) => {
    const sentences = sentencesFor(formula);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(pattern);
  });
});

describe('a result of one quantity in a cell that says another is marked', () => {
  it.each<[string, QuantityName, RegExp]>([
    [
      '=A1*F1',
      'length',
      /^The formula comes to an illuminance; the cell says distance\. Change the formula/,
    ],
    [
      '=A1/A2',
      'stops',
      /a ratio; the cell says number of stops\. STOPS turns two levels into stops/,
    ],
    ['=C1*C2', 'length', /an area; the cell says distance/],
    ['=FOOTCANDLES(A1)', 'illuminance', /a plain number of footcandles; the cell says illuminance/],
    ['=A1/10.764', 'illuminance', /a plain number of footcandles; the cell says illuminance/],
    ['=FOOTLAMBERTS(B1)', 'luminance', /a plain number of footlamberts; the cell says luminance/],
    ['=STOPS(A1,A2)', 'fNumber', /a number of stops; the cell says f-number/],
    ['=A1*2', 'stops', /an illuminance; the cell says number of stops/],
    ['=A1', 'luminance', /LUMINANCEOF/],
    ['=J1/K1', 'power', /a current; the cell says power/],
    ['=E1', 'ratio', /STOPFACTOR/],
    ['=O1', 'duration', /exposure time is kept in seconds/],
    ['=LOG(A1/A2,2)', 'density', /a number of stops; the cell says density/],
    ['=SQRT(C1*C2)', 'area', /a distance; the cell says area/],
    ['=1000000/H1', 'colourTemperature', /a mired value; the cell says colour temperature/],
    ['=A1&" lx"', 'illuminance', /a text; the cell says illuminance/],
  ])('%s in a cell of %s', (formula, set, pattern) => {
    const sentences = sentencesFor(formula, set);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(pattern);
  });
});

describe('a formula that is right, or may be, is left alone', () => {
  it.each<[string, QuantityName?]>([
    ['=A1+A2'],
    ['=A1+50'],
    ['=A1+L1'],
    ['=A1*F1', 'illuminance'],
    ['=A1*2', 'illuminance'],
    ['=A1/A2', 'ratio'],
    ['=A1/A2', 'factor'],
    ['=A1/A2', 'share'],
    ['=1-F1', 'share'],
    ['=E1+1'],
    ['=E1/2'],
    ['=G1+E1', 'ev'],
    ['=G1-G1', 'stops'],
    ['=2^E1', 'factor'],
    ['=A1*2^E1', 'illuminance'],
    ['=10^-Q1', 'share'],
    ['=LOG(A1/A2,2)', 'stops'],
    ['=-LOG10(F1)', 'density'],
    ['=Q1/LOG10(2)', 'stops'],
    ['=Q1/0.30103', 'stops'],
    ['=1000000/H1', 'mired'],
    ['=10^6/I1', 'colourTemperature'],
    ['=1/N1/2', 'time'],
    ['=180/360/N1', 'time'],
    ['=M1/360/N1', 'time'],
    ['=O1*N1*360', 'angle'],
    ['=P1/C1^2', 'illuminance'],
    ['=P1/(C1*C2)', 'luminance'],
    ['=400/C1^2', 'illuminance'],
    ['=A1*C1^2', 'intensity'],
    ['=A1*C1*C2', 'flux'],
    ['=B1*PI()/0.18', 'illuminance'],
    ['=A1*F1/PI()', 'luminance'],
    ['=PI()*C1^2', 'area'],
    ['=340*D1^2/(W1*O1)', 'illuminance'],
    ['=SQRT(A1*W1*O1/340)', 'fNumber'],
    ['=(D1/T1)^2', 'ratio'],
    ['=D1/SQRT(F1)', 'fNumber'],
    ['=J1/230', 'current'],
    ['=J1/0.9', 'apparentPower'],
    ['=K1*R1', 'power'],
    ['=J1*12.5', 'money'],
    ['=J1*90', 'flux'],
    ['=J1/K1', 'current'],
    ['=X1/J1', 'duration'],
    ['=A1/10.764', 'number'],
    ['=A1*COS(RADIANS(M1))', 'illuminance'],
    ['=IF(A1>100,A1,"")', 'illuminance'],
    ['=IF(A1>100,A1,"no light")', 'illuminance'],
    ['=IF(A1>100,A1,0)', 'illuminance'],
    ['=IFERROR(A1/A2,1)'],
    ['=IF(E1=1,"agrees",VERDICT(E1))', 'verdict'],
    ['=VERDICT(E1)="agrees"'],
    ['=SUM(A1:A2)', 'illuminance'],
    ['=AVERAGE(A1:A2)'],
    ['=AVERAGE(E1:E1)'],
    ['=MAX(D1,T1)', 'fNumber'],
    ['=SUM(L1,A1)'],
    ['=SUMPRODUCT(A1:A2,F1:F2)', 'illuminance'],
    ['=STOPS(A1,100)'],
    ['=STOPS(A1,Z9)'],
    ['=STOPS(A1,"100 lx")'],
    ['=STOPS(A1,P1/C1^2)'],
    ['=EXPOSURETIME("180°",N1)'],
    ['=READINGF(D1,"dome",W1,O1)'],
    ['=READINGF(A1,Y1,W1,O1)'],
    ['=LUX(FOOTCANDLES(A1))', 'illuminance'],
    ['=CLOSEUPSTOPS(F1)'],
    ['=TEXT(A1,"0")&" lx"', 'text'],
    ['=B1+#REF!'],
    ['=FOOTCANDLES(A1)*10.764', 'illuminance'],
    ['=NOSUCH(A1)+C1'],
    ['=A5+1'],
  ])('%s in a cell of %s', (formula, set) => {
    expect(sentencesFor(formula, set)).toEqual([]);
  });
});

describe('the check goes through names and sheets', () => {
  it('knows what a name stands for, and says what is wrong inside it', () => {
    const { document, engine, means, must, idOf } = openBook({
      Walk: [['400 lx', '2 m', '=STOPS(Key,Far)', '=Both_sides*2']],
    });
    const at = (left: number) => ({ sheet: idOf('Walk'), top: 0, left, height: 1, width: 1 });
    must(defineName(document, means, 'Key', at(0)));
    must(defineName(document, means, 'Far', at(1)));
    must(
      defineName(document, means, 'Both_sides', { text: '=Walk!A1+Walk!B1', own: idOf('Walk') }),
    );
    expect(checkBook(document, engine).map((remark) => remarkLine(document, remark))).toEqual([
      'Walk!C1: STOPS wants a level of light as reference; Far is a distance. Point it at a level of light.',
      'Walk!D1: In the name Both_sides: a part of it is an illuminance and a part of it is a distance: they cannot be added. Check which cells are meant.',
    ]);
  });

  it('lists remarks by sheet, then by row', () => {
    const { document, engine } = openBook({
      Walk: [['400 lx', '=A1+Door!A1'], ['=Door!A1+A1']],
      Door: [['3 m', '=A1+Walk!A1']],
    });
    const lines = checkBook(document, engine).map((remark) => remarkLine(document, remark));
    expect(lines.map((line) => line.split(':')[0])).toEqual(['Walk!B1', 'Walk!A2', 'Door!B1']);
    expect(lines[0]).toContain('Door!A1 is a distance');
  });

  it('lists those of one row from left to right, whichever was written first', () => {
    const { document, engine, type } = openBook({ Walk: [['400 lx', '', '', '3 m']] });
    for (const column of ['G', 'E', 'F']) type(`${column}1`, '=A1+D1');
    const lines = checkBook(document, engine).map((remark) => remarkLine(document, remark));
    expect(lines.map((line) => line.split(':')[0])).toEqual(['Walk!E1', 'Walk!F1', 'Walk!G1']);
  });

  it('follows what another cell comes to', () => {
    const { document, engine, spot } = openBook({
      Walk: [['400 lx', '2 m', '=A1*0.5', '=C1', '=BEAMDIAMETER(D1,30)']],
    });
    const [remark] = remarksAt(document, engine, spot('E1'));
    expect(remark?.sentence).toContain('D1 is an illuminance');
  });

  it.each([
    '=VLOOKUP("Speed",{list},2,FALSE)',
    '=INDEX({list},2,2)',
    '=XLOOKUP("Speed",A1:A3,B1:B3)',
    '=HLOOKUP(1,{list},2,FALSE)',
  ])('takes one of a list of settings of several kinds and says nothing: %s', (formula) => {
    const { document, engine, spot } = openBook({
      Walk: [
        ['Stop', 'f/2.8', formula.replace('{list}', 'A1:B3')],
        ['Speed', 'ISO 800'],
        ['Distance', '3 m'],
      ],
    });
    expect(remarksAt(document, engine, spot('C1'))).toEqual([]);
  });

  it('takes a round for plain and says nothing', () => {
    const { document, engine } = openBook({ Walk: [['=B1+1', '=A1*2', '400 lx', '=A1+C1']] });
    expect(checkBook(document, engine)).toEqual([]);
  });

  it('believes what the user set', () => {
    const { document, engine, means, must, idOf } = openBook({
      Walk: [['400 lx', '=A1*2', '=B1+3', '2 m', '=B1+D1']],
    });
    const region = { sheet: idOf('Walk'), top: 0, left: 1, height: 1, width: 1 };
    must(setQuantity(document, means, [region], 'length'));
    const lines = checkBook(document, engine).map((remark) => remarkLine(document, remark));
    expect(lines).toEqual([
      'Walk!B1: The formula comes to an illuminance; the cell says distance. Change the formula, or what the cell measures.',
    ]);
  });
});

describe('a target', () => {
  it('of another kind than the cell is marked, but not where the reading named its own unit', () => {
    const { document, engine, means, must, spot, idOf } = openBook({
      Walk: [['', '11 fc', 'f/4']],
    });
    const region = { sheet: idOf('Walk'), top: 0, left: 0, height: 1, width: 1 };
    must(setQuantity(document, means, [region], 'illuminance'));
    must(setTarget(document, means, spot('A1'), '=FNUMBERAT(C1,-1)'));
    must(setTarget(document, means, spot('B1'), '=FNUMBERAT(C1,-1)'));
    expect(checkBook(document, engine).map((remark) => remarkLine(document, remark))).toEqual([
      'Walk!A1: The target comes to an f-number; the cell says illuminance. INCIDENTLUX turns an f-number into lux.',
    ]);
  });
});

describe('notes that mark nothing', () => {
  it('say when a constant is outside what the standard recommends', () => {
    const { document, engine } = openBook({ Walk: [['14', '=SPOTF(100,100,1/50,A1)']] });
    expect(checkBook(document, engine)).toMatchObject([
      {
        about: 'standard',
        sentence: 'SPOTF: constant is usually from 10.6 to 13.4 (ISO 2720), not 14.',
      },
    ]);
  });

  it('say when a dome is held against a flat receptor', () => {
    const row = (meter: string) => `=READINGF("f/4","${meter}",800,1/50)`;
    const { document, engine } = openBook({
      Walk: [[row('dome'), row('flat'), '=FSTOPS(A1,B1)', '=FSTOPS(A1,A1)']],
    });
    expect(checkBook(document, engine)).toMatchObject([{ about: 'meter', place: { column: 2 } }]);
  });
});
