import { faultOfName } from '../../formula/naming.ts';
import { isId } from '../../formula/ids.ts';
import { keyOf } from '../inside/draft.ts';
import type { Draft } from '../inside/draft.ts';
import { rewriting } from '../inside/holders.ts';
import type { DefineNameStep, Id, RemoveNameStep, RenameNameStep } from '../types.ts';
import type { Doer } from './applied.ts';
import { applied, refuse } from './applied.ts';
import { words } from '../../words/words.ts';

export const defineName: Doer<DefineNameStep> = (draft, { name }) => {
  const reason = isId(name.id) ? fault(draft, name.id, name.name) : words.book.nameDamaged;
  if (reason !== undefined) return refuse(reason);
  const before = draft.nameWithId(name.id);
  draft.putName(name);
  return applied(
    [before ? { kind: 'defineName', name: before } : { kind: 'removeName', id: name.id }],
    { kind: 'name', id: name.id, before: before?.name ?? null, after: name.name },
  );
};

export const renameName: Doer<RenameNameStep> = (draft, step, inTurn) => {
  const before = draft.nameWithId(step.id);
  if (!before) return refuse(words.book.nameGone);
  const reason = fault(draft, step.id, step.name);
  if (reason !== undefined) return refuse(reason);
  const key = keyOf(before.name);
  const rewritten = rewriting(draft, draft.uses.ofName(before.name), (reference) =>
    reference.kind === 'name' && keyOf(reference.name) === key
      ? { kind: 'name', name: step.name }
      : reference,
  );
  // The name may occur in its own meaning: what was rewritten there stays.
  const own = rewritten.find((each) => each.kind === 'defineName' && each.name.id === step.id);
  const meaning = own?.kind === 'defineName' ? own.name : before;
  const others = rewritten.filter((each) => each !== own);
  return inTurn(draft, [{ kind: 'defineName', name: { ...meaning, name: step.name } }, ...others]);
};

export const removeName: Doer<RemoveNameStep> = (draft, { id }) => {
  const name = draft.nameWithId(id);
  if (!name) return refuse(words.book.nameGone);
  draft.takeName(id);
  return applied([{ kind: 'defineName', name }], {
    kind: 'name',
    id,
    before: name.name,
    after: null,
  });
};

/** Function names are told apart where the step is made: a book does not know the functions. */
function fault(draft: Draft, id: Id, name: string): string | undefined {
  const other = draft.named(name);
  if (other && other.id !== id) return words.book.nameTaken(other.name);
  return faultOfName(name, () => false)?.reason;
}
