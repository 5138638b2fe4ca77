import { limits } from './limits.ts';

/** The title of a copy of a design; a long one makes room for the word. */
export function titleOfCopy(title: string): string {
  const ending = ' copy';
  return `${title.slice(0, limits.nameChars - ending.length).trimEnd()}${ending}`;
}
