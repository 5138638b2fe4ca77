/** How long each of `count` runs takes, in ms, in order of length. One run before them warms up and is not counted. */
export async function timesMs(count: number, run: () => unknown): Promise<number[]> {
  await run();
  const times: number[] = [];
  for (let done = 0; done < count; done++) {
    const began = performance.now();
    await run();
    times.push(performance.now() - began);
  }
  return times.sort((a, b) => a - b);
}

/** The middle one and the longest, for a line of a table. */
export function inWords(sorted: readonly number[]): string {
  const median = sorted[Math.floor(sorted.length / 2)]!;
  return `median ${median.toFixed(1)} ms, longest ${sorted.at(-1)!.toFixed(1)} ms (${sorted.length} runs)`;
}
