/** Counts as findings say them: '1 knot', '1,080 knots'. */
export function counted(count: number, thing: string): string {
  return `${count.toLocaleString('en')} ${thing}${count === 1 ? '' : 's'}`;
}
