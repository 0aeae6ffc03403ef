// RFC 6962 section 2.1: the hash of a leaf is SHA-256 over a zero byte and the leaf's bytes.

export async function leafHash(canonical: string): Promise<string> {
  const bytes = new TextEncoder().encode(canonical);
  const input = new Uint8Array(bytes.length + 1);
  input.set(bytes, 1);
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', input));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
