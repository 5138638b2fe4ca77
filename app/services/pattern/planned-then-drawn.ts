/** The progress of what is planned first and then drawn on pages: each of them is half of the way. */
import type { Progress } from '../../../shared/bridge.ts';

interface PlannedThenDrawn {
  /** `share` of the plan that is made, from 0 to 1. It is told once for each hundredth. */
  readonly onPlanned: (share: number) => void;
  readonly onDrawn: (progress: Progress) => void;
}

export function plannedThenDrawn(onProgress: ((progress: Progress) => void) | undefined): PlannedThenDrawn {
  let told = -1;
  return {
    onPlanned(share) {
      const hundredths = Math.floor(share * 100);
      if (hundredths <= told) return;
      told = hundredths;
      onProgress?.({ done: share / 2, what: 'Planning the strands' });
    },
    onDrawn: ({ done, what }) => onProgress?.({ done: (1 + done) / 2, what }),
  };
}
