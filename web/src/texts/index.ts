// The language in use. One today; choosing among several happens here and nowhere else.

import { en, type Texts } from './en.ts';

export const t: Texts = en;
