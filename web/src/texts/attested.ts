// The words of an attestation in the app's language. What is signed says which were shown: so who shows them and who
// signs them ask here, and cannot differ.

import type { Attestation } from '../api/types.ts';
import { inUse } from './language.ts';

/** None where they are shown in English, as they stand. */
export function translated(attestation: Attestation): { language: string; text: string } | undefined {
  const { language } = inUse;
  const text = language === 'en' ? undefined : attestation.texts?.[language];
  return text ? { language, text } : undefined;
}
