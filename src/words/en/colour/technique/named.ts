import { spaced } from '../../../../engine/over-lines.ts';

/** Answers to a part of a technique, where the question names it. Trade practice. */
export const techniqueNamed = {
  'ash-steam': {
    answer: [
      'Yes: steam the top for a minute, or rinse the bar with cool water, gloves on, and let it dry.',
      'It is harmless.',
    ],
    why: [
      'It is soda ash: carbonate on the surface only.',
      'From an iron or a kettle, a hand’s breadth away, once the bar is a few days old.',
      'Some comes back; cured longer it washes off with use.',
      'A skin that is white all through, or zaps, is no ash: do not use it.',
    ],
  },
  'ash-alcohol': {
    answer: [
      'Alcohol: a light spray of 91 to 99 % isopropyl over the fresh top, then covered.',
      'Away from flames, window open.',
    ],
    why: [
      spaced`
        It helps against ash that is to come, some say once more after ten minutes; it does not take off
        what is there: that is steam or a rinse.
      `,
      'Never into the batter or the lye water: it boils and seizes.',
      'The cover for a day and less water do more.',
    ],
  },
  'oil-or-water': {
    answer: [
      'Micas, oxides and charcoal in a light oil, about 1 Tbsp to a tsp; clays in water; titanium dioxide as its label says.',
    ],
    why: [
      'Not sure of a jar: stir a pinch into water and one into oil and take the one that goes smooth.',
      'Ultramarine takes either, water a little easier.',
      'Take the oil off the recipe’s oils, the water off its water.',
      'Name the colour and I say its amount: /dose.',
    ],
  },
  'gloves-raw': {
    answer: [
      'Yes, gloves for the first two days: fresh soap still burns, in the mould, when you unmould it and when you cut.',
    ],
    why: [
      'After 48 hours and without a zap bare hands are fine; on the skin as soap from four weeks on.',
      'Goggles while it is liquid.',
    ],
  },
  'split-oil': {
    answer: ['Oil on top in the pot: it has not joined.', 'Blend in bursts until no oil shows, then pour.'],
    why: [
      'Cool, hard fats have set: warm it gently to about 40 °C (104 °F) while you stir.',
      'After the scent: blend through it, it joins but thickens fast, so no swirl.',
      'Will it not join: finish it as hot process, and check the weight of the lye.',
      'In the mould: gloves on, all of it back into the pot, and the same.',
      'Oil or water on it the next day: do not use it as it is.',
    ],
  },
  'colours-left': {
    answer: [
      'Blender off.',
      'Stir the wetted colours in by hand, a jug at a time, and spoon them into the mould in turns.',
    ],
    why: [
      'No fine swirl any more: spoonfuls, thick layers or a coarse marble, pressed down, the mould knocked on the table.',
      'The thickest jug goes first, the scent stays out of the others.',
      'Too stiff to stir: leave that part plain.',
      'It is good soap if the lye was weighed right.',
    ],
  },
  'solid-now': {
    answer: ['Gloves on: press it into the mould hard now, or warm it gently and finish it as hot process.'],
    why: [
      'It is still soap, if the lye was weighed right; only the swirl is gone.',
      'Press out the gaps, knock the mould down.',
      spaced`
        Hot process: slow cooker or water bath at about 70 to 80 °C (158 to 176 °F), stirred, an hour or
        more, until it is smooth and does not zap.
      `,
      'Hot and climbing: into a bigger pot, no lid, face away.',
      'The scent did it, or it was too warm: that one next time last, at 30 °C (86 °F).',
    ],
  },
  'teaspoon-in-grams': {
    answer: [
      'A level teaspoon: mica 1 to 2 g, charcoal about 1.5, ultramarine and oxides 2 to 4, titanium dioxide about 3.',
    ],
    why: [
      'It hangs on the powder and on how it was filled, so weigh a level spoon of your own jar once and write it on the lid.',
      'Name it and I reckon: /dose gives spoons and grams.',
    ],
  },
  'a-bit-warm': {
    answer: ['It works, only faster: 30 to 38 °C (86 to 100 °F) leaves more time for a swirl.'],
    why: [
      'Have everything set out, blend to emulsion only, scent last.',
      'A cool water bath takes five degrees off; stop before hard fats turn cloudy.',
    ],
  },
  'too-warm': {
    answer: [
      'Too warm for a swirl: it thickens within minutes.',
      'Let oils and lye come to 30 to 38 °C (86 to 100 °F).',
    ],
    why: [
      'Both alike, not more than about 10 °C (18 °F) apart; a cool water bath helps.',
      'Poured warm it also gels sooner and hotter: no towel.',
    ],
  },
  'for-lips': {
    answer: [
      'Which colour?',
      'Soap is rinsed off, but lips have lists of their own: /colourant check with your region says it.',
    ],
    why: [
      'In the US ultramarines and chromium oxides are not for lips (21 CFR 73), iron oxides, mica and titanium dioxide are.',
      'A colour that is safe on lips may still turn in lye.',
    ],
  },
  'for-a-baby': {
    answer: [
      'For a baby best no colour and no scent; if any, very little white or rose clay.',
      'Ask a doctor first.',
    ],
    why: [
      'Cured six weeks, no zap on an adult first.',
      'How old the child is decides: under three years the rules for what is sold are stricter (EU Regulation 1223/2009, Annex I).',
    ],
  },
  'titanium-lumps': {
    answer: [
      'Titanium dioxide: 1 tsp in 1 Tbsp water or light oil, as its label says, frothed smooth and sieved.',
    ],
    why: [
      'Sold for water it balls up in oil, and the other way round: try a pinch in each.',
      'Let it soak ten minutes.',
      'Already in the batter: a second or two of the blender in that portion.',
      'Specks in a made bar stay, and harm nothing unless they are hard and zap.',
    ],
  },
  'whole-grams': {
    answer: [
      'Whole grams: powders by level spoons instead; for lye at least 500 g of oils, else a scale of 0.1 g.',
    ],
    why: [
      'Half a gram of lye is 3.5 % of the lye for 100 g of oils, and that is most of a superfat of 5 % (arithmetic); of 500 g it is 0.7 %.',
      'A gram of mica is most of a teaspoon, so a scale like that cannot weigh a pinch.',
      'Or stir 10 g of powder into 30 g of oil and take a quarter of that for each part.',
      'Lye is never taken by spoons.',
    ],
  },
  'less-water': {
    answer: [
      'Yes, less water thickens and sets sooner: 1.5 to 1.8 times the weight of the lye.',
      'Not for fine swirls.',
    ],
    why: [
      'The lye stays as it is, only its water is less.',
      'For 100 g of lye 150 to 180 g of water; never less water than lye, or it does not dissolve.',
      'It runs hotter in the pot and gels less easily in the mould, has less ash and fewer rivers, and comes out of the mould sooner.',
      'Two times and over is usual to begin with.',
      'Water that was left out is not put into batter later.',
    ],
  },
  'lumps-in-bar': {
    answer: [
      'Gloves on, press one: soft and powdery is white pigment.',
      'Hard, wet, crunchy or stinging may be lye: do not use it.',
    ],
    why: [
      'Round and waxy, through the whole bar: fats that set (stearic), harmless once the bar is cured.',
      'Powdery dots: titanium dioxide that was not wetted, harmless too.',
      'Next time soak it, froth it and sieve it.',
      'Which is it: hard or soft, dry or weeping?',
      'Tell me and I go on.',
    ],
  },
  'split-where': {
    answer: [
      'Where is it: still in the pot, or poured?',
      'In the pot: blend in bursts until no oil shows.',
      'Poured: gloves on, do not use it.',
    ],
    why: [
      'In the pot, cool and with hard fats: warm it gently to about 40 °C (104 °F) while you stir, then blend.',
      'In the mould with oil or water on it: all of it back into the pot, gloves and goggles on, and blend.',
      'A made bar that cracked or crumbles is something else: tell me what you see.',
    ],
  },
};
