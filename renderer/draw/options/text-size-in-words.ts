interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** How much of the chart a text takes, and where it is too large for it: '799 × 11 cells, wider than the 60 cords'. */
export function textSizeInWords(text: Size, chart: Size): string {
  const faults = [
    text.columns > chart.columns && `wider than the ${counted(chart.columns, 'cord')}`,
    text.rows > chart.rows && `higher than the ${counted(chart.rows, 'row')}`,
  ].filter((fault) => fault !== false);
  const size = `${text.columns} × ${text.rows} cells`;
  return faults.length > 0 ? `${size}, ${faults.join(' and ')}` : size;
}

function counted(count: number, what: string): string {
  return count === 1 ? `one ${what}` : `${count} ${what}s`;
}
