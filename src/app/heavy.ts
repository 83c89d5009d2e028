/** What the first paint does not need: the calculator and the function library. */
export { connectEngine, isFunction } from '../engine/index.ts';
export { catalogue } from '../../functions/index.ts';
