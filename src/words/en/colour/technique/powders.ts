/** What is said of powders at work: when they go in, wetted in what, how many spoons, and what they do there. */
export const techniquePowders = {
  'when-colour': {
    answer: ['At emulsion or first light trace, wetted beforehand, and before the scent.'],
    why: [
      'As soon as no oil streaks show there is nothing to wait for: split the batter, stir each colour in by hand.',
      'One colour for the whole batch may go into the oils before the lye.',
      'At thick trace it no longer spreads evenly.',
    ],
  },
  'colour-or-scent': {
    answer: ['Colour first, scent last.'],
    why: [
      'A scent may thicken it within seconds.',
      'Stir it in by hand, or share it among the cups just before they are poured.',
      'One that you know to be quiet may go into the oils from the start.',
    ],
  },
  'colour-in-lye-water': {
    answer: [
      'Better not: wet colours in oil or water of their own and add them at emulsion, or to the oils.',
    ],
    why: [
      'Mica floats on lye water, and strong lye turns some dyes for good.',
      'One colour for the whole batch may go, wetted, into the oils before the lye.',
      'Indigo and madder are put into lye water by some makers: a small test first.',
      'Lye goes into cold water, slowly, with nothing in it that foams or heats.',
    ],
  },
  'dry-in': {
    answer: [
      'Better not: dry powder leaves specks.',
      'Wet each teaspoon in about a tablespoon of light oil first.',
    ],
    why: [
      'Mica often forgives it; oxides, titanium dioxide, charcoal and clay do not.',
      'Clay is wetted in about three times its own volume of water.',
      '/dose says for each what to wet it in.',
    ],
  },
  'mix-colourants': {
    answer: ['Yes: oxides, ultramarines, clays and micas mix, together no more than the full dose of one.'],
    why: [
      'Wet each as it wants: clay in water, mica in oil.',
      'Hues that face each other (red and green, blue and orange, yellow and violet) turn grey-brown.',
      '/preview mix:“1/4 tsp ultramarine + 1/4 tsp yellow oxide” shows what comes of it.',
    ],
  },
  'premix-keeps': {
    answer: ['Wetted in oil: weeks, closed and dark, while the oil is fresh.', 'In water: the same day.'],
    why: [
      'Label it with the day and how much powder is in a spoonful, stir it up before use.',
      'Smells old: away with it.',
      'Oil kept that way counts among the oils of the batch.',
    ],
  },
  'carrier-counts': {
    answer: ['Take it off the oils or the water of the recipe: then nothing changes.'],
    why: [
      'A tablespoon of oil on top (14 g) in 1 kg of oils makes 5 % superfat 6.3.',
      'Water on top only makes it softer for longer.',
      '/dose says what it does to your portion.',
    ],
  },
  'spoon-or-grams': {
    answer: ['Grams from one gram up; below that a level spoon, never heaped.'],
    why: [
      'A level teaspoon weighs by the powder: mica 1 to 2 g, charcoal about 1.5, ultramarine and oxides 2 to 4, titanium dioxide about 3.',
      'Weigh a level spoon of your own jar once.',
      '/dose gives both.',
    ],
  },
  'of-oils-or-soap': {
    answer: ['Of the oils, in nearly all recipes and groups: water and lye are not counted.'],
    why: [
      '1 kg of oils makes about 1.4 kg of batter, so a dose by oils is about 1.4 times as strong as the same by batter.',
      'Tell me which: “500 g oils” or “500 g batter”.',
    ],
  },
  'test-colour': {
    answer: [
      'Stir a pinch into a spoonful of batter in a small cup, keep it warm, look after two days and four weeks.',
    ],
    why: [
      'At the end of a batch it costs nothing.',
      'Note how much of what, on the cup.',
      'Half of it in the light and half in the dark tells of fading.',
      '/calibrate learns your jars from such bars.',
    ],
  },
  'store-colours': {
    answer: ['Closed, dry, dark and labelled: minerals and micas keep for many years, plants about one.'],
    why: [
      'Clumps from damp: crush and sieve them, they are still good.',
      'Off smell or mould in a plant powder: away with it.',
      'Keep the label with its CI numbers.',
    ],
  },
  'no-lumps': {
    answer: [
      'Rub 1 tsp powder into 1 Tbsp light oil until nothing is dry, let it soak 10 minutes, stir and sieve.',
    ],
    why: [
      'A small frother or the back of a spoon does it; glycerin works too, water for clays and for titanium dioxide sold for water.',
      'Lumps in the batter already: a second or two of the blender in that portion, or press it through a sieve.',
    ],
  },
  'mica-floats': {
    answer: ['Usual: stir until all of it is wet and shines, and stir again just before it goes in.'],
    why: [
      'It settles and floats since it is flakes, not a solution.',
      'A drop more oil, a small frother, ten minutes.',
      'Streaks that stay in the batter: stir that portion longer by hand.',
    ],
  },
  'powder-thickens': {
    answer: ['A little: clay drinks water, titanium dioxide less.', 'Wet it first and keep to the dose.'],
    why: [
      'Clay in about three times its volume of water, taken off the lye water.',
      'Heavy doses stiffen a swirl and make dry, crumbly bars.',
    ],
  },
  'too-much-colour': {
    answer: [
      'About 1 tsp per 500 g oils is usual, 2 the most.',
      'Beyond it: coloured lather, stained cloths, crumbly soap.',
    ],
    why: [
      'Less for strong ones: ultramarine and oxides 1/2 to 1 tsp, charcoal 1 to 1 1/2, indigo 1/4 to 1/2.',
      'Still in the pot: stir plain batter into it, or share it among several batches as their dark part.',
      'Made already: good soap, if the lye was weighed right; try it on an old cloth, or grate it into plain soap.',
      'Tell me which and how much: “is 2 tbsp mica too much for 500 g oils”.',
    ],
  },
  'powder-dust': {
    answer: [
      'Damp paper laid on it and wiped inwards, then soapy water.',
      'Do not blow, sweep or brush it up.',
    ],
    why: [
      'Gloves, a dust mask (FFP2 or N95), window shut until it lies, no fan.',
      'Next time: spoon it slowly, low over the cup, straight under its oil, and a damp cloth spread beneath.',
      'A vacuum cleaner blows fine powder out behind, unless it has a fine filter.',
    ],
  },
  'mica-settles': {
    answer: ['Normal: powder sinks in oil.', 'Stir it up to the bottom just before it goes in.'],
    why: [
      'It is no solution, and nothing is lost.',
      'Thick sludge: a few drops of oil and a small frother.',
      'Wet it early, so that it soaks, and keep it covered.',
      'Glycerin holds it up longer, water shortest.',
    ],
  },
};
