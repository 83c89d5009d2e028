import { letterOf } from './columns.ts';

const [left, right] = [letterOf('l1'), letterOf('l8')];
const lightsOf = (at: number): string => `$${left}${at}:$${right}${at}`;

interface Changes {
  readonly rigged: string;
  readonly struck: string;
  readonly moved: string;
}

/** What changes from the row above to this one; at another place everything is struck and rigged anew. */
export function changes(at: number, isFirst: boolean): Changes {
  const [now, before] = [lightsOf(at), lightsOf(at - 1)];
  const some = (lights: string) => `(${lights}<>"")`;
  if (isFirst) return { rigged: `SUMPRODUCT(${some(now)}*1)`, struck: '0', moved: '0' };
  const place = letterOf('place');
  const same = `(${place}${at}=${place}${at - 1})`;
  const both = `${some(now)}*${some(before)}`;
  return {
    rigged: `SUMPRODUCT(${some(now)}*(1-${some(before)}*${same}))`,
    struck: `SUMPRODUCT(${some(before)}*(1-${some(now)}*${same}))`,
    moved: `SUMPRODUCT(${both}*(${now}<>${before})*${same})`,
  };
}
