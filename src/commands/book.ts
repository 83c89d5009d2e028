import type { Settings } from '../book/types.ts';
import { done, refused, type AnyCommand, type Command, type Context } from './command.ts';
import { doSteps } from './doing.ts';
import { words } from '../words/words.ts';

export const rename: Command<{ readonly title: string }> = {
  id: 'book.rename',
  name: words.commands.bookTitle,
  group: 'book',
  run(context, { title }) {
    const wanted = title.trim();
    if (wanted === '') return refused(words.commands.titleNeeded);
    if (wanted === context.book.document.title) return done;
    return doSteps(context, words.commands.changeTitle, [{ kind: 'setTitle', title: wanted }]);
  },
};

/** Changes settings of the book. How numbers are shown follows; no number changes. */
export const settings: Command<Partial<Settings>> = {
  id: 'book.settings',
  name: words.commands.bookSettings,
  group: 'book',
  run(context, changed) {
    const now = context.book.document.settings;
    const keys = Object.keys(changed) as (keyof Settings)[];
    if (keys.every((key) => changed[key] === now[key])) return done;
    return doSteps(context, labelOf(changed), [{ kind: 'setSettings', settings: changed }]);
  },
};

const labels: Partial<Readonly<Record<keyof Settings, string>>> = {
  illuminance: words.commands.switchIlluminance,
  length: words.commands.switchLength,
  shutter: words.commands.switchShutter,
  fNumber: words.commands.changeFNumber,
  clock: words.commands.switchClock,
  decimal: words.commands.switchDecimal,
  tolerance: words.commands.changeBookTolerance,
  receptor: words.commands.changeReceptor,
  domeConstant: words.commands.changeDomeConstant,
  flatConstant: words.commands.changeFlatConstant,
  reflectedConstant: words.commands.changeReflectedConstant,
  mainsHertz: words.commands.changeMainsHertz,
  mainsVolts: words.commands.changeMainsVolts,
  continuousShare: words.commands.changeBreakerShare,
  currency: words.commands.changeCurrency,
  zone: words.commands.changeZone,
  page: words.commands.changePaper,
};

function labelOf(changed: Partial<Settings>): string {
  const [key] = Object.keys(changed) as (keyof Settings)[];
  return (key && labels[key]) ?? words.commands.changeSettings;
}

const turn = <Key extends keyof Settings>(
  id: string,
  name: string,
  key: Key,
  values: readonly Settings[Key][],
  search: readonly string[],
): Command => ({
  id,
  name,
  group: 'units',
  search,
  run(context: Context) {
    const at = values.indexOf(context.book.document.settings[key]);
    return settings.run(context, { [key]: values[(at + 1) % values.length] });
  },
});

export const unitCommands: readonly AnyCommand[] = [
  turn('units.illuminance', words.commands.switchIlluminance, 'illuminance', ['lx', 'fc'], ['fc']),
  turn('units.length', words.commands.switchLength, 'length', ['m', 'ft'], ['inches']),
  turn('units.shutter', words.commands.switchShutter, 'shutter', ['time', 'angle'], ['degrees']),
  turn(
    'units.fNumber',
    words.commands.sayFNumber,
    'fNumber',
    ['thirds', 'halves', 'tenths', 'decimals'],
    ['stops'],
  ),
  turn('units.clock', words.commands.switchClock, 'clock', ['24', '12'], ['am', 'pm', 'time']),
  turn('units.decimal', words.commands.switchDecimal, 'decimal', ['.', ','], ['locale']),
];
