// Which language the app speaks on this phone, and the tag that `Intl` writes its dates and numbers by. Settled
// once, before the first screen; knows nothing of where the choice is kept.

import { en, type Texts } from './en/index.ts';
import { learn, type Said } from './said.ts';

export type Language = 'en' | 'es';
export type LanguageWish = 'system' | Language;

/** Each language in its own words, its direction, and where its dates and numbers are taken from when the phone names no region. */
export const LANGUAGES: Record<Language, { title: string; dir: 'ltr' | 'rtl'; region: string }> = {
  en: { title: 'English', dir: 'ltr', region: 'en-GB' },
  es: { title: 'Español', dir: 'ltr', region: 'es-ES' },
};

/** Another language's sentences, and what it makes of those the core and the server say themselves. */
interface Other {
  texts: Texts;
  said: Said;
}

const others: Record<Exclude<Language, 'en'>, () => Promise<Other>> = {
  es: async () => {
    const [{ es }, { said }] = await Promise.all([import('./es/index.ts'), import('./es/said/index.ts')]);
    return { texts: es, said };
  },
};

export function isLanguage(name: string): name is Language {
  return Object.hasOwn(LANGUAGES, name);
}

/** The language wished for, or the first of the phone's that the app speaks; with the phone's own region for it. */
export function languageFor(
  wish: LanguageWish,
  preferred: readonly string[],
): { language: Language; tag: string } {
  const spoken = preferred.map((tag) => ({ tag, language: tag.split('-')[0]?.toLowerCase() ?? '' }));
  const language =
    wish !== 'system' ? wish : (spoken.map((one) => one.language).find(isLanguage) ?? ('en' as const));
  const regional = spoken.find((one) => one.language === language && one.tag.includes('-'));
  return { language, tag: regional?.tag ?? LANGUAGES[language].region };
}

/** The language in use; `settleLanguage` alone changes it. */
export const inUse: { language: Language; tag: string } = { language: 'en', tag: LANGUAGES.en.region };

/** Every sentence, in the language in use. Read when drawing, never kept from before the language was settled. */
export const t: Texts = { ...en };

/** Fills `t`, and tells the page which language it is written in. A language that cannot be had leaves English. */
export async function settleLanguage(wish: LanguageWish): Promise<void> {
  const found = languageFor(wish, navigator.languages ?? [navigator.language]);
  try {
    const { texts, said } =
      found.language === 'en'
        ? { texts: en, said: { rules: [], trail: [] } }
        : await others[found.language]();
    Object.assign(t, texts);
    Object.assign(inUse, found);
    learn(said, found.tag);
  } catch {
    Object.assign(inUse, languageFor('en', navigator.languages));
  }
  document.documentElement.lang = inUse.tag;
  document.documentElement.dir = LANGUAGES[inUse.language].dir;
}
