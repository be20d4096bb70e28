/** What `/pour` says of itself where it is declared. */
export const says = {
  purpose: 'How much of each colour goes where: layers, lines, swirls, gradients, infused oils',
  options: {
    mould:
      'Its inside, filled height last: “25x9x7 cm”, “cylinder 8x25 cm”, “12 cavities x 100 ml, 3 cm deep”',
    base: 'The soap without colour: white, cream, yellow, green, or your oils',
    gel: 'Does it go through gel?',
  },
  layers: {
    purpose: 'Layers of one height, flat or with a wedge from a tilted mould',
    layers: 'How many layers',
    raised: 'Block under one long side for the first layer, cm: it sets as a wedge',
  },
  line: {
    purpose: 'How much powder a pencil line takes',
    colourant: 'A jar of yours or any colourant. Gold mica unless you say',
    lines: 'How many lines. One unless you say',
    thickness: { says: 'How thick', choices: { thin: 'Thin', usual: 'Usual', thick: 'Thick' } },
  },
  swirl: {
    purpose: 'How much of each colour for its share of the top',
    shares: 'What share each takes: “blue 50%, white 30%, gold 20%” or “blue 2, white 1”',
    depth: 'How deep the swirled top is, cm. 2.5 unless you say',
  },
  gradient: {
    purpose: 'Steps between two pots that look even, not equal spoons',
    from: 'Pot A: “ultramarine blue full”, or “plain”',
    to: 'Pot B, likewise',
    steps: 'How many steps. 5 unless you say',
    portion: 'Batter in each step: “1 cup”. 1 cup unless you say',
  },
  infusion: {
    purpose: 'What share of your oils to infuse with a plant, from a test bar',
    bar: 'A cured bar: share of infused oil, then its colour: “20% #d9b86a”',
    target: 'The colour you want: “#c79a3c” or “mustard”',
    oils: 'All oils of the recipe: “1000 g”',
  },
};
