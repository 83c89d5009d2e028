import type { Settings } from '../book/types.ts';
import { done, refused, type AnyCommand, type Command, type Context } from './command.ts';
import { doSteps } from './doing.ts';

export const rename: Command<{ readonly title: string }> = {
  id: 'book.rename',
  name: 'Title of the book',
  group: 'book',
  run(context, { title }) {
    const wanted = title.trim();
    if (wanted === '') return refused('A book has a title.');
    if (wanted === context.book.document.title) return done;
    return doSteps(context, 'Change the title', [{ kind: 'setTitle', title: wanted }]);
  },
};

/** Changes settings of the book. How numbers are shown follows; no number changes. */
export const settings: Command<Partial<Settings>> = {
  id: 'book.settings',
  name: 'Settings of the book',
  group: 'book',
  run(context, changed) {
    const now = context.book.document.settings;
    const keys = Object.keys(changed) as (keyof Settings)[];
    if (keys.every((key) => changed[key] === now[key])) return done;
    return doSteps(context, labelOf(changed), [{ kind: 'setSettings', settings: changed }]);
  },
};

const labels: Partial<Readonly<Record<keyof Settings, string>>> = {
  illuminance: 'Switch lux and footcandles',
  length: 'Switch metres and feet',
  shutter: 'Switch shutter time and angle',
  fNumber: 'Change how f-numbers are said',
  clock: 'Switch the 24-hour and the 12-hour clock',
  decimal: 'Switch decimal point and comma',
  tolerance: 'Change the tolerance of the book',
  receptor: 'Change the receptor of readings that do not say',
  domeConstant: 'Change the constant of the dome',
  flatConstant: 'Change the constant of the flat receptor',
  reflectedConstant: 'Change the constant of the spot meter',
  mainsHertz: 'Change the mains frequency',
  mainsVolts: 'Change the mains voltage',
  continuousShare: 'Change the share of a breaker',
  currency: 'Change the currency',
  zone: 'Change the time zone',
  page: 'Change the paper',
};

function labelOf(changed: Partial<Settings>): string {
  const [key] = Object.keys(changed) as (keyof Settings)[];
  return (key && labels[key]) ?? 'Change the settings';
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
  turn('units.illuminance', 'Switch lux and footcandles', 'illuminance', ['lx', 'fc'], ['fc']),
  turn('units.length', 'Switch metres and feet', 'length', ['m', 'ft'], ['inches']),
  turn('units.shutter', 'Switch shutter time and angle', 'shutter', ['time', 'angle'], ['degrees']),
  turn(
    'units.fNumber',
    'Say f-numbers in thirds, halves, tenths or decimals',
    'fNumber',
    ['thirds', 'halves', 'tenths', 'decimals'],
    ['stops'],
  ),
  turn(
    'units.clock',
    'Switch the 24-hour and the 12-hour clock',
    'clock',
    ['24', '12'],
    ['am', 'pm', 'time'],
  ),
  turn('units.decimal', 'Switch decimal point and comma', 'decimal', ['.', ','], ['locale']),
];
