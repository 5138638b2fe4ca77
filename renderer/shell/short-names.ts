/**
 * A sentence with the names in it cut short in their middle: people tell long names apart by how they begin and end.
 * Names stand in the studio's sentences between “ and ”.
 */
export function withShortNames(sentence: string): string {
  return sentence.replace(/“([^“”]+)”/g, (_, name: string) => `“${shortened(name)}”`);
}

/** How many characters of a name are shown, the sign for what is left out among them. */
const shownAtMost = 40;

function shortened(name: string): string {
  const characters = [...name];
  if (characters.length <= shownAtMost) return name;
  const before = Math.ceil((shownAtMost - 1) / 2);
  const after = shownAtMost - 1 - before;
  return `${characters.slice(0, before).join('').trimEnd()}…${characters.slice(-after).join('').trimStart()}`;
}
