/**
 * Printed words in all languages. Every word that a pattern prints stands in this folder, a file for each part of the
 * pattern; another language is another entry in each of them, and the compiler names those that lack it. Figures within
 * sentences are given to functions, so that each language puts them where it needs them.
 */
import type { Language } from '../../design/pattern-schema.ts';

export type Worded<Words> = { readonly [L in Language]: Words };
