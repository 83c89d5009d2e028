import { main } from '../../../src/cli/main.ts';
import type { Io } from '../../../src/cli/types.ts';

export interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** What was written, by path; absent where nothing was. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
}

/** Runs the command line with these files and this standard input, and hands back what it said. */
export async function halfstop(
  argv: readonly string[],
  {
    files = {},
    input = '',
  }: { files?: Readonly<Record<string, string | Uint8Array>>; input?: string } = {},
): Promise<Said> {
  const said = { out: '', err: '' };
  const written: Record<string, string | Uint8Array> = {};
  const io: Io = {
    languages: ['en_GB.UTF-8'],
    out: (text) => void (said.out += text),
    err: (text) => void (said.err += text),
    readInput: () => Promise.resolve(input),
    readFile(path) {
      const content = files[path];
      if (content === undefined) return Promise.reject(new Error('ENOENT'));
      return Promise.resolve(
        typeof content === 'string' ? new TextEncoder().encode(content) : content,
      );
    },
    writeFile(path, content) {
      written[path] = content;
      return Promise.resolve();
    },
    filesIn(path) {
      const inside = Object.keys(files).filter((file) => file.startsWith(`${path}/`));
      return Promise.resolve(inside.length > 0 ? inside : undefined);
    },
  };
  const code = await main(argv, io);
  return { code, ...said, ...(Object.keys(written).length > 0 && { files: written }) };
}

/** The lines of standard output, each read as JSON. */
export function lines({ out }: Said): unknown[] {
  return out
    .trimEnd()
    .split('\n')
    .map((line): unknown => JSON.parse(line));
}
