import type { Call, Node } from '../formula/types.ts';
import type { Finding, Part } from './findings.ts';
import type { Kind, KnownKind } from './kinds.ts';

/** The arguments of a call by what they measure. */
export interface Handed {
  readonly call: Call;
  /** How many there are, left out ones counted. */
  readonly count: number;
  node(index: number): Node | null;
  kindOf(node: Node): Kind;
  /** The one kind of an argument; `any` where it is left out, undefined where a range holds several. */
  kind(index: number): Kind;
  /** Every kind in an argument; none where it is left out. */
  kinds(index: number): readonly Kind[];
  /** Every kind in one column or row of a range, counted from 1. */
  line(index: number, axis: 'rows' | 'columns', line: number): readonly Kind[];
  part(index: number, kind: KnownKind): Part;
  hear(finding: Finding): void;
}

/** What a function makes of the quantities it is given; on the way it hears what does not fit. */
export type Rule = (handed: Handed) => Kind;
