/** The designs named on a command line, as full paths: what a double click or a second start wants opened. */
import { resolve } from 'node:path';
import { isDesignName } from '../services/shelf/designs-in.ts';

export function filesInWords(words: readonly string[], folder: string): string[] {
  return words
    .filter((word) => !word.startsWith('-') && isDesignName(word))
    .map((word) => resolve(folder, word));
}
