/** Tells how a saving ended: what was saved, that it was stopped, or what went wrong. */
import type { Result } from '../../shared/result.ts';
import { tell, tellProblem } from '../shell/notices.tsx';

export function reportSaved<T>(result: Result<T>, sentence: (value: T) => string): void {
  if (result.ok) tell(sentence(result.value));
  else if (result.problem.code === 'cancelled') tell('Stopped. Nothing was written.');
  else tellProblem(result.problem.sentence);
}
