/**
 * The files of the text faces, inside the packages that bring them (both under the SIL Open Font License). The host
 * reads them from disk, the page has them bundled. The symbols' own file is `shared/yarn/larkrow-symbols.otf`.
 */
import type { Face } from '../page/page.ts';

export type TextFace = Exclude<Face, 'symbols'>;

export const faceFiles: Record<TextFace, string> = {
  sans: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf',
  'sans-bold': '@expo-google-fonts/noto-sans/600SemiBold/NotoSans_600SemiBold.ttf',
  serif: '@expo-google-fonts/noto-serif/400Regular/NotoSerif_400Regular.ttf',
  'serif-bold': '@expo-google-fonts/noto-serif/600SemiBold/NotoSerif_600SemiBold.ttf',
};
