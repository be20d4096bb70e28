import { spaced } from '../../../engine/over-lines.ts';

/** What is said of who makes soap, washes with it or clears up after it, and what is done to hurry a bar. */
export const lyeClass = {
  'first-soap': {
    answer: [
      'Goggles, gloves, a scale that shows 1 g, lye (NaOH), water, oils, a stick blender, a plastic jug (PP 5) and a mould.',
    ],
    why: [
      'Plan it before you buy: /plan oils:“olive 70%, coconut 30%” size:“500 g oils” weighs lye and water and tells every step.',
      'Begin with one colour: “how much ultramarine for 1 cup”.',
      'A room with a draught, no children or pets, an hour in which nobody rings.',
      'It can be used after four weeks.',
    ],
  },
  'after-pour': {
    answer: [
      'Out of the mould after about 24 hours, when it is firm as cheese; cut half a day later, gloves on.',
    ],
    why: [
      'Still soft or sticky (much water, milk, no gel): a day or two more, which does no harm.',
      'A bar full of salt is cut within one to four hours, or it crumbles.',
      'Before that: leave it alone, look at it in the first hours, and cool it if it bulges.',
      'Then four weeks on a rack, turned once a week.',
      '/batch poured keeps it, and I write to you when each is due.',
    ],
  },
  'back-to-food': {
    answer: ['No: what has held lye or raw batter never goes back to food.'],
    why: [
      'Lye, colour and scent stay in seams, blades, silicone and scratches.',
      'Keep a blender, moulds, trays and spoons for soap alone, mark them “SOAP”, and keep them away from the kitchen.',
      'Stainless steel without seams could be washed clean, but nobody sees whether it is.',
    ],
  },
  pregnant: {
    answer: [
      'Ask your doctor first.',
      'Whoever is pregnant leaves lye, its steam and strong scents to somebody else.',
    ],
    why: [
      'You can choose colours, cut and stamp cured bars with gloves.',
      'No dust of powders, no steam of lye, no essential oils unless a doctor or midwife agrees: some are advised against in pregnancy.',
      'Soap for your own skin: mild, cured, unscented.',
    ],
  },
  asthma: {
    answer: ['Ask your doctor first, and let somebody else mix the lye.'],
    why: [
      'Its steam, fine powders and strong scents can bring on an attack.',
      spaced`
        Stay out of the room until the lye water is clear and cool; work in a draught or outside; wet
        powders before they fly; no essential oils; your inhaler within reach.
      `,
      'Whoever coughs or wheezes goes into fresh air; if it does not pass at once, call the emergency number.',
    ],
  },
  'contact-lenses': {
    answer: ['No: take contact lenses out.', 'Sealed goggles, over glasses if you need them.'],
    why: [
      'A drop of lye creeps under a lens and is held on the eye, and the lens delays the rinsing.',
      'Glasses alone are open at the sides.',
    ],
  },
  'pets-washed': {
    answer: ['No: do not wash animals with it.', 'Ask a vet what is right.'],
    why: [
      'Soap is alkaline for their skin, and they lick it off.',
      'Essential oils can poison them: tea tree above all, for dogs and cats.',
      'Keep bars, batter and lye where they cannot reach.',
    ],
  },
  'bad-batch-away': {
    answer: ['No: not down the sink, nor into sea, river, garden or compost.'],
    why: [
      'Soap with too much lye is caustic waste: gloves, a labelled closed plastic tub, and ask your local waste service.',
      'A bar that is only ugly, cured and without a zap may be used or grated for laundry.',
      'Raw batter: let it harden first.',
    ],
  },
  'washing-up': {
    answer: ['Gloves and goggles on: wipe with paper, leave it a day, then wash by hand.', 'No dishwasher.'],
    why: [
      'Raw batter burns and sets in pipes; after a day what is left is soap.',
      'Wipe pots and tools with paper, the paper into a closed bag out of reach of children and animals.',
      'Then hot water and washing-up liquid, apart from food dishes.',
      'In a dishwasher it foams over and its film stays on plates.',
      'Lye water never goes down the sink by guess: ask your local waste service.',
    ],
  },
  outdoors: {
    answer: ['Yes, the air is good there: sheltered from wind and rain, with nobody near.'],
    why: [
      'Wind blows lye flakes and powders into eyes, rain makes lye hot.',
      'A firm table, running water within reach, children, animals and passers-by away, nothing left alone.',
      'Not in frost: batter sets before it is soap.',
      'A garage: door open, nothing that burns.',
    ],
  },
  'electric-blanket': {
    answer: ['No: no electric blanket or heating pad on or under fresh soap, least of all overnight.'],
    why: [
      'The soap heats by itself; more heat makes it rise, crack or spit hot lye, and covered pads can catch fire.',
      'A towel around the mould is enough, none with milk, honey or sugar.',
      'Look in during the first hours.',
    ],
  },
  'oven-to-hurry': {
    answer: ['Only an oven warmed to 60 °C (140 °F) at most and switched off; it does not shorten the cure.'],
    why: [
      'It brings on gel, no more: four weeks of cure stay.',
      'Loaf in its mould on a tray, an hour or two, somebody near, no food in there.',
      'Not with milk, honey, sugar or a scent that heats: it rises and spits hot lye.',
      'Never on, never overnight, never a microwave.',
    ],
  },
  'fridge-with-food': {
    answer: ['No: raw soap does not stand beside food.'],
    why: [
      'For two days it is caustic, it sweats, and its scent goes into the food.',
      'If it must be kept cool (milk, honey): a closed, labelled box, nothing to eat in that fridge, out of reach of children.',
      'Else a cold floor and a fan.',
    ],
  },
  flame: {
    answer: ['No: no flame on soap.'],
    why: [
      'Alcohol, scent, paper and liners catch fire, and hot raw soap spits lye.',
      'A shiny top: cure it, then polish it with a damp cloth or a silk rag.',
    ],
  },
};
