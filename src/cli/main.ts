import { readArguments } from './arguments.ts';
import { check } from './check.ts';
import { convert } from './convert.ts';
import { evaluate } from './evaluate.ts';
import { Unusable, type ExitCode, type Io, type Subcommand } from './types.ts';
import { values } from './values.ts';

const subcommands: readonly Subcommand[] = [evaluate, values, check, convert];

/** Runs `halfstop` with the words that follow it. */
export async function main(argv: readonly string[], io: Io): Promise<ExitCode> {
  const [name = '', ...words] = argv;
  if (name === '--help') {
    io.out(usage(subcommands));
    return 0;
  }
  const subcommand = subcommands.find((each) => each.name === name);
  if (!subcommand) {
    io.err(name === '' ? '' : `There is no command ${name}.\n`);
    io.err(usage(subcommands));
    return 2;
  }
  if (words[0] === '--help') {
    io.out(usage([subcommand]));
    return 0;
  }
  try {
    return await subcommand.run(readArguments(words, subcommand), io);
  } catch (reason) {
    if (!(reason instanceof Unusable)) throw reason;
    io.err(`${reason.message}\n${usage([subcommand])}`);
    return 2;
  }
}

function usage(shown: readonly Subcommand[]): string {
  const lines = shown.map(
    (subcommand) =>
      `  halfstop ${subcommand.name} ${subcommand.usage}\n      ${subcommand.summary}\n`,
  );
  return `Usage:\n${lines.join('')}`;
}
