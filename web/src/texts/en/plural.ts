// One or many, in English.

import { pluralOf } from '../plural.ts';

export const plural = pluralOf('en');
