/** Undyed cotton: what cords look like in pictures of a hanging. The design file has no colour for cord. */
export const COTTON = '#e6dabf';
