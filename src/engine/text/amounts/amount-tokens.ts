const FIGURE = String.raw`\d\/\d|\d+(?: \d\/\d)?(?:[.,]\d+)?`;
/** A figure with the word behind it (`unit`), a `word`, or any other `sign`, one after another; marks between clauses are none. */
export const TOKEN = new RegExp(
  String.raw`(?<figure>${FIGURE})[ -]?(?<unit>\p{L}+)?|(?<word>\p{L}[\p{L}\p{M}'’/]*)|(?<sign>[^\s,.;:()!?¡¿–—-])`,
  'giu',
);
