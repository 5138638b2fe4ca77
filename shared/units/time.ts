/** Times at the dowel. */
import { grouped } from './grouped.ts';
import { wholeSteps } from './round.ts';

/**
 * '40 min', '12 h 40 min'. To the minute below an hour and to five minutes from there: rates of work are known no
 * better. Work that takes any time at all takes at least a minute.
 */
export function formatTime(seconds: number): string {
  const minutes = wholeSteps(seconds, 60);
  if (minutes < 60) return `${seconds > 0 ? Math.max(1, minutes) : 0} min`;
  const fives = wholeSteps(seconds, 300) * 5;
  const rest = fives % 60;
  const hours = `${grouped(String(Math.floor(fives / 60)))} h`;
  return rest === 0 ? hours : `${hours} ${rest} min`;
}
