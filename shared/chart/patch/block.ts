/** A small chart of its own: the cells of a patch or a motif, lifted from the chart. */
export interface Block {
  readonly columns: number;
  readonly rows: number;
  /** Codes by row; EMPTY where the block has no cell. */
  readonly cells: Uint8Array;
}
