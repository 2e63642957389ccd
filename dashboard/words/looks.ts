/** Texts of answering one check at a time, on the spot and on the stand. */
export const LOOK_TEXTS = {
  cantTell: "Can\u2019t tell",
  later: "Later",
  undo: "Undo",
  change: "Change",
  lookOnAnyway: "Look on anyway",
  keys: "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo",
  keysAndFind: "Keys answer: 1 to 9 a level, 0 can\u2019t tell, U undo, / find",
} as const;
