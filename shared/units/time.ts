/** Times at the dowel. */
import { grouped } from './grouped.ts';
import { wholeSteps } from './round.ts';
import { signed } from './signed.ts';

const MINUTE_S = 60;
const HOUR_S = 3600;

/**
 * '40 min', '12 h 40 min', '231 h'. To the minute below an hour, to five minutes from there, and to the hour from a hundred on:
 * rates of work are known no better. Work that takes any time at all takes at least a minute.
 */
export function formatTime(seconds: number): string {
  return wholeMinutes(timeAsShownS(seconds) / 60);
}

/** '+2 h 10 min', 'same': how the second differs from the first, as both are shown. */
export function timeDifference(beforeS: number, afterS: number): string {
  return signed((timeAsShownS(afterS) - timeAsShownS(beforeS)) / 60, wholeMinutes);
}

/** The time that is shown, in s: whoever reckons on with it gets what a reader gets. */
export function timeAsShownS(seconds: number): number {
  if (seconds <= 0) return 0;
  const minutes = wholeSteps(seconds, MINUTE_S);
  if (minutes < 60) return MINUTE_S * Math.max(1, minutes);
  const stepS = seconds < 100 * HOUR_S ? 5 * MINUTE_S : HOUR_S;
  return stepS * wholeSteps(seconds, stepS);
}

function wholeMinutes(minutes: number): string {
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  const hours = `${grouped(String(Math.floor(minutes / 60)))} h`;
  return rest === 0 ? hours : `${hours} ${rest} min`;
}
