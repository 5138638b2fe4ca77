/** A designer's text on the page: each of its lines a paragraph, in letters that can be printed. */

import type { Printer } from '../page/printable.ts';
import { type Flow, type ParagraphStyle, paragraph } from './flow.ts';

/** The lines that hold anything. */
export function linesOf(text: string, printer: Printer): string[] {
  return text
    .split(/\r\n|\r|\n/)
    .map((line) => printer.printable(line))
    .filter((line) => line !== '');
}

export function paragraphs(flow: Flow, lines: readonly string[], style: ParagraphStyle = {}): void {
  for (const line of lines) paragraph(flow, line, style);
}
