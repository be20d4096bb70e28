import { spaced } from '../../../../engine/over-lines.ts';

/** Answers to short questions that say plainly what is asked (`src/engine/questions/technique/outright`). Trade practice. */
export const techniqueOutright = {
  'rising-in-mould': {
    answer: [
      'It has overheated.',
      'Goggles and gloves, children out, a tray under the mould, cover off, a fan on it.',
    ],
    why: [
      'Face away: it is hot and caustic.',
      'It climbs to the rim: stir it down with a long spoon, or spoon some into a bigger pot.',
      'Towel and lid off, out of the oven, onto a cold floor.',
      'It spits, smokes or runs off the tray: step back, leave it, keep everybody away.',
      'Cold and firm it is soap if nothing has separated.',
      'Next time cooler, and less honey, sugar or milk.',
    ],
  },
  'zap-how': {
    answer: [
      'Rub a cured bar with a wet fingertip, touch that to the tip of your tongue: a sting like a battery is free lye.',
    ],
    why: [
      'Never raw batter or soap of the first days, no lick of the bar, no child.',
      'It stings: rinse your mouth with water, spit out, leave the bar two weeks and test again; it still stings: do not use it.',
      'Surer, with no tongue: pH paper in the lather (11 and over is suspect) and the weights reckoned again.',
    ],
  },
  'fast-now': {
    answer: [
      'Stop the stick blender: into the mould now, spooned and pressed.',
      'A scent or heat mostly raced it.',
    ],
    why: [
      spaced`
        What speeds it: floral and spice scents, batter over about 40 °C (104 °F), much butter, palm or
        pomace olive, long blending, little water.
      `,
      'Which scent was it, and how warm?',
      'Next time 30 to 35 °C (86 to 95 °F), bursts of two seconds, that scent last and by hand.',
      'It is good soap if the lye was weighed right.',
    ],
  },
  'titanium-oil-kind': {
    answer: ['Yes: wet the oil kind in light oil, not in water, 1 tsp to 1 Tbsp, and take the same dose.'],
    why: [
      'It is the same white with a coat that likes oil; in water it floats and balls up.',
      'Take that oil off the oils of the recipe.',
      'Froth it smooth, let it soak ten minutes, sieve it.',
    ],
  },
  'titanium-water-kind': {
    answer: ['Yes: wet the water kind in water, not in oil, 1 tsp to 1 Tbsp, and take the same dose.'],
    why: [
      'In oil it balls up.',
      'Hold that water back from the lye water, but never less water than lye.',
      'Froth it smooth, let it soak ten minutes, sieve it; glycerin works too.',
    ],
  },
  'titanium-which': {
    answer: [
      'As its label says: oil-dispersible goes into light oil, water-dispersible into water, 1 tsp to 1 Tbsp.',
    ],
    why: [
      'No label: a pinch in a dish of each, and take the one where it goes smooth.',
      'The dose is the same.',
      'Oil is taken off the oils, water off the water; then froth it and sieve it.',
    ],
  },
  'purple-turned': {
    answer: [
      'Mostly manganese violet or a dye: lye turns it grey for good, and the cure does not bring it back.',
    ],
    why: [
      'Look on the label for CI 77742 or a dye number.',
      'Next time ultramarine violet (CI 77007), or a mica whose list names only that: /colourant check reads it.',
      'A plant purple, such as alkanet, greys too.',
      'The bar is good soap.',
    ],
  },
  'powder-or-liquid': {
    answer: [
      'Powder for cold process: oxides, ultramarines and mineral micas hold.',
      'Liquid dyes often turn or wander.',
    ],
    why: [
      'Liquids are mostly dyes for melt and pour; some hold, so a spoonful of batter first.',
      'A powder wants wetting: 1 tsp in 1 Tbsp light oil.',
      'A bought dispersion of a pigment is fine, its strength is unknown: begin with a quarter.',
    ],
  },
  'plants-browned': {
    answer: [
      'Usual: peel, petals and herbs go brown in lye, and do no harm.',
      'For the colour take a mineral or annatto.',
    ],
    why: [
      'It is the plant and no rancid oil, which shows as sticky orange spots with a stale smell on bars of months.',
      'Orange that stays: orange iron oxide, or annatto steeped in oil.',
      'Specks that stay: oats, poppy seeds, calendula petals.',
    ],
  },
  'lye-and-plants': {
    answer: ['Lye turns most of them: reds and purples go brown or grey, greens go khaki.', 'Minerals hold.'],
    why: [
      'These plants hold better: madder (pink), indigo (blue), annatto (orange), cocoa (brown), charcoal.',
      'Beetroot, hibiscus and berries never stay.',
      'Name one and I say what becomes of it.',
    ],
  },
  'ombre-how': {
    answer: [
      'Ombre: pour a plain part, stir a little wetted colour into the rest, pour again; four or five steps.',
    ],
    why: [
      'Light to medium trace, all from one pot, poured low over a spatula.',
      'Slow batter and no racing scent, since it takes time.',
      'The colour grows fast at the end as the pot empties: /pour gradient reckons even steps.',
    ],
  },
  'oils-for-mould': {
    answer: ['About 690 g of oils for each litre (1,000 ml) of mould; the rest of it is lye and water.'],
    why: [
      'Measure the mould with water, or length by width by height in cm over 1,000.',
      'In inches: length by width by height by 0.4 is the oils in ounces.',
      'A little less leaves room for the top.',
      '/plan with that size shares it among your oils and weighs the lye.',
    ],
  },
  'batch-cost': {
    answer: ['/plan with prices tells what the oils of a batch cost: “olive 8 €/kg, coconut 6 € per 500 g”.'],
    why: [
      'A jar’s price is noted with it: /shelf add has price and size.',
      spaced`
        Lye, scent, wrapping and electricity are added by hand, and your hours if you count them; all of
        it over the number of bars is the cost of one.
      `,
      'What to charge for it I leave to you.',
    ],
  },
  'label-what': {
    answer: [
      'Usually what it is, its weight, every ingredient by INCI name, your name and address, a batch number.',
    ],
    why: [
      spaced`
        Oils as they went in with sodium hydroxide, or as the soap they became; colours by INCI name or
        CI number; scent with its allergens.
      `,
      spaced`
        The rules where you sell decide, and some ask for a safety report or a registration first: ask
        your authority before the first bar is sold.
      `,
    ],
  },
};
