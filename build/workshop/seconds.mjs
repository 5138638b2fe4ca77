/**
 * How long something took, for a line on the terminal: '0.4 s', '12 s', '3 min 5 s'.
 *
 * @param {number} sinceMs  what performance.now() said at the beginning
 */
export function secondsSince(sinceMs) {
  const seconds = (performance.now() - sinceMs) / 1000;
  if (seconds < 10) return `${seconds.toFixed(1)} s`;
  const whole = Math.round(seconds);
  return whole < 60 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}
