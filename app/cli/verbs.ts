/** The verbs of the command line, in the order of the help. Each is loaded only when it is used: some are heavy. */
import type { CliVerb } from './cli-verb.ts';

export interface VerbEntry {
  /** One line for the list of verbs. */
  readonly summary: string;
  readonly load: () => Promise<CliVerb>;
}

export const verbs: Readonly<Record<string, VerbEntry>> = {
  picture: {
    summary: 'turns a picture into a design',
    load: async () => (await import('./verbs/picture.ts')).picture,
  },
  chart: {
    summary: 'prints the flat chart, as it is tied',
    load: async () => (await import('./verbs/chart.ts')).chart,
  },
  plan: {
    summary: 'prints the plan of strands: what is tied, carried and cut',
    load: async () => (await import('./verbs/plan.ts')).plan,
  },
  materials: {
    summary: 'prints what the hanging takes: yarn, cord, dowel, time',
    load: async () => (await import('./verbs/materials.ts')).materials,
  },
  rows: {
    summary: 'prints the written rows',
    load: async () => (await import('./verbs/rows.ts')).rows,
  },
  steps: {
    summary: 'prints what to do, step by step',
    load: async () => (await import('./verbs/steps.ts')).steps,
  },
  bundles: {
    summary: 'prints which pieces of yarn to cut, and writes labels for them',
    load: async () => (await import('./verbs/bundles.ts')).bundles,
  },
  pattern: {
    summary: 'writes the pattern as PDF, and the chart as PNG',
    load: async () => (await import('./verbs/pattern.ts')).pattern,
  },
  editions: {
    summary: 'lists the editions of the pattern and what changed since; publishes the next one',
    load: async () => (await import('./verbs/editions.ts')).editions,
  },
  papers: {
    summary: 'writes the papers that go with a finished hanging: care card, labels, backing, packing note',
    load: async () => (await import('./verbs/papers.ts')).papers,
  },
  preflight: {
    summary: 'lists what would disappoint a buyer of the pattern',
    load: async () => (await import('./verbs/preflight.ts')).preflight,
  },
  parcel: {
    summary: 'writes everything for selling the pattern: copies, pictures, the listing',
    load: async () => (await import('./verbs/parcel.ts')).parcel,
  },
  check: {
    summary: 'says whether a design is sound and can be tied',
    load: async () => (await import('./verbs/check.ts')).check,
  },
  demo: {
    summary: 'writes the demo designs, their patterns and pictures',
    load: async () => (await import('./verbs/demo.ts')).demo,
  },
};
