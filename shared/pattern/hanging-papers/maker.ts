/** Who made the finished hanging, as its papers name them: the workshop and how to reach it. */
import type { PatternContext } from '../pattern-input.ts';

export interface Maker {
  /** Empty where nobody is named. */
  readonly name: string;
  readonly contact: readonly string[];
}

export function makerOf({
  design,
  imprint,
  printer,
}: Pick<PatternContext, 'design' | 'imprint' | 'printer'>): Maker {
  return {
    name: printer.printable(imprint.workshop || imprint.name || design.designer),
    contact: imprint.contact.map((line) => printer.printable(line)).filter((line) => line !== ''),
  };
}
