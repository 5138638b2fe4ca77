/** Counts as they are printed: '1,080', '1 cord', '30 cords'. */

export function grouped(count: number): string {
  return count.toLocaleString('en');
}

export function counted(count: number, thing: string): string {
  return `${grouped(count)} ${thing}${count === 1 ? '' : 's'}`;
}
