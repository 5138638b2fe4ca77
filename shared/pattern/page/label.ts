/** One line of text on a page: the body face in the body size, dark, from its left end, unless told otherwise. */
import type { TextItem } from './page.ts';
import { inks, sizes } from './style.ts';

export type LabelStyle = Partial<
  Pick<TextItem, 'face' | 'sizeMm' | 'color' | 'align' | 'role' | 'joined' | 'link'>
>;

export function label(x: number, y: number, text: string, style: LabelStyle = {}): TextItem {
  return {
    kind: 'text',
    x,
    y,
    text,
    face: 'sans',
    sizeMm: sizes.body,
    color: inks.text,
    align: 'left',
    ...style,
  };
}
