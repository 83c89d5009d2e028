import { describe, expect, it } from 'vitest';
import { halfstop } from './terminal.ts';

const list = 'Group,Name\nA,Mira Holm\nA,Tomás Ferreira\nB,Jun Park\n';

async function handedOut(sheet = 'stops', files: Record<string, string | Uint8Array> = {}) {
  const argv = ['handouts', 'class.csv', sheet, '--seed', '7', '--out', 'out'];
  return halfstop(argv, { files: { 'class.csv': list, ...files } });
}

describe('handouts', () => {
  it('writes a book for each learner and the key apart from them', async () => {
    const said = await handedOut();
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toBe('3 hand-outs in out/handouts, the key in out/key.\n');
    expect(Object.keys(said.files ?? {})).toEqual([
      'out/handouts/Mira Holm.halfstop',
      'out/handouts/Tomás Ferreira.halfstop',
      'out/handouts/Jun Park.halfstop',
      'out/key/KEY.json',
      'out/key/answers.csv',
    ]);
    expect(said.files?.['out/key/answers.csv']).toMatch(/^Learner,Question,Expected\nMira Holm,1,/);
  });

  it('takes a book with an exercise as well: the key is one', async () => {
    const first = await handedOut();
    const key = String(first.files?.['out/key/KEY.json']);
    const again = await handedOut('own.json', { 'own.json': key });
    expect(again.code).toBe(0);
    const named = await halfstop(
      [...['handouts', '--sheet', 'Nowhere', 'class.csv'], ...['own.json', '--seed=7', '--out=o']],
      { files: { 'class.csv': list, 'own.json': key } },
    );
    expect(named.code).toBe(2);
    expect(named.err).toContain('own.json holds no exercise');
  });

  it.each([
    [['handouts', 'class.csv'], 'CLASS.csv and SHEET are wanted.'],
    [['handouts', 'class.csv', 'stops', '--out', 'o'], '--seed wants a seed'],
    [['handouts', 'class.csv', 'stops', '--seed', '1'], '--out wants a folder'],
    [['handouts', 'class.csv', 'nope.json', '--seed', '1', '--out', 'o'], 'nope.json cannot'],
    [
      ['handouts', 'twice.csv', 'stops', '--seed', '1', '--out', 'o'],
      'jun stands in the list twice',
    ],
    [['handouts', 'none.csv', 'stops', '--seed', '1', '--out', 'o'], 'The list names nobody.'],
  ])('%j cannot be used and ends with 2', async (argv, sentence) => {
    const files = { 'class.csv': list, 'twice.csv': 'Name\nJun\njun\n', 'none.csv': 'Name\n' };
    const said = await halfstop(argv, { files });
    expect(said.code).toBe(2);
    expect(said.err).toContain(sentence);
    expect(said.files).toBeUndefined();
  });
});

describe('mark', () => {
  it('marks a second class of a book by the key of that class', async () => {
    const first = await handedOut();
    const second = { 'class.csv': 'Name\nLena Aas\n', 'key.json': '' };
    second['key.json'] = String(first.files?.['out/key/KEY.json']);
    const argv = ['handouts', 'class.csv', 'key.json', '--seed', '8', '--out', 'out'];
    const { files = {} } = await halfstop(argv, { files: second });
    const said = await halfstop(['mark', 'KEY.json', 'Lena Aas.halfstop'], {
      files: {
        'KEY.json': files['out/key/KEY.json'] ?? '',
        'Lena Aas.halfstop': files['out/handouts/Lena Aas.halfstop'] ?? '',
      },
    });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toMatch(/^Lena Aas/);
  });

  it('marks a folder by the key alone and names every file that does not count', async () => {
    const { files = {} } = await handedOut();
    const key = String(files['out/key/KEY.json']);
    const back = {
      'KEY.json': key,
      'back/Mira Holm.halfstop': String(files['out/handouts/Mira Holm.halfstop']),
      'back/jun.halfstop': String(files['out/handouts/Jun Park.halfstop']),
      'back/readme.txt': 'hello',
    };
    const csv = await halfstop(['mark', 'KEY.json', 'back', '--csv'], { files: back });
    expect(csv.code).toBe(1);
    const lines = csv.out.trimEnd().split('\n');
    expect(lines.map((line) => line.split(',').slice(0, 3).join())).toEqual([
      'Learner,Points,Of',
      'Mira Holm,0,5',
      'Tomás Ferreira,0,5',
      'Jun Park,0,5',
    ]);
    expect(csv.err).toContain('back/readme.txt: No book of ours.');
    expect(csv.err).toContain('back/jun.halfstop: Counts for Jun Park, though');
    const told = await halfstop(['mark', 'KEY.json', 'back', '--feedback', 'told'], {
      files: back,
    });
    expect(told.out).toContain('Mira Holm: 0 of 5 points');
    expect(Object.keys(told.files ?? {})).toEqual(['told/Mira Holm.txt', 'told/Jun Park.txt']);
    const text = String(told.files?.['told/Jun Park.txt']);
    expect(text).toMatch(/^Stops and f-numbers\nJun Park: 0 of 5 points\n\n1\. By how many stops/);
    expect(text).toMatch(/\nAnswer: none · blank · 0 of 2 points\nExpected: .+\nStops are 2/);
    const plain = await halfstop(['mark', 'KEY.json', 'back/jun.halfstop'], { files: back });
    expect(plain.code).toBe(0);
    expect(plain.out).toContain('Tomás Ferreira: Nothing came back.');
  });

  it.each([
    [['mark', 'KEY.json'], 'KEY.json and at least one returned file'],
    [['mark', 'broken.json', 'x'], 'broken.json: '],
    [['mark', 'KEY.json', 'nowhere'], 'nowhere cannot be read.'],
  ])('%j cannot be used and ends with 2', async (argv, sentence) => {
    const { files = {} } = await handedOut();
    const said = await halfstop(argv, {
      files: { 'KEY.json': String(files['out/key/KEY.json']), 'broken.json': '{"form":' },
    });
    expect(said.code).toBe(2);
    expect(said.err).toContain(sentence);
  });

  it('says that a book was handed out to no class', async () => {
    const { files = {} } = await handedOut();
    const book = String(files['out/handouts/Jun Park.halfstop']);
    const said = await halfstop(['mark', 'k.json', 'k.json'], { files: { 'k.json': book } });
    expect(said.err).toContain('k.json was handed out to no class.');
  });
});
