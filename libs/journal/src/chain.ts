import { canonical, type Json } from './canonical.js';
import { utf8 } from './utf8.js';

/** SHA-256, given by the caller, so that this library does no cryptography and no I/O of its own. */
export type Digest = (bytes: Uint8Array) => Uint8Array;

/** One entry of a stream of the journal, as it is hashed. */
export interface ChainEntry {
  /** The operator's number, 0 to 2^31 − 1. */
  readonly operatorId: number;
  /** The stream's id, a UUID. */
  readonly streamId: string;
  /** Its place in the stream, from 1. */
  readonly seq: bigint;
  /** Its number in the operator's journal. */
  readonly number: bigint;
  /** Microseconds since 1970-01-01T00:00Z. */
  readonly recordedAtMicros: bigint;
  /** The hash of the entry before in the stream; 32 zero bytes before the first. */
  readonly prev: Uint8Array;
  readonly body: Json;
}

/** What stands before the first entry of a stream. */
export const NO_PREVIOUS: Uint8Array = new Uint8Array(32);

const ENTRY = 0x00;
const HEAD_BYTES = 1 + 4 + 16 + 8 + 8 + 8 + 32;

/**
 * The bytes of an entry that are hashed:
 * `0x00 ‖ operator int4 ‖ stream UUID 16 bytes ‖ seq int8 ‖ number int8 ‖ recorded at, µs, int8 ‖ prev 32 bytes ‖
 * canonical body in UTF-8`, integers signed and big-endian.
 *
 * Throws on a stream id that is no UUID, a hash that is not 32 bytes, or a number out of its range.
 */
export function entryBytes(entry: ChainEntry): Uint8Array {
  if (entry.prev.length !== 32) throw new RangeError(`a previous hash of ${entry.prev.length} bytes`);
  if (!Number.isInteger(entry.operatorId) || entry.operatorId < 0 || entry.operatorId > 0x7fff_ffff)
    throw new RangeError(`an operator number out of range: ${entry.operatorId}`);
  const body = utf8(canonical(entry.body));
  const bytes = new Uint8Array(HEAD_BYTES + body.length);
  const view = new DataView(bytes.buffer);
  bytes[0] = ENTRY;
  view.setInt32(1, entry.operatorId);
  bytes.set(uuidBytes(entry.streamId), 5);
  view.setBigInt64(21, inRange(entry.seq));
  view.setBigInt64(29, inRange(entry.number));
  view.setBigInt64(37, inRange(entry.recordedAtMicros));
  bytes.set(entry.prev, 45);
  bytes.set(body, HEAD_BYTES);
  return bytes;
}

/** The hash of an entry, 32 bytes. Throws as `entryBytes` does. */
export function entryHash(entry: ChainEntry, digest: Digest): Uint8Array {
  return digest(entryBytes(entry));
}

function inRange(value: bigint): bigint {
  if (BigInt.asIntN(64, value) !== value) throw new RangeError(`a number beyond 64 bits: ${value}`);
  return value;
}

function uuidBytes(id: string): Uint8Array {
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id)) throw new RangeError(`not a UUID: ${id}`);
  const digits = id.replaceAll('-', '');
  return Uint8Array.from({ length: 16 }, (_, index) =>
    Number.parseInt(digits.slice(index * 2, index * 2 + 2), 16),
  );
}
