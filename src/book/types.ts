/** Everything that a reader of books names: the document, the steps that change it, what is told of a change. */
export type { QuantityName } from '../../functions/quantities/names.ts';
export type { AxisName, Formula, Id } from '../formula/types.ts';
export type * from './changetypes.ts';
export * from './documenttypes.ts';
export type * from './steptypes.ts';
