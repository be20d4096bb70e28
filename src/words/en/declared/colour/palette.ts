/** What `/palette` says of itself where it is declared. */
export const says = {
  purpose: 'Colours that go together: what your shelf makes, and what to buy',
  options: {
    colours: 'Colours, “teal, gold, #a04060”, or a mood: “sunset, four layers”',
    portion: 'Batter for each colour: “2 cups”. 1 cup unless you say',
    base: 'The soap without colour: white, cream, yellow, green, or your oils',
    gel: 'Does it go through gel?',
  },
  today: {
    purpose: 'What you can make today: palettes from your shelf whose hues hold together',
    scheme: {
      says: 'How the hues stand to one another',
      choices: {
        analogous: 'Neighbours',
        complementary: 'Opposites',
        'split-complementary': 'Split opposites',
        triadic: 'Triangle',
        tetradic: 'Square',
      },
    },
  },
  make: { purpose: 'A recipe from your shelf for each colour of a palette' },
  buy: { purpose: 'The one or two colourants that bring a palette nearest' },
};
