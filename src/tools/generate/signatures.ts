import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { catalogue } from '../../../functions/index.ts';
import { signatureOf } from '../../reference/signature.ts';
import { root } from '../root.mjs';
import { newestNotes, updated, type Listing } from '../signatures.ts';

const path = 'tests/unit/functions/signatures.json';
const read = (name: string) => readFileSync(join(root, name), 'utf8');

/** How every function is called now, as far as the change log tells of what changed. */
export function generate() {
  const { version } = JSON.parse(read('functions/package.json')) as Listing;
  const now: Listing = {
    version,
    functions: Object.fromEntries(catalogue.map((one) => [one.name, signatureOf(one)])),
  };
  const kept = existsSync(join(root, path)) ? (JSON.parse(read(path)) as Listing) : now;
  const listing = updated(kept, now, newestNotes(read('CHANGELOG.md')));
  return [{ path, text: JSON.stringify(listing, null, 2) }];
}
