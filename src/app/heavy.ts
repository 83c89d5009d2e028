/** What the first paint does not need: the calculator, the check and the function library. */
export { connectEngine, isFunction } from '../engine/index.ts';
export { createChecker } from '../check/checker.ts';
export { catalogue } from '../../functions/index.ts';
