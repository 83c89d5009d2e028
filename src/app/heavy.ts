/** What the first paint does not need: the calculator, the check, the function library and Walk. */
export { connectEngine, isFunction } from '../engine/index.ts';
export { createChecker } from '../check/checker.ts';
export { catalogue } from '../../functions/index.ts';
export { createWalk } from '../walk/screen/room.ts';
export { spectraIn } from '../files/spectra/shelf.ts';
export { fixturesIn } from '../files/photometric/shelf.ts';
