/** What `/preview` says of itself where it is declared. */
export const says = {
  purpose: 'See the cured colour of a mix before you pour, with a swatch card',
  mix: 'What goes in: “ultramarine violet pastel + titanium dioxide 1/4 tsp”',
  portion: 'How much batter it goes into: “2 cups”. 1 cup unless you say',
  base: 'The soap without colour: white, cream, yellow, green, or your oils. Cream unless you say',
  gel: 'Does it go through gel? No unless you say; the card shows both',
};
