/** What `/dose` says of itself where it is declared. */
export const says = {
  purpose: 'How much colourant for the batter you pull out, and how to wet it',
  colourant: 'A colourant by name or CI number, or a jar on your shelf',
  portion: 'How much batter: “2 cups”, “500 ml”, “1 lb oils”',
  strength: 'Tint, pastel, medium, full, or teaspoons per cup. What is usual unless you say',
  carrier: 'What you want to wet it in: water, oil or glycerin',
  premix: 'Already wet? “30%” pigment, or your own paste: “1 tsp in 1 Tbsp oil”',
  with: 'Another colourant in the same portion: “gold mica pastel”',
  recipe: 'A kept recipe whose batter it is, for a closer answer',
};
