// Compact JWS (RFC 7515), ES256. The payload is handed in as finished bytes.

export function base64url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

export function fromBase64url(text: string): Uint8Array {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (char) => char.charCodeAt(0));
}

export const SIGN_OFF = 'gagwright-signoff+jws';
export const DAY_SIGN_OFF = 'gagwright-day-signoff+jws';
export const HANDED = 'gagwright-handed+jws';

export async function signCompact(
  payload: string,
  device: string,
  key: CryptoKey,
  typ: string = SIGN_OFF,
): Promise<string> {
  const encoder = new TextEncoder();
  const header = JSON.stringify({ alg: 'ES256', typ, kid: device });
  const input = `${base64url(encoder.encode(header))}.${base64url(encoder.encode(payload))}`;
  const algorithm = { name: 'ECDSA', hash: 'SHA-256' };
  const signature = await crypto.subtle.sign(algorithm, key, encoder.encode(input));
  return `${input}.${base64url(new Uint8Array(signature))}`;
}

/** The statement inside, unverified: for showing what waits to be sent. */
export function payloadOf<T>(jws: string): T {
  const part = jws.split('.')[1] ?? '';
  return JSON.parse(new TextDecoder().decode(fromBase64url(part))) as T;
}
