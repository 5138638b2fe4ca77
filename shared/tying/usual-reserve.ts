/**
 * The reserve of a piece that is offered where there is none, as a share of its length, and how much looser than the gauge a
 * hand is taken to be: a value from memory, to be measured.
 */
export const usualReserveShare = 0.03;
