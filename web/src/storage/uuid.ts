// UUIDv7 (RFC 9562): ids that phones mint for themselves and that sort by the time they were made.

let lastTime = 0;
let sequence = 0;

export function uuidv7(now: number = Date.now()): string {
  // Two ids made in the same millisecond still sort in order: the 12 bits after the version count up.
  if (now > lastTime) {
    lastTime = now;
    sequence = (crypto.getRandomValues(new Uint16Array(1))[0] ?? 0) & 0x3ff;
  } else {
    sequence += 1;
    if (sequence > 0xfff) {
      lastTime += 1;
      sequence = 0;
    }
  }
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let time = lastTime;
  for (let i = 5; i >= 0; i -= 1) {
    bytes[i] = time % 256;
    time = Math.floor(time / 256);
  }
  bytes[6] = 0x70 | (sequence >> 8);
  bytes[7] = sequence & 0xff;
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f);
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}

/** The time an id was minted at, in milliseconds since 1970. */
export function timeOfUuidv7(id: string): number {
  return Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16) || 0;
}
