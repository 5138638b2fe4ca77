/**
 * The accents of the Small alphabet, each twice: for letters whose middle falls on a column, and for those whose
 * middle falls between two. Named by the code points of Unicode's combining characters. An accent above is set one
 * row clear of its letter; one below is drawn from the first row under the baseline.
 */
export const smallMarks = {
  odd: `
0300  0301  0302  0303  0304  0306  0307  0308  030A  030B  030C
...   ...   ...   ...   ...   ...   .     ...   .#.   ...   ...
#..   ..#   .#.   .##   ...   #.#   .     ...   #.#   #.#   #.#
.#.   .#.   #.#   ##.   ###   ###   #     #.#   .#.   #.#   .#.

0326  0327  0328
----------------
...   .#.   .#.
.#.   ..#   ..#
#..   ##.   ...
`,
  even: `
0300  0301  0302  0303  0304  0306  0307  0308  030A  030B  030C
..    ..    ....  ....  ....  ....  ..    ....  .##.  ....  ....
#.    .#    .##.  .#.#  ....  #..#  ##    ....  #..#  #..#  #..#
.#    #.    #..#  #.#.  ####  ####  ##    #..#  .##.  #..#  .##.

0326  0327  0328
----------------
..    .#..  #.
.#    ..#.  .#
#.    ##..  ..
`,
};
