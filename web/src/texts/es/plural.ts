// One or many, in Spanish.

import { pluralOf } from '../plural.ts';

export const plural = pluralOf('es');
