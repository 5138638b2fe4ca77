import { openPdfFile } from '../../app/services/pdf-in/pdf-file.ts';

/**
 * A file with the objects of its streams (ISO 32000-1, 7.5.7) written out one by one behind a table of text, for tests that
 * change a word of it.
 */
export function unpacked(bytes: Uint8Array): Buffer {
  const text = Buffer.from(bytes).toString('latin1');
  const file = openPdfFile(bytes)!;
  const objects = new Map<number, string>();
  let trailer = '';
  for (const [whole, number, inside] of text.matchAll(/(\d+) 0 obj\n(.*?)\nendobj\n/gs)) {
    const [kind] = /(?<=\/Type \/)(ObjStm|XRef)/.exec(inside!.slice(0, 40)) ?? [];
    if (kind === 'XRef') trailer = /\/Root(.|\n)*?\n(?=\/Filter)/.exec(inside!)![0];
    else if (kind === 'ObjStm') {
      const stream = file.dictionaryOf({ object: Number(number) })!;
      const said = Buffer.from(file.bytesOf({ object: Number(number) })!).toString('latin1');
      const first = Number(stream.get('First'));
      const places = said.slice(0, first).trim().split(/\s+/).map(Number);
      for (let i = 0; i < places.length; i += 2) {
        const end = places[i + 3];
        const value = said
          .slice(first + places[i + 1]!, end === undefined ? undefined : first + end)
          .trimEnd();
        objects.set(places[i]!, `${places[i]} 0 obj\n${value}\nendobj\n`);
      }
    } else objects.set(Number(number), whole);
  }
  const written = [text.slice(0, /\d+ 0 obj\n/.exec(text)!.index)];
  let at = written[0]!.length;
  const size = Math.max(...objects.keys()) + 1;
  const rows = Array.from({ length: size }, () => '0000000000 65535 f \n');
  for (const [number, object] of objects) {
    rows[number] = `${String(at).padStart(10, '0')} 00000 n \n`;
    written.push(object);
    at += object.length;
  }
  const end = `xref\n0 ${size}\n${rows.join('')}trailer\n<<\n/Size ${size}\n${trailer}>>\nstartxref\n${at}\n%%EOF\n`;
  return Buffer.from(`${written.join('')}${end}`, 'latin1');
}
