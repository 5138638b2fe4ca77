/** The flat chart as the object that `chart --json` prints, and the hash that ties a plan to its chart. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { BARE, type YarnId, yarnIdOf } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import type { StartCorner } from '../design/schema.ts';
import type { Chart } from './chart.ts';

const CHART_FORMAT = 'larkrow-chart';
const CHART_VERSION = 1;

/** So many cells of one yarn side by side; null is bare. */
type ChartRun = [yarn: YarnId | null, count: number];

export interface ChartJson {
  format: typeof CHART_FORMAT;
  version: typeof CHART_VERSION;
  columns: number;
  rows: number;
  startCorner: StartCorner;
  /** All yarns, in the design's order, whether or not they show. */
  yarns: { id: YarnId; name: string; symbol: string; color: string }[];
  /** Row 1 first; each row left to right as seen from the front, neighbouring runs never alike. */
  cells: ChartRun[][];
}

/** `chart` is the design's own, as `flatten` makes it. Its keys stand in the published order. */
export function chartJson(design: Design, chart: Chart): ChartJson {
  return {
    format: CHART_FORMAT,
    version: CHART_VERSION,
    columns: chart.columns,
    rows: chart.rows,
    startCorner: chart.startCorner,
    yarns: design.yarns.map(({ id, name, symbol, color }) => ({ id, name, symbol, color })),
    cells: Array.from({ length: chart.rows }, (_, row) => runsOfRow(chart, row)),
  };
}

/** SHA-256, in hex, of the object's canonical text: JSON without white space, keys in the published order. */
export function chartHash(json: ChartJson): string {
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify(json))));
}

function runsOfRow({ cells, columns }: Chart, row: number): ChartRun[] {
  const runs: ChartRun[] = [];
  const end = (row + 1) * columns;
  for (let from = row * columns; from < end; ) {
    const code = cells[from]!;
    let to = from + 1;
    while (to < end && cells[to] === code) to++;
    runs.push([code === BARE ? null : yarnIdOf(code), to - from]);
    from = to;
  }
  return runs;
}
