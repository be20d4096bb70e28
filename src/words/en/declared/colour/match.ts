/** What `/match` says of itself where it is declared. */
export const says = {
  purpose: 'A recipe in real spoons for the colour you want, from your shelf',
  target: 'The colour: “#6b3fa0”, or a name such as “teal” or “rebeccapurple”',
  photo: 'Or a photo of a bar: you pick one of its colours',
  portion: 'How much batter: “2 cups”, “500 ml”. 1 cup unless you say',
  from: {
    says: 'What it may use. Your shelf unless you say',
    choices: { shelf: 'My shelf', catalogue: 'Any pigment' },
  },
  with: 'Only of these: “red oxide, yellow oxide, white”',
  most: 'How many colourants at most, beside a white. 3 unless you say',
  base: 'The soap without colour: white, cream, yellow, green, or your oils. Cream unless you say',
  gel: 'Does it go through gel? No unless you say',
};
