/** What is said of bars: cut, stamped, cured, kept, given away (`src/engine/questions/technique/asked`). */
export const techniqueBars = {
  'store-bars': {
    answer: [
      'Cured bars: dry, dark and airy, in cardboard or paper, not in a closed plastic bag.',
      'They keep a year or two.',
    ],
    why: [
      'A shelf, a drawer or a box with holes, away from bath and kitchen.',
      'Scents apart, or they mingle; plant colours in the dark, since light fades them.',
      'While they cure they lie open, with air on all sides.',
      'Damp makes them sweat, and old oils make orange spots: those first.',
    ],
  },
  'cured-when': {
    answer: [
      'Cured: four to six weeks old, firm, its weight the same from one week to the next, and no zap.',
    ],
    why: [
      'Weigh one bar each week and write it down: while it loses more than a gram or so, it is still drying.',
      'Colour tells nothing.',
      'Nearly all olive takes some months.',
      'In doubt another two weeks do no harm.',
    ],
  },
  'start-when': {
    answer: [
      'Count six weeks back from that day: four to cure, and two in case a batch has to be made again.',
    ],
    why: [
      'So pour six weeks before, sooner is better.',
      'Nearly all olive: three months or more.',
      'Later than four weeks before it is too young to give: then a melt and pour base, or a card that says from which day on it is used.',
      '/batch poured writes you when it is cured.',
    ],
  },
  'give-when': {
    answer: [
      'From four weeks on, better six, whatever it looks like; nearly all olive later.',
      'No zap, on you first.',
    ],
    why: [
      'Younger soap is harsh and soft, and in its first days it burns.',
      'A gift that is too young gets a note with the day from which it may be used.',
      'Ash is only looks: steam or wipe it off.',
      'Write on it what is in it; whoever has bad skin asks a doctor.',
    ],
  },
  'cut-with': {
    answer: [
      'A long smooth kitchen knife does it, pushed straight down; a wire cuts finer and more evenly.',
      'Kept for soap.',
    ],
    why: [
      'Stainless, no teeth, wider than the loaf; wipe it after every cut.',
      'A wire or a cutter makes all bars alike, and its loaf may lie on its side so that nothing is dragged down the face.',
      'Firm as hard cheese, mostly after one or two days.',
      'Gloves in the first two days.',
    ],
  },
  'air-out': {
    answer: [
      'Blender in at a slant, knock the air out of its head, keep it under; pour low, then knock the mould on the table.',
    ],
    why: [
      'Short bursts, stirring by hand between, no whisking.',
      'Pour along a spatula at light trace, since thick batter traps air.',
      'Small holes are looks only.',
      'Pockets with liquid in them are no air: gloves, and do not use the bar.',
    ],
  },
  'fridge-mould': {
    answer: [
      'Yes, 12 to 24 hours keeps it from gelling and from overheating; closed, on a tray of its own, away from food.',
    ],
    why: [
      'It stays paler, milkier and matt, and wants a day or two more in the mould.',
      'Half cooled leaves a dark ring: in at once, and for the whole night.',
      'Raw soap is caustic: nothing that is eaten may touch it, no child reach it.',
      'A freezer only an hour or two, against sticking.',
    ],
  },
  'layers-apart': {
    answer: [
      'The lower one had set, or powder lay thick on it.',
      'Pour while it is still tacky, and scratch or mist its top.',
    ],
    why: [
      'Keep a line of mica to a breath.',
      'Let them gel or cool as one, cut it on its side with a thin wire.',
      'Layers of different water or oils shrink apart.',
      'What came apart is good soap: wet both faces, press, wrap, wait a day; or use the halves.',
    ],
  },
  'olive-soft': {
    answer: [
      'Usual: pure olive stays soft for weeks and hardens over months.',
      'Leave it on the rack, six weeks at least.',
    ],
    why: [
      'Turn it once a week, with air all round.',
      'It gets better up to a year.',
      'Firmer next time: water 1.5 to 1.8 times the lye, a warm wrapped mould, some salt or lactate.',
      'Still oily, or it zaps: then it is not only young.',
    ],
  },
  'stamp-when': {
    answer: ['A day or two after cutting: firm, no longer sticky, still soft enough to take a print.'],
    why: [
      'Press straight down, wait a breath, lift straight.',
      'It sticks: a few hours more, or a film between, or the stamp brushed with a little mica or alcohol away from flames.',
      'Too hard: it cracks, so earlier next time.',
      'Gloves in the first two days.',
    ],
  },
  'plane-bars': {
    answer: [
      'A millimetre is enough, after a week or two of cure: a planer or a vegetable peeler, edges last.',
    ],
    why: [
      'Younger it smears, harder it chips.',
      'Ash is only skin-deep, and a minute of steam takes it with no loss.',
      'Keep shavings for confetti.',
      'Gloves in the first two days.',
    ],
  },
  'cold-room': {
    answer: ['Yes, only slower: cover it, a towel round it, and a day or two more in the mould.'],
    why: [
      'Start at 35 to 40 °C (95 to 104 °F) so that butters do not set in the pot, which looks like trace.',
      'Cold soap gels less, is paler and gets more ash: lid on, off the cold floor.',
      'Bars cure a little slower; above freezing it does no harm.',
    ],
  },
  'damp-room': {
    answer: [
      'Driest room, moving air, off walls and floor; a dehumidifier, or a fan now and then.',
      'Not bath or kitchen.',
    ],
    why: [
      'Damp makes glycerin sweat: wipe it off, it is harmless.',
      'A closed wardrobe in cardboard with a pack of silica gel or dry rice beside it does it, looked at each month.',
      'No metal racks.',
      'Nothing airtight until it is cured, and wrap it only once it is dry.',
    ],
  },
  'cure-outside': {
    answer: [
      'Better inside: sun fades colours and softens bars, damp makes them sweat.',
      'A dry airy room out of the light.',
    ],
    why: [
      'A rack or a box of card with gaps, turned once a week.',
      'Outdoors rain, dew, dust and animals get at it, and young soap burns whoever licks it.',
      'A shed that is dry and shut is fine.',
    ],
  },
  scraps: {
    answer: [
      'Grated into new batter as confetti, up to a third of it; or melted down as a rebatch, or for hand washing.',
    ],
    why: [
      'Stir bits in at light trace; dry old ones first with a spoon of water.',
      'Colours of them show as specks.',
      'Nothing that zaps, weeps or has orange spots.',
      'Their weight is soap already: it takes no lye.',
    ],
  },
  'batter-or-bar': {
    answer: [
      'Raw batter is no guide: mostly darker and yellower.',
      'Judge the cut bar after a day, and the cured one at four weeks.',
    ],
    why: [
      'Gel deepens it, no gel leaves it milky, and drying pales it.',
      'Some turn in the pot and come back: ultramarine, some pinks.',
      'A spoonful set aside and covered shows it tomorrow.',
    ],
  },
};
