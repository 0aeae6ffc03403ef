// Writing a person: one request that says which version it builds on, kept and sent as every other entry.

import { at } from '../../api/address.ts';
import type { Person, PersonPage, ProblemBody } from '../../api/types.ts';
import { session } from '../../session.svelte.ts';
import { type Outcome, outbox } from '../../storage/outbox.svelte.ts';
import { read } from '../../storage/reads.svelte.ts';

export const personPath = (id: string) =>
  at('/productions/{production}/people/{person}', { production: session.production?.id ?? '', person: id });

export async function savePerson(person: Person, version: number): Promise<Outcome> {
  const path = personPath(person.id);
  const outcome = await outbox.post({
    method: 'PUT',
    path,
    headers: version === 0 ? { 'If-None-Match': '*' } : { 'If-Match': `"${version}"` },
    body: person,
    label: { kind: 'person', about: person.name },
  });
  if (outcome.state === 'sent') await read(path).adopt(outcome.answer as PersonPage);
  if (outcome.state === 'refused') {
    // The form still holds it and says what is wrong: it need not also wait on the list of refused entries.
    const refused = outbox.refused.find((one) => one.path === path && one.label.kind === 'person');
    if (refused) await outbox.dismiss(refused.id);
  }
  return outcome;
}

/** What is wrong with one field, in words, from a refusal that points at it. */
export function wrongAt(problem: ProblemBody | undefined, pointer: string): string {
  const found = problem?.errors?.find((one) => one.pointer === pointer);
  return found ? [found.problem, found.fix].filter(Boolean).join('; ') : '';
}
