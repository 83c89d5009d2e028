import { words } from '../words/words.ts';
import { Unusable, type Given, type Subcommand } from './types.ts';

/** `--book`, `--decimal=,`; anything else, such as `-STOPS(1,2)` or `--2`, begins what follows. */
const optionPattern = /^--([a-z][a-z-]*)(?:=(.*))?$/s;

/** Options come first; from the first word that is none, everything is handed on as it is, unless they may stand anywhere. */
export function readArguments(
  given: readonly string[],
  { options, repeats = [], flags = [], anywhere }: Subcommand,
): Given {
  const found: Record<string, string> = {};
  const lists: Record<string, string[]> = {};
  const between: string[] = [];
  let next = 0;
  for (; next < given.length; next++) {
    const word = given[next] ?? '';
    if (word === '--') {
      next++;
      break;
    }
    const match = optionPattern.exec(word);
    if (!match && anywhere) {
      between.push(word);
      continue;
    }
    if (!match) break;
    const [, name = '', attached] = match;
    if (flags.includes(name) && attached === undefined) {
      found[name] = '';
      continue;
    }
    if (!Object.hasOwn(options, name)) throw new Unusable(words.commandLine.noOption(name));
    const value = attached ?? given[++next];
    if (value === undefined)
      throw new Unusable(words.commandLine.wants(name, options[name] ?? words.commandLine.aValue));
    if (repeats.includes(name)) (lists[name] ??= []).push(value);
    else found[name] = value;
  }
  return { options: found, lists, rest: [...between, ...given.slice(next)] };
}
