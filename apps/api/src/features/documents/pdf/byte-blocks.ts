const BLOCK = 1 << 18;

/** Bytes written in many small pieces, kept in few large blocks: a piece each would cost more than its content. */
export class ByteBlocks {
  private readonly full: Uint8Array[] = [];
  private block = new Uint8Array(BLOCK);
  private used = 0;

  add(piece: Uint8Array): void {
    for (let from = 0; from < piece.length; ) {
      const taken = Math.min(piece.length - from, BLOCK - this.used);
      this.block.set(piece.subarray(from, from + taken), this.used);
      this.used += taken;
      from += taken;
      if (this.used === BLOCK) {
        this.full.push(this.block);
        this.block = new Uint8Array(BLOCK);
        this.used = 0;
      }
    }
  }

  /** All of it in one piece. */
  joined(): Uint8Array {
    const whole = new Uint8Array(this.full.length * BLOCK + this.used);
    for (const [index, block] of this.full.entries()) whole.set(block, index * BLOCK);
    whole.set(this.block.subarray(0, this.used), this.full.length * BLOCK);
    return whole;
  }
}
