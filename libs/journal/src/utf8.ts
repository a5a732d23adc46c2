/** The bytes of a text in UTF-8. The text has no lone surrogates: the canonical form refused them. */
export function utf8(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const character of text) {
    const point = character.codePointAt(0) ?? 0;
    if (point < 0x80) bytes.push(point);
    else if (point < 0x800) bytes.push(0xc0 | (point >> 6), tail(point));
    else if (point < 0x1_0000) bytes.push(0xe0 | (point >> 12), tail(point >> 6), tail(point));
    else bytes.push(0xf0 | (point >> 18), tail(point >> 12), tail(point >> 6), tail(point));
  }
  return Uint8Array.from(bytes);
}

function tail(bits: number): number {
  return 0x80 | (bits & 0x3f);
}
