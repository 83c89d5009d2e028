import { describe, expect, test } from 'vitest';
import { stepKinds } from '../../../src/book/steps/apply.ts';
import { copyCells } from '../../../src/book/make/copy.ts';
import { cutCells } from '../../../src/book/make/cut.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { fillCells } from '../../../src/book/make/fill.ts';
import { insertLines, moveLines, removeLines, sizeLines } from '../../../src/book/make/lines.ts';
import { defineName, removeName, renameName } from '../../../src/book/make/names.ts';
import {
  describeCells,
  setColumnQuantity,
  setQuantity,
  setTarget,
} from '../../../src/book/make/properties.ts';
import {
  addSheet,
  describeSheet,
  duplicateSheet,
  freeze,
  moveSheet,
  removeSheet,
} from '../../../src/book/make/sheets.ts';
import { sortRegion } from '../../../src/book/make/sort.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { cellAt } from '../../../src/book/look.ts';
import type { Step } from '../../../src/book/types.ts';
import { prove, proven } from './prove.ts';
import type { Stage } from './stage.ts';
import { stage } from './stage.ts';

const walk = () =>
  stage({
    Walk: { A1: 'Point', B1: 'lx', A2: 'Key', B2: '800', A3: 'Fill', B3: '250', B4: '=SUM(B2:B3)' },
    'Ice house': { A1: '=Walk!B2*2' },
  });

const column = (s: Stage, index: number, sheet?: string) => s.texts(sheet).map((row) => row[index]);
const steps = (...list: Step[]): Made => ({ ok: true, transaction: { label: 'x', steps: list } });

