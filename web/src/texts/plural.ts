// One or many, by the rules of a language and not by our guess at them.

/** Makes the `plural` of one language: the number as that language writes it, and the form that it asks for. */
export function pluralOf(language: string): (n: number, one: string, many: string) => string {
  const rules = new Intl.PluralRules(language);
  const number = new Intl.NumberFormat(language);
  return (n, one, many) => `${number.format(n)} ${rules.select(n) === 'one' ? one : many}`;
}
