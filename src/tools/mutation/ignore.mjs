/**
 * What mutation testing leaves alone in a definition: words for people, which tests do not
 * read, and the proofs, which are tests themselves.
 */
const words = [
  'summary',
  'job',
  'search',
  'help',
  'limits',
  'sources',
  'alike',
  'none',
  'equation',
];
const proofs = ['examples', 'laws'];
const left = new Set(process.env['PART'] === 'functions' ? [...words, ...proofs] : []);

/**
 * @typedef {object} Path a place in the code
 * @property {() => boolean} isObjectProperty
 * @property {() => boolean} isFunction
 * @property {() => Path | null} getFunctionParent
 * @property {{ key?: { name?: string }, start?: number, end?: number }} node
 */

/** Whole functions are drawn, so that what is tried of one is tried in full. @param {Path} path */
function isDrawn(path) {
  const { SHARE: share = '1', SEED: seed = '1' } = process.env;
  const { start = 0, end = 0 } = path.node;
  return drawn(`${seed} ${start} ${end}`) < Number(share);
}

/** From 0 up to 1, the same for the same text: the hash of Fowler, Noll and Vo. @param {string} text */
function drawn(text) {
  let hash = 0x811c9dc5;
  for (const sign of text) hash = Math.imul(hash ^ sign.charCodeAt(0), 0x01000193) >>> 0;
  return hash / 2 ** 32;
}

/** Read by the mutation tester by this name. */
export const strykerPlugins = [
  {
    kind: 'Ignore',
    name: 'words-and-proofs',
    value: {
      /** @param {Path} path */
      shouldIgnore(path) {
        const name = path.isObjectProperty() ? path.node.key?.name : undefined;
        if (name !== undefined && left.has(name)) return `${name}: words or proofs.`;
        const isOutermost = path.isFunction() && !path.getFunctionParent();
        return isOutermost && !isDrawn(path) ? 'Not in the sample.' : undefined;
      },
    },
  },
];
