/** Of no pattern: words that name a page are given room for this one, so that it does not hang on a number still to come. */
export const HIGHEST_PAGE = 9999;
