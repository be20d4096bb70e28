/** What `/colourant` says of itself where it is declared. */
export const says = {
  purpose: 'Will it survive the lye, may it be used, and what this group has seen',
  options: {
    colour: 'An item on your shelf, a colourant such as “gold mica”, or an ingredient list',
    process: {
      says: 'How the soap was made',
      choices: {
        ambient: 'Left to itself, no gel',
        gel: 'Went through gel, or was heated to',
        other: 'Another way',
      },
    },
  },
  check: {
    purpose: 'Read a label: what lye does to each ingredient, dose, and the law',
    ingredients: 'The ingredients as the label has them: “Mica (CI 77019), Carmine (CI 75470)”',
    item: 'Or an item on your shelf, or a colourant such as “gold mica”',
  },
  label: {
    purpose: 'The colours of a finished bar as its label must list them',
    market: { says: 'Where it will be sold', choices: { us: 'United States', eu: 'European Union' } },
    of: 'The colours in it: “ultramarine blue, gold mica”, or an ingredient list',
    recipe: 'Or a kept recipe, by its name',
  },
  report: {
    purpose: 'Tell the group how a colour came out in your cured bar',
    result: {
      says: 'What became of the colour',
      choices: {
        held: 'It held',
        shifted: 'It turned into another colour',
        faded: 'It faded',
        bled: 'It bled into the next colour',
      },
    },
    weeks: 'Weeks since the pour when you looked',
    strength: 'How strong: tint, pastel, medium, full, or teaspoons per cup',
    base: 'The batter: “pale olive base”, “with white”',
    note: 'Anything else worth knowing',
    photo: 'A photo of the bar',
  },
  evidence: { purpose: 'What this group has seen of one colour, or of all' },
  withdraw: { purpose: 'Take back your own report' },
  share: {
    purpose: 'Stewards: share counts with groups that also share, or stop',
    on: 'Yes to share, no to stop',
  },
};
