import { readArguments } from './arguments.ts';
import { check } from './check.ts';
import { convert } from './convert.ts';
import { evaluate } from './evaluate.ts';
import { Unusable, type ExitCode, type Io, type Subcommand } from './types.ts';
import { handouts } from './handouts.ts';
import { mark } from './mark.ts';
import { values } from './values.ts';
import { words } from '../words/words.ts';

const subcommands: readonly Subcommand[] = [evaluate, values, check, convert, handouts, mark];

/** Runs `halfstop` with what follows it. */
export async function run(argv: readonly string[], io: Io): Promise<ExitCode> {
  const [name = '', ...rest] = argv;
  if (name === '--help') {
    io.out(usage(subcommands));
    return 0;
  }
  const subcommand = subcommands.find((each) => each.name === name);
  if (!subcommand) {
    io.err(name === '' ? '' : `${words.commandLine.noCommand(name)}\n`);
    io.err(usage(subcommands));
    return 2;
  }
  if (rest[0] === '--help') {
    io.out(usage([subcommand]));
    return 0;
  }
  try {
    return await subcommand.run(readArguments(rest, subcommand), io);
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
  return `${words.commandLine.usage}\n${lines.join('')}`;
}
