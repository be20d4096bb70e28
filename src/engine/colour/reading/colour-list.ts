/**
 * The pieces of a list of colours, apart by commas, semicolons or lines, trimmed and none empty: a comma inside brackets parts
 * nothing, as in `teal, lab(50, 10, -20)`.
 */
export const colourPieces = (text: string): readonly string[] =>
  text
    .split(/[;\n]|,(?![^(]*\))/u)
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
