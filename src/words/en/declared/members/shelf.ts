/** What `/shelf` says of itself where it is declared. */
export const says = {
  purpose: 'Your pigments: what you have, how much, how they behave',
  options: {
    item: 'The item by its name on your shelf',
    amount: 'How much: “25 g”, “1 oz”, “1/2 tsp”. A bare number is grams',
    colourant: 'What it is: a colourant of the catalogue, such as “gold mica”',
    pigment: 'Percent pigment by weight, if it came already dispersed',
    ingredients: 'What the label lists, so that I can warn you: “Mica, Titanium Dioxide, Carmine”',
    price: 'What it cost, in any currency: “8.50 €”, “12 USD”',
    size: 'How much that price bought: “50 g”. The amount unless you say',
    lot: 'What is printed on the lot',
  },
  'dish-test': {
    purpose: 'Where a pinch of this lot went in a dish of water',
    result: {
      says: 'What the pinch did',
      choices: {
        water: 'It swirled into the water',
        oil: 'It floated or sat there; oil took it',
        neither: 'Neither water nor oil took it',
      },
    },
  },
  weigh: {
    purpose: 'What one level teaspoon of yours weighs',
    amount: 'What one level teaspoon weighs: “2.4 g”. A bare number is grams',
  },
  'new-lot': { purpose: 'A new lot: its tests and weights start anew' },
  describe: { purpose: 'Say what an item is, so that I can dose it' },
  compare: {
    purpose: 'Two jars for the same depth of colour: strength, hue, cost',
    one: 'A jar of yours, or any colourant',
    other: 'And the other',
  },
  'low-mark': {
    purpose: 'At how much left I should warn you',
    amount: 'How much is left then: “10 g”, “1 tsp”; 0 for only when empty',
  },
  add: { purpose: 'Put a colourant on your shelf', item: 'Your name for it, any language' },
  list: { purpose: 'Everything on your shelf' },
  show: { purpose: 'One item: stock, lot, tests and history' },
  use: { purpose: 'Take some off your shelf' },
  restock: { purpose: 'Add more of the same lot' },
  remove: { purpose: 'Take an item off your shelf with its history' },
  undo: { purpose: 'Take back what you just changed on your shelf' },
};
