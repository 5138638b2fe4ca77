/** Small pictures for tests, as rgba bytes. */
import fc from 'fast-check';

export interface Picture {
  widthPx: number;
  heightPx: number;
  rgba: Uint8Array;
}

/** A picture drawn as rows of letters, each letter a colour of `colours`, `#rrggbb` or `#rrggbbaa`. */
export function pictureFromLetters(rows: readonly string[], colours: Record<string, string>): Picture {
  const letters = rows.flatMap((row) => [...row]);
  const rgba = Uint8Array.from(letters.flatMap((letter) => bytesOf(colours[letter]!)));
  return { widthPx: rows[0]!.length, heightPx: rows.length, rgba };
}

/** Any colours, see-through or not, few or many. */
export function arbitraryPicture(maxSide = 9): fc.Arbitrary<Picture> {
  const side = fc.integer({ min: 1, max: maxSide });
  return fc.tuple(side, side).chain(([widthPx, heightPx]) => {
    const length = widthPx * heightPx * 4;
    return fc
      .uint8Array({ minLength: length, maxLength: length })
      .map((rgba) => ({ widthPx, heightPx, rgba }));
  });
}

export function mirrored({ widthPx, heightPx, rgba }: Picture): Picture {
  const mirror = new Uint8Array(rgba.length);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const from = (y * widthPx + x) * 4;
      mirror.set(rgba.subarray(from, from + 4), (y * widthPx + widthPx - 1 - x) * 4);
    }
  }
  return { widthPx, heightPx, rgba: mirror };
}

function bytesOf(colour: string): number[] {
  return (`${colour.slice(1)}ff`.slice(0, 8).match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));
}
