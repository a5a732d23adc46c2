/** How exactly a boundary of this kind is known. Total. */
export function precisionOf(boundaryKind: string): 'minute' | 'page' | 'day' {
  if (boundaryKind === 'instant') return 'minute';
  return boundaryKind === 'after-page' ? 'page' : 'day';
}
