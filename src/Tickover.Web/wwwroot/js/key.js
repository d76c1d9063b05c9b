// @ts-check
/** A name for one entry that no other entry ever has. */

/**
 * A random UUID (RFC 9562, version 4). crypto.randomUUID is only there over TLS and on loopback; this is there everywhere.
 * @returns {string}
 */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((b) => b.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
