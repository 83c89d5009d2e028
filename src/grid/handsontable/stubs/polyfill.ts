/**
 * Stands in for the old polyfill bundle, whose `eval` our content security policy refuses. All that
 * the grid misses in today's browsers is `setImmediate`.
 */
const scope = globalThis as unknown as Record<'setImmediate' | 'clearImmediate', unknown>;
scope.setImmediate ??= (callback: () => void) => setTimeout(callback, 0);
scope.clearImmediate ??= (handle: number) => clearTimeout(handle);
