// What kinds of certificate and skills are called: the catalogue's own titles. A name that it does not know is
// shown as it is written, in plain letters.

import type { Catalogue } from '../api/types.ts';
import { core } from '../core/core.svelte.ts';
import { plainName } from '../format.ts';

const EMPTY: Catalogue = { certificates: [], skills: [] };

export function catalogue(): Catalogue {
  return core.ready ? core.catalogue() : EMPTY;
}

export function certificateTitle(kind: string): string {
  return plainName(catalogue().certificates.find((one) => one.kind === kind)?.title ?? kind);
}

export function skillTitle(name: string): string {
  return plainName(catalogue().skills.find((one) => one.name === name)?.title ?? name);
}

export function certificateOptions(): { value: string; title: string; about: string }[] {
  return catalogue().certificates.map((one) => ({
    value: one.kind,
    title: plainName(one.title),
    about: one.scheme,
  }));
}

export function skillOptions(): { value: string; title: string; about: string }[] {
  return catalogue().skills.map((one) => ({
    value: one.name,
    title: plainName(one.title),
    about: plainName(one.group),
  }));
}
