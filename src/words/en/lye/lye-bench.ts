import { spaced } from '../../../engine/over-lines.ts';

/** What is said to questions of safety at the bench: what is worn, what lye is cooled in, what is weighed. */
export const lyeBench = {
  gear: {
    answer:
      'For lye: goggles that close all round, gloves of nitrile, neoprene or thick household rubber, long sleeves, closed shoes.',
    why: spaced`
      Gloves whole and over the wrist: fill them with water once to find a hole. Thin latex or vinyl tears;
      cotton soaks lye up and holds it on the skin. Against the steam a draught and an averted face do more
      than a mask; with asthma let somebody else mix it. Lye got into a glove: off with it, running water.
    `,
  },
  dust: {
    answer: 'Yes: a dust mask (FFP2 or N95) for fine powders, and keep them down.',
    why: spaced`
      Titanium dioxide, oxides, clay, charcoal and mica are not poisonous in soap, but their dust does
      lungs no good. Spoon slowly, wet the powder under its liquid before you stir, no fan. Wipe up damp;
      do not sweep or blow it. Asthma: let somebody else measure.
    `,
  },
  'cooling-lye': {
    answer: 'Cold water only, and cool the jug from outside: nothing goes into hot lye.',
    why: spaced`
      Lye heats its water by 40 to 60 °C (72 to 108 °F): in warm or boiling water it boils up and spits.
      Weigh cold water, or part of it as ice, and add the lye slowly to that. Then stand the jug, open, in
      a basin of cold water or ice; not in a fridge or freezer with food, where it tips and is mistaken.
      Never water or ice onto lye that is already hot.
    `,
  },
  unattended: {
    answer: 'Not open and not alone: lye water is labelled, loosely covered, and behind a locked door.',
    why: spaced`
      An hour of cooling in a basin in a room that nobody else enters is usual. Overnight: cold, in a
      closed HDPE or PP bottle that never held a drink, “LYE: CAUSTIC” on it, locked away from children and
      animals. Open it draws carbon dioxide, gets a crust, and grows weaker.
    `,
  },
  'other-alkali': {
    answer:
      'Only pure sodium hydroxide (bars) or potassium hydroxide (soft soap), with its purity on the label: no ash, no lime.',
    why: spaced`
      Carbonate, baking soda and lime make no soap with oil. Lye of wood ash made soap once, soft and
      harsh, for it has a strength that nobody knows, so no lye can be weighed with it: it burns or stays
      greasy. Oven and drain cleaners hold other things besides. Food grade is fine if it says NaOH and 98
      % or more.
    `,
  },
  'oil-swapped': {
    answer:
      'No: every oil takes lye of its own. With another oil, or less of one, the lye is worked out anew.',
    why: spaced`
      1000 g coconut take about 174 g NaOH at 5 % superfat, 1000 g olive about 129 g: the lye of the one
      burns in the other. Nothing mixed yet: tell me the oils as they are, such as “how much lye for 700 g
      olive and 300 g lard”. Already mixed: “I put 100 g lye in 700 g olive” tells how far off it is; until
      then gloves, and not on skin.
    `,
  },
  'less-lye': {
    answer:
      'Less lye makes no gentler soap, only a soft and greasy one. 5 to 8 % superfat is gentle; 20 % for all coconut.',
    why: spaced`
      In a well weighed, cured bar no lye is left. With half the lye half the oil stays oil: it does not
      set, and goes rancid. For a mild bar: much olive, little coconut, five weeks of cure or more. /plan
      superfat:8
    `,
  },
  scale: {
    answer: 'Lye on a scale that shows 1 g; for less than 500 g of oils 0.1 g. Steps of 5 g are too coarse.',
    why: spaced`
      5 g more in 26 g of lye is a fifth too much. Make a batch of 1000 g or more, or take a finer scale;
      fresh battery, level, the jug weighed first. A kitchen scale will do if nothing that is eaten touches
      it again, and it is washed. Never spoons or cups.
    `,
  },
  'scent-dose': {
    answer:
      'At most what its certificate says for rinse-off soap (IFRA category 9): usually up to 3 % of the oils, 30 g per kg.',
    why: spaced`
      Essential oils by weight too, many far lower: cinnamon and clove under 0.5 %, peppermint and citrus
      with care. 6 % and over is asked back, 8 or 10 % irritates skin and may seize the batter. No scent
      for babies. /plan fragrance:“3%” weighs it.
    `,
  },
  'old-oil': {
    answer:
      'Only if you know which fat it is, it is clean, and it does not smell rancid; then as laundry soap rather than for skin.',
    why: spaced`
      Filter it, let water settle out, weigh it. Frying breaks oil up, so its lye is uncertain: take 5 to 8
      % superfat and gloves, test for a zap. Rancid oil gives rancid soap with orange spots. Mixed, unknown
      or motor oil: no, since nobody knows its lye.
    `,
  },
  tared: {
    answer: "Take the empty vessel's weight off what the scale showed: what is left is the lye.",
    why: spaced`
      Say a jug of 50 g and 170 g on the scale: 120 g of lye. Do not guess the vessel's weight: set it
      empty and dry on the same scale, or weigh the lye anew. Next time zero the scale with the vessel on
      it.
    `,
  },
  'never-taste': {
    answer: 'No: never taste it. What may hold lye is treated as lye.',
    why: spaced`
      Nobody can see lye in water. Keep children and animals away, wear goggles and gloves, label it, and
      get rid of it as lye water: little by little into much cold water, by your local rules. Then weigh
      out a fresh one. Somebody tasted it: /first-aid.
    `,
  },
  'hair-on-bars': {
    answer:
      'Wipe hair and dust off with a damp cloth, or plane a thin layer off. Bars still curing: wear gloves.',
    why: spaced`
      Cover the rack with a cloth or net that lets air through, away from animals. An animal that licked or
      chewed a bar, or lay on soap that is still raw: wash its coat with water and call a vet.
    `,
  },
  'indicator-pink': {
    answer: 'Not for that: pink says only “above pH 8 to 10”, and sound soap is 9 to 10.5. It proves no lye.',
    why: spaced`
      Gloves until you know. Check the weights first: tell me “I put 100 g lye in 700 g olive”. Then four
      weeks of cure, pH paper in the lather of a wetted bar: 11 and over, hard crystals, wet drops or spots
      that turn far deeper than the rest: do not use it. A bar that stays clear with the drops proves
      nothing either: they see only where they fall.
    `,
  },
  'puddle-on-top': {
    answer:
      'Gloves and goggles: treat it as lye until you know. Do not touch or wipe it bare, do not use it.',
    why: spaced`
      Leave it a day: a thin film of oil and dew of glycerin often draw back in. Still there: pH paper on
      the drop, not the tongue; 11 and over, or a clear layer under oil, is lye that parted. Then check
      every weight (“I put 100 g lye in 700 g olive”): if they are certain, rebatch the whole loaf with all
      that ran out of it; if not, caustic waste by your local rules.
    `,
  },
  'lye-heats': {
    answer: 'Usual: lye heats cold water to 80 to 95 °C (176 to 203 °F), and it steams for some minutes.',
    why: spaced`
      Step back, window open, do not lean over it or breathe the steam; leave it to cool to 35 to 45 °C (95
      to 113 °F), open, where nobody goes. Cold or iced water and lye a spoonful at a time keep it lower.
      Not usual: it boils, spits, foams, goes grey, or the jug softens: get away, add nothing. Coughing or
      a splash: /first-aid.
    `,
  },
  'lye-water-in-cold': {
    answer:
      'It does not go bad, but it sets: lye water of 30 to 50 % goes solid between 0 and 15 °C (32 and 59 °F).',
    why: spaced`
      Outside only until it is at 35 to 45 °C (95 to 113 °F): steady, labelled, no snow or rain into it, no
      child or animal near. Fetch it walking, with goggles and gloves: who runs, spills. Grains or a crust
      in it: the open jug in warm tap water, stir until it is clear, or lye is missing from what you pour.
      Never a glass jug in frost.
    `,
  },
  'cold-room': {
    answer:
      'Better where it is 18 to 24 °C (64 to 75 °F): in the cold hard fats set before they are soap, with pockets and ash.',
    why: spaced`
      Cold sets palm, lard and butters within minutes: that looks like trace and is none. If it has to be
      there: only the lye out there for its air, oils and mould at 38 to 45 °C (100 to 113 °F), all olive
      or other soft oils, blended to a true trace, then the mould wrapped and indoors, out of reach, for a
      day. It may miss gel or gel in the middle only, which shows as a ring.
    `,
  },
  'soap-at-large': {
    answer: 'That is about soap, but I have no sure answer to it.',
    why: spaced`
      I know colour in cold-process soap: how much, what to wet it in, whether it survives lye, what went
      wrong with a bar; and lye and water for your oils. Ask another way, or /help shows it all.
    `,
  },
  unsure: {
    answer: 'I have no sure answer to that. Near lye, what is in doubt is left alone.',
    why: spaced`
      What always holds: goggles and gloves; lye weighed, slowly into cold water, in polypropylene or
      stainless steel, in a draught; children and animals out; nothing else mixed with it; nothing eaten or
      tasted; used only after four weeks and without a zap. Ask another way, or one thing at a time, such
      as “can I use a glass jug for lye”. Somebody hurt: /first-aid.
    `,
  },
};
