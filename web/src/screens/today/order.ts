// What each hat sees first. It orders the page and decides nothing: what is in each part is the judge's word.

import type { Role } from '../../api/types.ts';

export type Part = 'sign' | 'medical' | 'day' | 'mine' | 'certificates' | 'unsigned' | 'trail' | 'next';

const FIRST: Partial<Record<Role, Part[]>> = {
  coordinator: ['sign', 'day', 'certificates', 'unsigned', 'next'],
  medic: ['medical', 'sign', 'day', 'certificates', 'next'],
  performer: ['sign', 'mine', 'next'],
  first_ad: ['day', 'sign', 'unsigned', 'next'],
  production: ['unsigned', 'trail', 'sign', 'certificates', 'next'],
  observer: ['day', 'next'],
};
const HEAD: Part[] = ['sign', 'day', 'certificates', 'next'];

/** The parts for somebody with these hats, each once, in the order of the hats. */
export function partsFor(roles: readonly Role[]): Part[] {
  const parts = roles.flatMap((role) => FIRST[role] ?? HEAD);
  const found = [...new Set(parts.length > 0 ? parts : HEAD)].filter((one) => one !== 'next');
  return [...found, 'next'];
}
