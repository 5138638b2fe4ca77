/** Every channel between the page's process and the main one. */
export const channels = {
  /** Page to main, answered: number of the call, verb, arguments. */
  call: 'larkrow:call',
  /** Page to main: number of the call. */
  cancel: 'larkrow:cancel',
  /** Main to page: number of the call, progress. */
  progress: 'larkrow:progress',
  /** Main to page: an event. */
  event: 'larkrow:event',
} as const;
