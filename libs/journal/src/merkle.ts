import type { Digest } from './chain.js';

const LEAF = 0x00;
const NODE = 0x01;

/** The hash of one leaf: SHA-256(0x00 ‖ bytes). Source: RFC 9162, section 2.1.1. Total. */
export function leafHash(bytes: Uint8Array, digest: Digest): Uint8Array {
  const input = new Uint8Array(1 + bytes.length);
  input[0] = LEAF;
  input.set(bytes, 1);
  return digest(input);
}

/** The hash of two subtrees: SHA-256(0x01 ‖ left ‖ right). Source: RFC 9162, section 2.1.1. Total. */
export function nodeHash(left: Uint8Array, right: Uint8Array, digest: Digest): Uint8Array {
  const input = new Uint8Array(1 + left.length + right.length);
  input[0] = NODE;
  input.set(left, 1);
  input.set(right, 1 + left.length);
  return digest(input);
}

/**
 * The root of the tree over leaves in order, in memory of the depth of the tree alone.
 *
 * The left subtree is always the largest whole power of two that is smaller than what it covers. No leaf at all
 * is the hash of nothing. Total.
 *
 * Source: RFC 9162, section 2.1.1 (Merkle tree hash).
 */
export function merkleRoot(leaves: Iterable<Uint8Array>, digest: Digest): Uint8Array {
  const whole: { readonly leaves: number; readonly hash: Uint8Array }[] = [];
  for (const leaf of leaves) {
    let grown = { leaves: 1, hash: leafHash(leaf, digest) };
    for (let before = whole.at(-1); before?.leaves === grown.leaves; before = whole.at(-1)) {
      whole.pop();
      grown = { leaves: grown.leaves * 2, hash: nodeHash(before.hash, grown.hash, digest) };
    }
    whole.push(grown);
  }
  const last = whole.pop();
  if (last === undefined) return digest(new Uint8Array(0));
  return whole.reduceRight((right, { hash }) => nodeHash(hash, right, digest), last.hash);
}
