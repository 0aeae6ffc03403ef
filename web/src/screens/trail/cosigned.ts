// What is sent of a pasted cosignature. What it is, and whether it holds, is for the server to say.

import type { NewCosignature } from '../../api/types.ts';

/** The text as it was pasted, and for how many entries where that was typed; an empty field is left out. */
export function cosignedBody(pasted: string, entries: string): NewCosignature {
  const size = entries.trim();
  return /^\d+$/.test(size) ? { cosigned: pasted, size: Number(size) } : { cosigned: pasted };
}
