// JSON in the one order that RFC 8785 gives it. That scheme writes numbers and texts as JSON.stringify does, so
// only the order of names is left to do. Whoever sends a write, its author's phone or another, sends the same bytes.

export function inOrder<T>(value: T): T {
  if (Array.isArray(value)) return value.map(inOrder) as T;
  if (typeof value !== 'object' || value === null) return value;
  const names = Object.keys(value).toSorted();
  return Object.fromEntries(
    names.map((name) => [name, inOrder((value as Record<string, unknown>)[name])]),
  ) as T;
}
