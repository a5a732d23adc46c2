/** A bare position number said as a position: 'ZZ-417, 1' -> 'Position 1 on ZZ-417'. Other places stay as they are. */
export function slotWords(label: string): string {
  const match = /^(.*), (\d+)( \(pod\))?$/.exec(label);
  return match === null ? label : `Position ${match[2]} on ${match[1]}${match[3] ?? ''}`;
}
