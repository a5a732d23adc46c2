/** A file name every system takes, from a title: letters, digits and hyphens, ending in '.pdf'. Total. */
export function fileNameOf(title: string): string {
  const plain = title
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return `${plain === '' ? 'document' : plain}.pdf`;
}
