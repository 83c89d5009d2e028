import { speakFirstOf } from '../words/languages.ts';
import type { ExitCode, Io } from './types.ts';

/** Runs `halfstop` with what follows it, in the language of `io`: modules read their words as they load. */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  await speakFirstOf(io.languages);
  const { run } = await import('./run.ts');
  return run(argv, io);
}
