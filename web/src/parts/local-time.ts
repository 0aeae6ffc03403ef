// What a `datetime-local` field holds, and the moment that it means on this device's clock.

export function toLocal(at: string | null | undefined): string {
  const when = at ? new Date(at) : undefined;
  if (!when || Number.isNaN(when.getTime())) return '';
  return new Date(when.getTime() - when.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

export function fromLocal(text: string): string | null {
  const when = new Date(text);
  return text && !Number.isNaN(when.getTime()) ? when.toISOString() : null;
}
