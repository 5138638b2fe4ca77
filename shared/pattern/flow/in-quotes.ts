/** A text that a sentence names: in quotes, on one line, and cut short where it would bury the sentence. */
export function inQuotes(text: string): string {
  const letters = [...text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, ' ').trim()];
  return `“${
    letters.length > MOST
      ? `${letters
          .slice(0, MOST - 1)
          .join('')
          .trimEnd()}…`
      : letters.join('')
  }”`;
}

const MOST = 40;
