/** The code of a file operation's error, such as 'ENOSPC'; '' where the error is another one. */
export function errorCode(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error)) return '';
  return typeof error.code === 'string' ? error.code : '';
}
