/** The small panel that lies over the chart's corner: at most one at a time, beside which the chart can be used. */
import { createStore } from 'zustand/vanilla';

type ChartPanel = 'fringe' | 'reference';

export const chartPanel = createStore<{ readonly shown: ChartPanel | null }>(() => ({ shown: null }));

/** Shows a panel, or puts it away where it is shown. */
export function toggleChartPanel(panel: ChartPanel): void {
  chartPanel.setState(({ shown }) => ({ shown: shown === panel ? null : panel }));
}

export function closeChartPanel(): void {
  chartPanel.setState({ shown: null });
}
