import { Unusable, type Given, type Subcommand } from './types.ts';

/** `--book`, `--decimal=,`; anything else, such as `-STOPS(1,2)` or `--2`, begins what follows. */
const optionPattern = /^--([a-z][a-z-]*)(?:=(.*))?$/s;

/** Options come first; from the first word that is none, everything is handed on as it is. */
export function readArguments(
  words: readonly string[],
  { options, repeats = [], flags = [] }: Subcommand,
): Given {
  const given: Record<string, string> = {};
  const lists: Record<string, string[]> = {};
  let next = 0;
  for (; next < words.length; next++) {
    const word = words[next] ?? '';
    if (word === '--') {
      next++;
      break;
    }
    const match = optionPattern.exec(word);
    if (!match) break;
    const [, name = '', attached] = match;
    if (flags.includes(name) && attached === undefined) {
      given[name] = '';
      continue;
    }
    if (!Object.hasOwn(options, name)) throw new Unusable(`There is no option --${name} here.`);
    const value = attached ?? words[++next];
    if (value === undefined) throw new Unusable(`--${name} wants ${options[name] ?? 'a value'}.`);
    if (repeats.includes(name)) (lists[name] ??= []).push(value);
    else given[name] = value;
  }
  return { options: given, lists, rest: words.slice(next) };
}
