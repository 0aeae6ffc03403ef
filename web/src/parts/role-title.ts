// What a role is called on this production: its policy's own title. Roles the policy does not name, and any role
// before the policy has been read, are called by the plain word.

import type { Role } from '../api/types.ts';
import { session } from '../session.svelte.ts';
import { said, t } from '../texts/index.ts';

export function roleTitle(role: Role): string {
  const named = session.page?.value?.policy.roles.find((one) => one.role === role);
  return (named && said(named.title)) ?? t.words.role[role] ?? role;
}
