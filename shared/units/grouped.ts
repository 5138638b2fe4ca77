/**
 * A number in digits, its thousands parted by commas: '1,080', '12,345.50'. All figures are written so, counts as well as
 * lengths and money; `told-in.ts` gives them to other languages.
 */
export function grouped(digits: string): string {
  const [whole = '', ...rest] = digits.split('.');
  return [whole.replace(/\B(?=(\d{3})+$)/g, ','), ...rest].join('.');
}
