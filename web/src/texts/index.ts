// The sentences of the app, as screens read them. English is in the first bundle; another language is a chunk of
// its own, read before the first screen is drawn. Changing the language loads the page again.

export type { Texts } from './en/index.ts';
export { inUse, t } from './language.ts';
export { said } from './said.ts';
