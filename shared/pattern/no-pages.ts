/** A pattern without a page is nothing that can be printed or sold. */
import { problem } from '../result.ts';

/** Told wherever a pattern would be made of parts that give no page. */
export const noPages = problem(
  'no-pages',
  'The pattern has no page: none of its parts is printed. Tick at least the chart among the parts, on the Publish screen.',
);
