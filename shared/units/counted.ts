/**
 * '1 knot', '1,204 knots': how many of a thing, in any language. `count` may be written already, as its language writes
 * it. `things` where an s is not enough.
 */
export function counted(count: number | string, thing: string, things = `${thing}s`): string {
  const written = typeof count === 'string' ? count : count.toLocaleString('en');
  return `${written} ${written === '1' ? thing : things}`;
}
