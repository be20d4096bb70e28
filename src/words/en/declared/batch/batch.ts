/** What `/batch` says of itself where it is declared. */
export const says = {
  purpose: 'Your batch book: what you poured, how it cured, what it taught me of your jars',
  options: {
    batch: 'The batch by its name; the newest unless you say',
    on: 'On which day: “2026-11-03”, “yesterday”. Today unless you say',
    weights: 'Bars on the scale, always the same ones: “112 g, 108 g”',
  },
  poured: {
    purpose: 'Keep what you really poured; its colours leave your shelf',
    recipe: 'A kept recipe; without anything, your last plan',
    changes: 'What was otherwise: “2 tsp instead of 1, no gel, fridge”',
    made: 'Without a plan: “2 cups violet 1/2 tsp + gold mica pastel; 1 cup plain”',
    oils: 'Its oils, for dates and heat: “coconut 30%, olive 70%”',
    size: 'With oils: “1000 g oils”, “mould 25x9x7 cm”',
    base: 'The soap without colour: white, cream, yellow, green, deep, or its oils',
    name: 'A name for it',
    photo: 'A photo of the pour',
  },
  cut: { purpose: 'It is cut' },
  weigh: { purpose: 'Weigh bars: when they stop losing they are cured' },
  cured: {
    purpose: 'It is cured: a photo beside white paper shows what colours it became',
    photo: 'One bar beside white paper, by daylight',
    colours: 'Or what each portion became: “violet #6b5aa8; gold #c9a24b”',
  },
  show: { purpose: 'One batch: what went in, what it became, what comes next' },
  list: {
    purpose: 'Your batches, by colour, jar or date',
    colour: 'A colour it has: “violet”',
    jar: 'A jar that went in',
    since: 'From which day on: “2026-11-01”',
    shared: 'Those that members show to this group',
  },
  dates: {
    purpose: 'What your batches ask for next, and when',
    remind: 'Reminders of this batch: on or off',
  },
  note: { purpose: 'Write something beside a batch', text: 'What to note' },
  share: { purpose: 'Show a batch to this group' },
  unshare: { purpose: 'Take a batch back from this group' },
  remove: { purpose: 'Remove a batch with its photos; your shelf stays as it is' },
  export: { purpose: 'All your batches as CSV and JSON' },
};
