// The language in use. Screens read `t`; which language it holds is settled once, before the first screen is
// drawn, and changing it loads the page again.

import { en, type Texts } from './en/index.ts';

export type { Texts };

export const t: Texts = { ...en };
