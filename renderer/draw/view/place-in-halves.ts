/** A place in half cells as a person says it: on 'cord 4', or 'between cords 4 and 5'. */
export function placeInHalves(halves: number, what: 'cord' | 'row'): string {
  const before = Math.floor(halves / 2);
  if (halves % 2 === 1) return `on ${what} ${before + 1}`;
  return before === 0 ? `before ${what} 1` : `between ${what}s ${before} and ${before + 1}`;
}
