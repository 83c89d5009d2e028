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
const left = new Set([...words, ...proofs]);

/** Read by the mutation tester by this name. */
export const strykerPlugins = [
  {
    kind: 'Ignore',
    name: 'words-and-proofs',
    value: {
      /** @param {{ isObjectProperty(): boolean, node: { key?: { name?: string } } }} path */
      shouldIgnore(path) {
        const name = path.isObjectProperty() ? path.node.key?.name : undefined;
        return name !== undefined && left.has(name) ? `${name}: words or proofs.` : undefined;
      },
    },
  },
];
