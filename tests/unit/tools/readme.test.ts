import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sampleSpectra } from '../../../src/files/spectra/samples.ts';
import { root } from '../../../src/tools/root.mjs';
import { halfstop } from '../cli/terminal.ts';

const pages = ['README.md', 'DEVELOPERS.md', 'src/README.md', 'src/files/README.md'];
const textOf = (path: string) => readFileSync(join(root, path), 'utf8');
const readme = textOf('README.md');

/** As they stand in the README; `…` begins with the same words as the first one. */
const commands = [...readme.matchAll(/`(?:npm run --silent halfstop --|…) ([^`]+)`/g)].map(
  ([, command = '']) => command,
);

/** Words as a shell would cut them, without anything a README has no need of. */
const wordsOf = (command: string): string[] =>
  [...command.matchAll(/'([^']*)'|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');

const files: Record<string, string | Uint8Array> = {
  'BOOK.json': textOf('templates/harbour-hours/book.json'),
  'CLASS.csv': 'Group,Name\nA,Mira Holm\nB,Jun Park\n',
};

describe('what the README says', () => {
  it.each(commands)('halfstop %s', async (command) => {
    const said = await halfstop(wordsOf(command), { files });
    expect(said.err, command).toBe('');
    // 1 says that something is to be looked at: a cell that waits for its reading.
    expect(said.code, command).toBeLessThan(2);
    expect(said.out !== '' || said.files !== undefined || command.startsWith('check')).toBe(true);
    // What one writes the next may read.
    for (const [path, content] of Object.entries(said.files ?? {})) {
      files[path] = content;
      files[path.replace('DIR/handouts', 'RETURNED')] = content;
    }
  });

  it('has each command of the command line among them', async () => {
    const { out } = await halfstop(['--help']);
    const named = [...out.matchAll(/^ {2}halfstop (\w+)/gm)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(3);
    const said = new Set(commands.map((command) => wordsOf(command)[0]));
    expect(named.filter((name) => !said.has(name))).toEqual([]);
  });

  it('takes files of fixtures and spectra into a formula', async () => {
    const [file = ''] = readdirSync(join(root, 'tests/standards/photometric-files'));
    const spectrum = sampleSpectra[0]!;
    const files = {
      'f.ies': textOf(join('tests/standards/photometric-files', file)),
      's.csv': spectrum.text,
    };
    const lux = await halfstop(
      ['evaluate', '--fixture', 'A=f.ies', '--spectrum', 'S=s.csv', 'FIXTURELUX("A",3)'],
      { files },
    );
    expect(lux).toMatchObject({ code: 0, err: '' });
    expect(lux.out).toMatch(/"display":"\d[\d.]* lx"/);
  });
});

describe.each(pages)('%s', (page) => {
  const text = textOf(page);

  it('links to files that are there', () => {
    const links = [...text.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, link = '']) => link);
    const inside = links.filter((link) => !/^[a-z]+:/.test(link));
    const gone = inside.filter((link) => !existsSync(join(root, dirname(page), link)));
    expect(gone).toEqual([]);
  });

  it('names scripts that are there', () => {
    const { scripts } = JSON.parse(textOf('package.json')) as { scripts: object };
    const named = [...text.matchAll(/npm run (?:--silent )?([a-z-]+)/g)].map(([, name]) => name);
    expect(named.filter((name) => name !== undefined && !(name in scripts))).toEqual([]);
  });
});
