/** What `node:util`'s parseArgs found wrong with a command line, in one sentence; other errors are thrown on. */
export function wordsFault(error: unknown): string {
  const code = error instanceof TypeError && 'code' in error ? String(error.code) : '';
  if (!(error instanceof TypeError) || !code.startsWith('ERR_PARSE_ARGS')) throw error;
  // Node adds advice of its own about dashes, which is not about our options.
  const [first = ''] = error.message.split(/(?<=')\. |\n/);
  return first.endsWith('.') ? first : `${first}.`;
}
