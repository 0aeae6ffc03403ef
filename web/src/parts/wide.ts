// Whether there is room for a list beside what is opened from it.

import { MediaQuery } from 'svelte/reactivity';

export const wide = new MediaQuery('(width >= 60rem)', false);
