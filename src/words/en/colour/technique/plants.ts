/** Answers to a part of a technique that is of plants, when the question names it. */
export const techniquePlants = {
  'lavender-buds': {
    answer: [
      'Lavender buds always go brown, inside at once, on top within weeks.',
      'For the colour: ultramarine violet.',
    ],
    why: [
      'Inside they leave tan halos; on top they look like mouse droppings.',
      'Few, dry, pressed on the day after, is the best there is.',
      'Their smell does not stay.',
    ],
  },
  'coffee-grounds': {
    answer: [
      'Ground coffee gives brown specks that scratch, hardly a colour.',
      'Even brown: cold coffee for the water, or cocoa.',
    ],
    why: [
      'Used grounds, dried, fine, at most 1 tsp per 500 g oils.',
      'Coffee for the water: strong, ice-cold, the lye in slowly; it smells bad for days and ends tan.',
      'Cocoa 1 to 2 tsp per 500 g oils is browner.',
    ],
  },
  'charcoal-suds': {
    answer: ['Grey lather is usual with much charcoal: 1 tsp per 500 g oils keeps it nearly white.'],
    why: [
      'Its dust is not dissolved, it washes out and lies on sink and flannel; it harms nothing and wipes off.',
      'For a deep black with less of it: half black iron oxide, and gel.',
    ],
  },
  'annatto-in-oil': {
    answer: [
      'Annatto: 1 to 2 Tbsp seeds in 250 ml (1 cup) warm oil, strained; little of it yellow, much orange.',
    ],
    why: [
      'Two hours in a water bath at 50 to 60 °C (122 to 140 °F), or four weeks cold in the dark.',
      'It replaces 5 to 25 % of the oils and counts among them.',
      'It fades slowly in light.',
      'Powder: 1/2 tsp per 500 g oils, with specks.',
    ],
  },
  'natural-pink': {
    answer: [
      'Natural pink: rose clay, 1 to 3 tsp per 500 g oils, or madder, which is truer pink.',
      'Both stay.',
    ],
    why: [
      'Clay is wetted in three times its volume of water, madder in oil.',
      'Beetroot, hibiscus and berries go brown.',
      'Without mica and as mineral: ultramarine pink.',
    ],
  },
  'natural-blue': {
    answer: ['Natural blue: indigo, 1/4 to 1/2 tsp per 500 g oils, denim to grey-blue; woad is paler.'],
    why: [
      'Wetted in oil, or stirred into the lye water by those who know it; too much colours the lather.',
      'Butterfly pea, red cabbage and blue flowers go brown or green.',
    ],
  },
  'natural-green': {
    answer: [
      'Natural green that stays: green clay, a soft grey-green.',
      'Spirulina, nettle and leaves fade to khaki.',
    ],
    why: [
      'In the dark they last some weeks longer.',
      'Chromium oxide green is a mineral and holds.',
      'Clay 1 to 3 tsp per 500 g oils, wetted in water.',
    ],
  },
  'natural-red': {
    answer: [
      'No plant gives a red that stays: madder is pink to brick, red clay terracotta.',
      'Red oxide is brick too.',
    ],
    why: [
      'Madder 1 to 2 tsp per 500 g oils, with gel.',
      'For a true red: a red mica or lake that is said to be stable in cold process, full dose, no white.',
      'Beetroot and hibiscus go brown.',
    ],
  },
  'natural-yellow': {
    answer: [
      'Natural yellow: annatto oil holds best; turmeric is bright and fades in light.',
      'Yellow clay is ochre.',
    ],
    why: [
      'Annatto: steeped in oil, 5 % of the oils for yellow.',
      'Turmeric 1/4 to 1/2 tsp per 500 g oils.',
      'Yellow iron oxide stays for good.',
      'Calendula petals keep their yellow as specks.',
    ],
  },
  'natural-orange': {
    answer: [
      'Natural orange: annatto or paprika, steeped in oil.',
      'Annatto holds longer, paprika goes peach.',
    ],
    why: [
      'More of the oil, more orange: 10 to 25 % of the oils.',
      'Carrot is paler and fades.',
      'A mineral that stays: orange iron oxide.',
    ],
  },
  'natural-purple': {
    answer: [
      'Natural purple: alkanet steeped in oil, lilac to grey-blue.',
      'Purple corn, berries and cabbage go brown.',
    ],
    why: [
      'It fades slowly and greys where the soap is more alkaline.',
      'Purple clay is a greyish mauve that stays.',
      'A mineral that stays purple: ultramarine violet.',
    ],
  },
  'natural-brown': {
    answer: [
      'Natural brown: cocoa, 1 to 2 tsp per 500 g oils, wetted in oil; coffee or walnut hull.',
      'All stay.',
    ],
    why: [
      'Unsweetened; too much colours the lather.',
      'Cinnamon and clove irritate skin.',
      'Milk, honey and vanilla brown by themselves.',
    ],
  },
  'natural-black': {
    answer: ['Natural black: activated charcoal, 1 to 1 1/2 tsp per 500 g oils, with gel and no white.'],
    why: [
      'Less is grey; more greys the lather.',
      'Wetted in oil, slowly: it dusts.',
      'No charcoal of the barbecue.',
    ],
  },
};

/** What a plant or mineral gives in cold-process soap, by its id in the catalogue. */
export const colourGiven: Readonly<Record<string, string>> = {
  alkanet: 'Alkanet: lilac to grey-blue, the bluer the more alkaline; steeped in oil. It fades slowly.',
  madder:
    'Madder: pink with little, brick red with much; it stays. Wetted or steeped in oil, or in the lye water.',
  annatto: 'Annatto: yellow with little, orange with much; steeped in oil. It pales slowly.',
  turmeric: 'Turmeric: gold to orange-brown at first; it fades in light.',
  paprika: 'Paprika: peach to orange; steeped in oil, since the powder scratches. It pales.',
  coffee: 'Coffee: tan to mid brown for the water; grounds give brown specks that scratch.',
  'cocoa-powder': 'Cocoa: a warm brown that stays; much of it browns the lather.',
  indigo: 'Indigo: denim to grey-blue; it stays. Too much colours the lather.',
  woad: 'Woad: a soft grey-blue, paler than indigo.',
  spirulina: 'Spirulina: green for some weeks, then khaki and tan, sooner in light.',
  'leaf-green-powder': 'Leaves: olive green that goes khaki, then tan.',
  nettle: 'Nettle: grey-green that goes khaki in light.',
  beetroot: 'Beetroot: no pink; yellow, then brown in lye.',
  hibiscus: 'Hibiscus: no red; grey-brown in lye.',
  'butterfly-pea': 'Butterfly pea: no blue; yellow-green, then brown in lye.',
  'walnut-hull': 'Walnut hull: warm to dark brown; it stays.',
  calendula: 'Calendula: yellow specks that stay; its oil gives only a faint yellow.',
  carrot: 'Carrot: pale yellow to peach; it fades.',
  henna: 'Henna: khaki to brown.',
  'red-sandalwood': 'Red sandalwood: mauve to maroon-brown.',
  safflower: 'Safflower: pale yellow; it fades.',
};
