/** A file name that nothing in a folder has, whether or not its disk tells capitals from small letters. */
import type { FileLayer } from '../files/file-layer.ts';

/** 'Fox.larkrow', then 'Fox 2.larkrow', 'Fox 3.larkrow' … `butFor` may be taken: the name of the file itself. */
export async function freeName(
  files: FileLayer,
  folder: string,
  stem: string,
  ending: string,
  butFor?: string,
): Promise<string> {
  const taken = new Set((await files.list(folder)).map(folded));
  if (butFor !== undefined) taken.delete(folded(butFor));
  for (let n = 1; ; n++) {
    const name = n === 1 ? `${stem}${ending}` : `${stem} ${n}${ending}`;
    if (!taken.has(folded(name))) return name;
  }
}

function folded(name: string): string {
  return name.normalize('NFC').toLowerCase();
}
