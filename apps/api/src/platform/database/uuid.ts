import { randomFillSync } from 'node:crypto';

/**
 * A new id: a UUID of version 7, so that ids made later sort later and indexes grow at their end.
 * The order is a convenience of storage, never an authority on what came first.
 * Source: RFC 9562, 5.7.
 */
export function newId(): string {
  const bytes = randomFillSync(Buffer.alloc(16));
  bytes.writeUIntBE(Date.now(), 0, 6);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x70, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString('hex');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}
