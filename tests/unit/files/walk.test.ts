import { describe, expect, it } from 'vitest';
import { looksLikeWalk, readWalk } from '../../../src/files/walk.ts';
import { readTable } from '../../../src/files/table.ts';

const loft = `place,point,meter,reading,note
Sail loft,Camera,setting,"ISO 800, 25 fps, 180°, ND none, white balance 3200 K",50 Hz mains
Sail loft,Key side of face,incident dome,f/2.8,all lights on
Sail loft,Back light,incident flat,"11'6""",quotes inside quotes
`;

const shed = `place;point;meter;reading;note
Boat shed;Key alone;incident flat;41,5 lx;
Boat shed;Rope bench;incident flat;;not metered yet
`;

describe('a walk of readings', () => {
  it('is known by a first line that names point, meter and reading', () => {
    expect(looksLikeWalk(loft)).toBe(true);
    expect(looksLikeWalk(shed)).toBe(true);
    expect(looksLikeWalk('a,b\n1,2')).toBe(false);
    expect(looksLikeWalk('f/2.8')).toBe(false);
  });

  it('keeps each reading as it was written, quoted commas and inch marks too', () => {
    const walk = readWalk(loft);
    if ('reason' in walk) throw new Error(walk.reason);
    expect(walk.rows.map(({ point, meter, reading }) => [point, meter, reading])).toEqual([
      ['Camera', 'setting', 'ISO 800, 25 fps, 180°, ND none, white balance 3200 K'],
      ['Key side of face', 'dome', 'f/2.8'],
      ['Back light', 'flat', `11'6"`],
    ]);
    expect(walk.decimal).toBe('.');
  });

  it('separated by semicolons has decimal commas, and a missing reading stays missing', () => {
    const walk = readWalk(shed);
    if ('reason' in walk) throw new Error(walk.reason);
    expect(walk.decimal).toBe(',');
    expect(walk.rows[1]).toMatchObject({ point: 'Rope bench', reading: '', line: 3 });
  });

  it('copied from a spreadsheet comes with tabs', () => {
    expect(looksLikeWalk(loft.replaceAll(',', '\t'))).toBe(true);
  });

  it('names the lines it cannot take and keeps the others', () => {
    const walk = readWalk(
      'point,meter,reading\nDoor,thermometer,20\n,spot,3 cd/m2\nSill,spot,3 cd/m2',
    );
    if ('reason' in walk) throw new Error(walk.reason);
    expect(walk.rows.map(({ point }) => point)).toEqual(['Sill']);
    expect(walk.leftOut).toEqual([
      'Line 2: "thermometer" is no meter known here.',
      'Line 3 names no point.',
    ]);
  });

  it('without the columns it needs is refused with what is wanted', () => {
    expect(readWalk('point,place\na,b')).toEqual({
      reason:
        'The first line of a walk names its columns; "point", "meter" and "reading" are wanted.',
    });
  });
});

describe('a table of text', () => {
  it('is not one when its lines have different numbers of columns', () => {
    expect(readTable('Fill, soft\nKey')).toBeUndefined();
  });

  it('keeps line breaks and tabs inside quotes', () => {
    expect(readTable('a\tb\n"one\ntwo"\t"x\ty"')?.rows[1]).toEqual(['one\ntwo', 'x\ty']);
  });
});
