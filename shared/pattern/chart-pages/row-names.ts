/**
 * The names of yarns as rows print them. Long ones would fill the rows with themselves: they are shortened, and end in their
 * symbol's letter, so that none are alike.
 */
import type { YarnId } from '../../design/codes.ts';
import type { PatternContext } from '../pattern-input.ts';

const NAME_CHARS = 28;

export interface RowNames {
  readonly byId: ReadonlyMap<YarnId, { readonly name: string }>;
  /** Whether any was shortened, so that the page can say so. */
  readonly shortened: boolean;
}

export function rowNames({ design, printer }: Pick<PatternContext, 'design' | 'printer'>): RowNames {
  let shortened = false;
  const byId = new Map<YarnId, { readonly name: string }>();
  for (const { id, name, symbol } of design.yarns) {
    const letters = [...printer.printable(name)];
    const isLong = letters.length > NAME_CHARS;
    const first = letters.slice(0, NAME_CHARS - 4).join('');
    byId.set(id, { name: isLong ? `${first.trimEnd()}… ${symbol}` : letters.join('') });
    shortened ||= isLong;
  }
  return { byId, shortened };
}