describe('every step: its result, its undo, its JSON', () => {
  test('typing beyond the sheet in use brings lines into use', () => {
    prove(
      walk,
      (s) => enter(s.document, s.means, [{ ...s.spot('D6'), text: '=A1&Z9' }]),
      (s) => {
        expect(s.text('D6')).toBe('=A1&Z9');
        expect(s.document.sheets[0]?.rows.length).toBe(9);
        expect(s.document.sheets[0]?.columns.length).toBe(26);
      },
    );
  });

  test('rows come in between, and ranges around them grow', () => {
    prove(
      walk,
      (s) => insertLines(s.document, s.means, s.sheet('Walk'), 'rows', 2, 2),
      (s) => {
        expect(column(s, 0)).toEqual(['Point', 'Key', '', '', 'Fill', '']);
        expect(s.text('B6')).toBe('=SUM(B2:B5)');
      },
    );
  });

  test('a row goes: a single reference to it is lost, a range keeps what is left', () => {
    prove(
      walk,
      (s) => removeLines(s.document, s.sheet('Walk'), 'rows', [1]),
      (s) => {
        expect(s.text('B3')).toBe('=SUM(B2:B2)');
        expect(s.text('Ice house!A1')).toBe('=#REF!*2');
      },
    );
  });

  test('a column goes with what stood in it', () => {
    prove(
      walk,
      (s) => removeLines(s.document, s.sheet('Walk'), 'columns', [0]),
      (s) => {
        expect(column(s, 0)).toEqual(['lx', '800', '250', '=SUM(A2:A3)']);
      },
    );
  });

  test('a row moves: the range keeps to the row that stayed, references follow', () => {
    prove(
      walk,
      (s) => moveLines(s.document, s.means, s.sheet('Walk'), 'rows', [1], 4),
      (s) => {
        expect(column(s, 0)).toEqual(['Point', 'Fill', '', 'Key']);
        expect(s.text('B3')).toBe('=SUM(B2:B2)');
        expect(s.text('Ice house!A1')).toBe('=Walk!B4*2');
      },
    );
  });

  test('both rows of a range move: it goes along', () => {
    prove(
      walk,
      (s) => moveLines(s.document, s.means, s.sheet('Walk'), 'rows', [1, 2], 6),
      (s) => {
        expect(s.text('B2')).toBe('=SUM(B5:B6)');
      },
    );
  });

  test('a column width is part of the history', () => {
    prove(
      walk,
      (s) => sizeLines(s.document, s.means, s.sheet('Walk'), 'columns', [1, 3], 120),
      (s) => {
        expect(s.document.sheets[0]?.columns.properties(s.place('D1').column)).toEqual({
          size: 120,
        });
      },
    );
  });

  test('a block is sorted, each row with its own formula', () => {
    const build = () =>
      stage({
        Walk: {
          A1: '3',
          B1: '=A1*$D$1',
          A2: '1',
          B2: '=A2+A1',
          A3: '2',
          B3: '=SUM(A3:B1)',
          D1: '7',
        },
      });
    prove(
      build,
      (s) => {
        const keys = [{ column: 0 }];
        return sortRegion(s.document, s.region('A1:B3'), keys, ({ row, column: id }) => {
          const content = s.document.sheets[0]?.cell(row, id)?.content;
          return content?.kind === 'number' ? content.value : null;
        });
      },
      (s) => {
        expect(s.texts().map((row) => row.slice(0, 2))).toEqual([
          ['1', '=A1+A1'],
          ['2', '=SUM(A1:B3)'],
          ['3', '=A3*$D$1'],
        ]);
      },
    );
  });

  test('cells are cut: references and whole ranges follow, partial ranges stay', () => {
    const build = () =>
      stage({
        Walk: { A1: '1', A2: '2', B1: '=A1', B2: '=SUM(A1:A2)', B3: '=SUM(A1:A3)' },
        Ice: {},
      });
    prove(
      build,
      (s) => cutCells(s.document, s.means, s.region('A1:A2'), s.spot('Ice!C3')),
      (s) => {
        expect(column(s, 1)).toEqual(['=Ice!C3', '=SUM(Ice!C3:C4)', '=SUM(A1:A3)']);
        expect(s.text('Ice!C4')).toBe('2');
        expect(s.text('A1')).toBe('');
      },
    );
  });

  test('formulas that are cut to another sheet name the sheet they came from', () => {
    const build = () => stage({ Walk: { A1: '1', B1: '=A1+B2', B2: '5' }, Ice: {} });
    prove(
      build,
      (s) => cutCells(s.document, s.means, s.region('B1:B2'), s.spot('Ice!A1')),
      (s) => {
        expect(s.texts('Ice')).toEqual([['=Walk!A1+A2'], ['5']]);
      },
    );
  });

  test('a cut that overlaps its own place moves everything once', () => {
    const build = () =>
      stage({ Walk: { A1: '1', A2: '=A1', A3: '=A2', B1: '=SUM(A1:A3)', B2: '=A3' } });
    prove(
      build,
      (s) => cutCells(s.document, s.means, s.region('A1:A2'), s.spot('A2')),
      (s) => {
        expect(s.texts()).toEqual([
          ['', '=SUM(A1:A3)'],
          ['1', '=A3'],
          ['=A2', ''],
        ]);
      },
    );
  });

  test('sheets are added, duplicated, moved, renamed, frozen, deleted', () => {
    prove(
      walk,
      (s) => addSheet(s.document, s.means, { phase: 'plan' }, 1),
      (s) => {
        expect(s.document.sheets.map(({ properties }) => properties.name)).toEqual([
          'Walk',
          'Sheet 1',
          'Ice house',
        ]);
      },
    );
    prove(
      walk,
      (s) => duplicateSheet(s.document, s.means, s.sheet('Walk')),
      (s) => {
        expect(s.texts('Walk 2')).toEqual(s.texts('Walk'));
      },
    );
    prove(
      walk,
      (s) => moveSheet(s.document, s.sheet('Walk'), 1),
      (s) => {
        expect(s.document.sheets[1]?.properties.name).toBe('Walk');
      },
    );
    prove(
      walk,
      (s) => moveSheet(s.document, s.sheet('Walk'), 1, 'strike'),
      (s) => {
        expect(s.document.sheets[1]?.properties).toMatchObject({ name: 'Walk', phase: 'strike' });
      },
    );
    prove(
      walk,
      (s) => describeSheet(s.document, s.sheet('Walk'), { name: "Gaffer's walk" }),
      (s) => {
        expect(s.text('Ice house!A1')).toBe("='Gaffer''s walk'!B2*2");
      },
    );
    prove(
      walk,
      (s) => freeze(s.document, s.sheet('Walk'), 1, 2),
      (s) => {
        expect(s.document.sheets[0]?.properties).toMatchObject({ frozenRows: 1, frozenColumns: 2 });
      },
    );
    prove(
      walk,
      (s) => removeSheet(s.document, s.sheet('Walk')),
      (s) => {
        expect(s.text('Ice house!A1')).toBe('=#REF!*2');
      },
    );
  });

  test('the frozen part keeps its last row', () => {
    const build = () => {
      const s = walk();
      s.run(freeze(s.document, s.sheet('Walk'), 2, 0));
      return s;
    };
    const frozen = (s: Stage) => s.document.sheets[0]?.properties.frozenRows;
    prove(
      build,
      (s) => insertLines(s.document, s.means, s.sheet('Walk'), 'rows', 1, 3),
      (s) => {
        expect(frozen(s)).toBe(5);
      },
    );
    prove(
      build,
      (s) => removeLines(s.document, s.sheet('Walk'), 'rows', [0, 2]),
      (s) => {
        expect(frozen(s)).toBe(1);
      },
    );
  });

  test('names are defined, renamed with the formulas that use them, removed', () => {
    const named = () => {
      const s = walk();
      s.type({ C1: '=key_side*Fill', C2: '=SUM(KEY_SIDE,1)' });
      s.run(defineName(s.document, s.means, 'Key_side', s.region('B2')));
      s.run(
        defineName(s.document, s.means, 'Twice', { text: '=Key_side*B3', own: s.sheet('Walk') }),
      );
      return s;
    };
    const id = (s: Stage) => s.document.named('key_SIDE')?.id ?? '';
    prove(
      walk,
      (s) => defineName(s.document, s.means, 'Key_side', s.region('B2:C9')),
      (s) => {
        expect(s.document.names.map(({ name }) => name)).toEqual(['Key_side']);
      },
    );
    prove(
      named,
      (s) => renameName(s.document, s.means, id(s), 'Fill'),
      (s) => {
        expect([s.text('C1'), s.text('C2')]).toEqual(['=Fill*Fill', '=SUM(Fill,1)']);
      },
    );
    prove(
      named,
      (s) => removeName(s.document, id(s)),
      (s) => {
        expect(s.text('C1')).toBe('=key_side*Fill');
      },
    );
  });

  test('formats, notes, roles, targets and quantities are part of the history', () => {
    prove(
      walk,
      (s) =>
        describeCells(s.document, s.means, [s.region('B2:C3')], {
          role: 'reading',
          note: 'at the camera',
          receptor: 'flat',
          format: { bold: true, decimals: 1 },
        }),
      (s) => {
        expect(cellAt(s.document, s.place('C3'))).toEqual({
          content: { kind: 'blank' },
          role: 'reading',
          note: 'at the camera',
          receptor: 'flat',
          format: { bold: true, decimals: 1 },
        });
      },
    );
    prove(
      walk,
      (s) => setTarget(s.document, s.means, s.spot('B3'), '=B2/4'),
      (s) => {
        expect(cellAt(s.document, s.place('B3'))).toHaveProperty(
          'target.references.0.kind',
          'cell',
        );
      },
    );
    prove(
      walk,
      (s) => setQuantity(s.document, s.means, [s.region('B2:B3')], 'illuminance'),
      (s) => {
        expect(cellAt(s.document, s.place('B2'))?.quantity).toBe('illuminance');
      },
    );
    const timed = () => {
      const s = walk();
      s.type({ D1: '1/50' });
      return s;
    };
    prove(
      timed,
      (s) => setColumnQuantity(s.document, s.means, s.sheet('Walk'), [3], 'time'),
      (s) => {
        expect(cellAt(s.document, s.place('D1'))?.content).toEqual({ kind: 'number', value: 0.02 });
      },
    );
  });

  test('areas, settings, title and shelves are part of the history', () => {
    prove(
      walk,
      (s) => {
        const sheet = s.sheet('Walk');
        const [row, col] = [s.place('B2').row, s.place('B2').column];
        const at = { row: { id: row, fixed: false }, column: { id: col, fixed: false } };
        const range = {
          kind: 'range',
          sheet,
          explicit: false,
          from: at,
          to: at,
          joint: ':',
        } as const;
        return steps({
          kind: 'setAreas',
          sheet,
          areas: [{ id: 'a', range, quantity: 'illuminance' }],
        });
      },
      (s) => {
        expect(s.document.sheets[0]?.areas).toHaveLength(1);
      },
    );
    prove(
      walk,
      () => steps({ kind: 'setSettings', settings: { illuminance: 'fc', more: { gauge: [1] } } }),
      (s) => {
        expect(s.document.settings).toMatchObject({ illuminance: 'fc', more: { gauge: [1] } });
      },
    );
    prove(
      walk,
      () => steps({ kind: 'setTitle', title: 'Boat shed' }),
      (s) => {
        expect(s.document.title).toBe('Boat shed');
      },
    );
    prove(
      walk,
      () =>
        steps({
          kind: 'setShelf',
          shelf: 'figures',
          items: [{ id: 'f', item: { id: 'f', of: 'A1' } }],
        }),
      (s) => {
        expect(s.document.shelf('figures').items).toEqual([{ id: 'f', of: 'A1' }]);
      },
    );
  });

  test('copies and fills adjust what they carry', () => {
    prove(
      walk,
      (s) => copyCells(s.document, s.means, s.region('B4'), s.region('C5:D6')),
      (s) => {
        expect([s.text('C5'), s.text('D6')]).toEqual(['=SUM(C3:C4)', '=SUM(D4:D5)']);
      },
    );
    prove(
      walk,
      (s) => fillCells(s.document, s.means, s.region('B2:B4'), 'right', 1),
      (s) => {
        expect(column(s, 2)).toEqual(['', '800', '250', '=SUM(C2:C3)']);
      },
    );
  });
});

test('every kind of step was proven', () => {
  expect([...proven].toSorted()).toEqual([...stepKinds].toSorted());
});
