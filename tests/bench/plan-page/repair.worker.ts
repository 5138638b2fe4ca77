/** Repairs plans as a worker of the studio does, without sending them to anybody. */
import { repairTimesMs } from '../plan/repair-times.ts';
import { shadedDesign } from '../plan/shaded-design.ts';

/** Cords, rows, and how many edits. */
export interface RepairQuestion {
  readonly columns: number;
  readonly rows: number;
  readonly count: number;
}

self.addEventListener('message', ({ data }: MessageEvent<RepairQuestion>) => {
  self.postMessage(repairTimesMs(shadedDesign(data.columns, data.rows), data.count));
});
