import { spaced } from '../../../engine/over-lines.ts';

/** What is said to matters of soap round its colour: first what to do, then why. Trade practice, but for what names a source. */
export const techniqueBeside = {
  'vanilla-brown': {
    answer: 'Vanillin browns soap for weeks, and no white stops it: leave what must stay pale unscented.',
    why: spaced`
      1 % vanillin in the scent ends tan, 5 % brown, 10 % and over dark brown; its data sheet says how
      much. Titanium dioxide only makes the brown paler. It is no fault and harms nothing, but does not
      come out again. Plan with it: the scent into a part that may be brown or black, none into white and
      pastels; or a scent without vanillin.
    `,
  },
  'ash-avoid': {
    answer:
      'Soda ash is harmless: steam or a damp cloth takes it off. Against it: cover the mould, less water, gel.',
    why: spaced`
      A thin dry white film on top is carbonate of lye and air, not your white pigment. Cover the mould
      airtight for the first day, lye of about 33 %, poured at a full light trace and not cool. Some makers
      spray isopropyl alcohol (91 % and over) on the fresh top: never near a flame, window open. Hard
      grains, wet crystals or a sting are no ash: gloves on, do not use it.
    `,
  },
  piping: {
    answer:
      'Pipe at thick trace: a peak stands stiff, like buttercream. Colour it while it is thin, then wait.',
    why: spaced`
      Set a third of the batter aside, stir the colour in at light trace and leave it 10 to 40 minutes,
      stirred now and then. It slides or melts: too early. Stiff in the bag: too late, so fill half a bag
      at a time. What it stands on is firm first. The bag may burst over raw batter.
    `,
  },
  'rebatch-colour': {
    answer:
      'Yes: grate it, melt it gently with a little water, stir wetted colour in. The old colour stays in it.',
    why: spaced`
      So go darker than it was: brown, black,
      deep green or blue; several colours make brown. 1 to 2 Tbsp water per 500 g soap, covered,
      in a slow cooker or water bath at 70 to 80 °C (158 to 176 °F), oil-wetted colour at the end,
      pressed into the mould: rustic, no swirls. Young soap burns: gloves. What zaps,
      weeps or holds hard white lumps is no matter of colour: /diagnose first.
    `,
  },
  'colour-in-mould': {
    answer: 'Not evenly any more. While it is soft: drops of oil-wetted mica on top, drawn in with a stick.',
    why: spaced`
      1 tsp mica in 2 to 3 tsp light oil, a few drops, one or two strokes near the top; deeper stirring
      makes blotches and air. Poured a minute ago and still thin: back into the jug and stir the wetted
      colour in by hand. Firm: leave it, and dust or paint the top. Without colour it turns out cream.
    `,
  },
  'cover-mould': {
    answer:
      'Covered for the first 24 hours: less ash and livelier colours. Milk, honey or sugar in it: open and cool.',
    why: spaced`
      A lid or card, and a towel round it where the room is cool and it shall gel. For white and pastels no
      towel. Feel the side after an hour: hot, with a crack on top, it is uncovered. Oven only warmed to 60
      °C (140 °F) at most and switched off; no fridge with food in it.
    `,
  },
  'mould-care': {
    answer:
      'Moulds: let what is left dry a day, peel it off, then hot water and washing-up liquid, gloves on.',
    why: spaced`
      Raw batter burns, so wait until it is soap. Silicone that keeps a tint or a smell of scent does no
      harm: an hour in hot soapy water takes most of it. No dishwasher for wood, no metal brush. Lining
      without wrinkles: paper (freezer or baking paper) cut to the inner size, corners creased along a
      ruler, two strips crosswise, held with a little oil or tape on the outside. Silicone needs none.
    `,
  },
  'pour-order': {
    answer: 'What thickens first goes first: the scented jug and those with titanium dioxide or clay.',
    why: spaced`
      For layers from below upwards: darkest or heaviest look at the bottom, the one you want on top last.
      In the pot and for drops: base first, then the thin colours, the strongest one last and least. Keep
      the quiet jugs stirred by hand every minute or two while you colour the others.
    `,
  },
  'scent-amount': {
    answer:
      'Fragrance: about 3 % of the oils, 30 g a kilo (half an ounce a pound), never above the limit on its own sheet.',
    why: spaced`
      The sheet (IFRA, rinse-off soap) says the most for that scent, and it may be far below 3 %: cinnamon
      and clove 0.5 % or less. Weigh it, no spoons. Last into the batter, by hand. None for babies. Colour
      is reckoned apart: tell me which one and for how much.
    `,
  },
  'scent-lasts': {
    answer:
      'To make scent last: about 3 % of the oils within its own limit, poured cool, cured airy and dark, then closed.',
    why: spaced`
      Citrus oils go within weeks; woods, resins, patchouli and most fragrance oils stay. No gel and 30 to
      35 °C (86 to 95 °F) spare the light ones. Clay or starch holds it no better in any test that I know
      of. More than the sheet allows is no way: it irritates skin.
    `,
  },
  'scent-mix': {
    answer: 'Yes: mix scents in one cup and stir them in last; together not more than about 3 % of the oils.',
    why: spaced`
      Each of them must also stay within the limit of its own sheet. One that races makes the whole race,
      one with vanillin browns it. Smell a drop of each on paper first, and let the mix stand a day.
    `,
  },
  'cure-time': {
    answer: 'Four to six weeks, with colour or without; nearly all olive is better after some months.',
    why: spaced`
      On a rack with air, turned once a week, out of the sun, since plants fade in light. Colour makes it
      neither longer nor shorter; most colours grow a little lighter as it dries. Gloves for the first 48
      hours; on skin from four weeks on. /batch poured reminds you.
    `,
  },
  'what-is-trace': {
    answer:
      'Trace: a drizzle of batter stays on top for a moment. Emulsion is just before: no oil streaks, thin as milk.',
    why: spaced`
      Blender off, lift it and let it drip. Emulsion: one colour, no shine of oil, and it stays so when it
      stands; colours go in here. Light: thin custard, the drizzle just shows. Medium: it lies on top, like
      pudding. Thick: a peak stands. Thick but cool, dull and with streaks of oil is false trace.
    `,
  },
  'too-much-colour': {
    answer:
      'About 1 tsp per 500 g oils is usual, 2 the most. Beyond it: coloured lather, stained cloths, crumbly soap.',
    why: spaced`
      Less for strong ones: ultramarine and oxides 1/2 to 1 tsp, charcoal 1 to 1 1/2, indigo 1/4 to 1/2.
      Still in the pot: stir plain batter into it, or share it among several batches as their dark part.
      Made already: good soap, if the lye was weighed right; try it on an old cloth, or grate it into plain
      soap. Tell me which and how much: “is 2 tbsp mica too much for 500 g oils”.
    `,
  },
  'powder-dust': {
    answer: 'Damp paper laid on it and wiped inwards, then soapy water. Do not blow, sweep or brush it up.',
    why: spaced`
      Gloves, a dust mask (FFP2 or N95), window shut until it lies, no fan. Next time: spoon it slowly, low
      over the cup, straight under its oil, and a damp cloth spread beneath. A vacuum cleaner blows fine
      powder out behind, unless it has a fine filter.
    `,
  },
  'lye-nerves': {
    answer: 'Respect is right, fear is not needed: goggles, gloves, and lye slowly into cold water.',
    why: spaced`
      Never water onto lye. Everything weighed and set out first, long sleeves, closed shoes, open window,
      no children or pets, an hour in which nobody rings. It heats by itself to 80 to 90 °C (176 to 194 °F)
      and steams: face away, let it stand until it is 35 °C (95 °F). A splash: running water at once, at
      least 20 minutes. Begin with a plain recipe of 500 g oils and one colour: /plan weighs it.
    `,
  },
  'stained-things': {
    answer:
      'Wipe off the grease with paper first, then soap and hot water. Silicone and plastic keep some colour.',
    why: spaced`
      Gloves while the batter is raw. Charcoal, oxides and mica lie on top and go with washing-up liquid;
      turmeric, dyes and lakes dye plastic, wood and cloth. Hands: oil, then soap. Stone and grout: soon.
      No bleach or acid on what still has lye on it. Keep one spatula and jug for dark colours. A bar that
      stains: less colour, 1 tsp per 500 g oils.
    `,
  },
  'swirl-tools': {
    answer: 'A skewer, a chopstick, a spoon handle or a bent plastic-coated hanger: anything thin and clean.',
    why: spaced`
      Never aluminium, zinc or tinned wire: lye eats it. Stainless steel, bamboo, silicone and PP plastic
      are right; wood only for soap from then on. Thin draws fine lines, a spoon broad ones. A comb:
      skewers stuck through a strip of firm plastic.
    `,
  },
  'easiest-swirl': {
    answer:
      'Easiest: in the pot, one colour and white. Then drop and spoon swirl; hanger; dividers and combs last.',
    why: spaced`
      In the pot needs no tool and forgives thick and thin. A hanger wants two or three layers at light
      trace and one to three passes. Dividers (taiwan) and a peacock comb want even, thin batter for a long
      time, so a slow recipe first. Two colours with contrast show more than five.
    `,
  },
  'split-batter': {
    answer:
      'By weight at emulsion: half as base, the rest shared equally, each into its own jug with its colour ready.',
    why: spaced`
      Batter is about 1.4 times the oils. 1,200 g for three colours: 600, 300 and 300, or 400 each. Split
      first, since every jug then is equally thin and needs only a stir by hand; one that is coloured in
      the big pot thickens and leaves no plain base. An accent needs 10 to 15 %. /plan portions:“1/2 plain;
      1/4 red oxide; 1/4 charcoal” shares and doses.
    `,
  },
  botanicals: {
    answer: 'Nearly all petals, buds and leaves go brown in soap; calendula alone keeps its yellow.',
    why: spaced`
      Inside they brown within days and leave tan halos. On top, dry, pressed on when it is at thick trace
      or the next day; still some brown. Coffee grounds, oats and seeds stay as they are and scratch: fine,
      and at most 1 tsp per 500 g oils. Nothing fresh: it browns and rots.
    `,
  },
  'milk-colour': {
    answer:
      'Milk goes tan to orange with heat: freeze it, lye in a spoonful at a time, keep it cool, no gel.',
    why: spaced`
      Its sugar browns in lye, every milk’s does. Stay under 30 °C (86 °F) with the lye, do not cover the
      mould. Then it is cream: white becomes ivory, with 1 tsp titanium dioxide per 500 g oils; blues and
      lilacs go greyish, so a little more of them, or warm hues. Or milk powder at trace, 1 Tbsp per 500 g
      oils.
    `,
  },
  'honey-sugar': {
    answer:
      'Honey, sugar, beer and wine turn it tan to brown and make it hot: at most 1 to 2 tsp per 500 g oils.',
    why: spaced`
      Dissolved in a little of the recipe’s water, in at light trace, never into hot lye. Poured cool, no
      towel, looked after for cracks. Beer and wine boiled flat and ice-cold, or they foam over. No violet
      stays of red wine. Warm hues go with it, pastels and blue do not.
    `,
  },
  'yellow-base': {
    answer:
      'Paler oils, or 1/2 to 1 tsp titanium dioxide per 500 g oils in that portion before the colour goes in.',
    why: spaced`
      Yellow and green of olive, used or unrefined oil add to every colour: blue goes teal, lilac grey,
      pink salmon. Palest: refined coconut, lard, light olive,
      high-oleic sunflower. A speck of violet takes yellow out of white. Over dark or used oil: charcoal,
      cocoa, brick, deep green, no pastels.
    `,
  },
  'unlabelled-powder': {
    answer:
      'Leave it out of soap: without a list of what is in it nobody can say what it does on skin or in lye.',
    why: spaced`
      A test in a cup shows whether its colour holds, not whether it is safe: it may be craft, resin or
      wall colour with heavy metals, or laundry blue. Ask the seller for ingredients and CI numbers; with
      the list, /colourant check reads it. Do not taste or sniff it.
    `,
  },
  'cosmetic-grade': {
    answer:
      'No: cosmetic, skin or lip safe speaks of skin, not of lye. Many such colours still turn in raw soap.',
    why: spaced`
      What helps is “stable in cold process” and the list: CI 77… are minerals and mostly hold, but not CI
      77510 (iron blue) and CI 77742 (manganese violet). Food grade says nothing either. Stir a pinch into
      a spoonful of batter and look after two days. /colourant check reads the list for both.
    `,
  },
  'shine-sparkle': {
    answer:
      'Mica shines only where light falls on it: dust it or paint it on top. Inside the bar it looks flat.',
    why: spaced`
      Cold-process soap is opaque, so gold turns mustard and pearl turns white in it. On top: dry through a
      sieve, or 1 tsp in 2 to 3 tsp light oil. Gel makes it a little see-through and livelier; a cut face
      may be steamed or rubbed with a soft cloth. No craft glitter.
    `,
  },
  'dust-on-top': {
    answer:
      'Yes: a thin veil through a fine sieve on the fresh top, or 1 tsp mica in 2 to 3 tsp light oil, dripped on.',
    why: spaced`
      Dry mica lies loose: it rubs off on hands and goes with the first wash. It sticks best on a top that
      is still tacky. With oil, a few drops a bar: more stands for days. On cured soap: with a brush and a
      little alcohol, away from flames. Gold stays gold only here.
    `,
  },
  'mica-settles': {
    answer: 'Normal: powder sinks in oil. Stir it up to the bottom just before it goes in.',
    why: spaced`
      It is no solution, and nothing is lost. Thick sludge: a few drops of oil and a small frother. Wet it
      early, so that it soaks, and keep it covered. Glycerin holds it up longer, water shortest.
    `,
  },
  'clays-colour': {
    answer:
      'Yes, soft earth colours that stay: 1 tsp per 500 g oils, up to 3 for full colour, in three times its volume of water.',
    why: spaced`
      Rose clay: dusty pink to brick. Red: terracotta. Yellow: ochre. French green: grey-green, khaki in
      yellow oil. Purple: greyish mauve. Kaolin: off-white; bentonite: grey-beige, and it thickens most. No
      clay from a river bank: nobody knows what is in it.
    `,
  },
  'steep-in-oil': {
    answer:
      'Yes, for annatto, alkanet, paprika, turmeric: 1 to 2 Tbsp in 250 ml (1 cup) light oil, strained, no grit.',
    why: spaced`
      Warm, in a water bath at 50 to 60 °C (122 to 140 °F), two hours; cold in the dark four to six weeks.
      Strain it through cloth or a coffee filter. It replaces a part of the recipe’s oils, 5 to 25 % as
      deep as you wish, and counts among them. Annatto: yellow to orange. Alkanet: lilac to grey-blue.
      Paprika: peach. Powder straight in is stronger, but speckles and scratches. Greens of leaves fade
      either way.
    `,
  },
  'coloured-suds': {
    answer:
      'Lather should be near white: much colour or a dye tints it. Ugly, seldom harmful; half the dose next time.',
    why: spaced`
      Over about 1 tsp per 500 g oils (charcoal and oxides 1, ultramarine and indigo 1/2) it shows in the
      lather and on cloth. Dyes, lakes and many neons tint it at any dose. Try the bar on an old cloth
      before you give it away. It may pale in the cure. If it stings it is no matter of colour: stop, and
      /first-aid.
    `,
  },
  'hot-soap': {
    answer:
      'Yes: lye water jumps to 80 to 90 °C (176 to 194 °F), and soap in the mould heats to 60 to 80 °C (140 to 176 °F).',
    why: spaced`
      That is gel: warm from about an hour on, darker in the middle, cool again the next day. Milk, honey,
      sugar, some scents and a big wrapped loaf go hotter. A crack on top, bulging or bubbling: uncover it,
      moving air, a tray under it, face away, gloves. A ring in the cut bar is only half gel.
    `,
  },
  'scent-speeds': {
    answer:
      'Floral and spice scents race: rose, jasmine, lilac, clove, cinnamon. Lavender and most citrus are quiet.',
    why: spaced`
      Next time: 30 °C (86 °F), lye of 28 to 30 %, slow oils, colours in first, the scent last and by hand,
      or only into the plain part. Try it: a few drops in a spoonful of batter, or 100 g. The seller’s note
      on acceleration helps. Clove and cinnamon irritate skin: by their certificate only.
    `,
  },
  'changed-in-pot': {
    answer:
      'Pour it: some colours turn in raw batter and come back within days. Brown or grey after a week stays so.',
    why: spaced`
      Add no more now, it cannot be judged. Pink that goes orange and ultramarine that looks dull often
      come back as the lye is used up; iron blue, manganese violet, carmine and food dyes do not. Look at
      its list for next time: /colourant check. The soap itself is good.
    `,
  },
  'label-selling': {
    answer:
      'Each colour by its INCI name or CI number: mica is “Mica, CI 77891, CI 77491”, as its own sheet says.',
    why: spaced`
      EU and UK: colours may stand last in any order, by CI number (Regulation 1223/2009, article 19).
      Titanium dioxide CI 77891, iron oxides CI 77491, 77492, 77499, ultramarine CI 77007, chromium oxide
      CI 77288, charcoal “Charcoal Powder”. “May contain” is for ranges of make-up. What you sell needs its
      own safety assessment there. I am no lawyer: ask your authority.
    `,
  },
  'blend-two': {
    answer:
      'Blue and yellow: dull green. Red and white: pink. Red and blue: plum. Black and white: grey. Red and yellow: orange.',
    why: spaced`
      Hues that face each other (red and green, blue and orange, yellow and violet) go brown or grey.
      Oxides are earthy, so what they make is quiet too. Name the two powders and I show it: /preview
      mix:“1/4 tsp ultramarine + 1/4 tsp yellow oxide”.
    `,
  },
  'colour-families': {
    answer:
      'Brown: cocoa, coffee. Yellow to orange: annatto, turmeric, paprika. Pink: madder, rose clay. Blue: indigo.',
    why: spaced`
      Violet: alkanet, more grey than violet. Green: leaves and spirulina, which fade to khaki; green clay
      stays. Beetroot, hibiscus, berries, purple corn, butterfly pea and red cabbage go brown or grey in
      lye. Name one and I say what becomes of it.
    `,
  },
  'darker-lighter': {
    answer: 'Darker: more of the same, up to double. Lighter: half the colour, or a little titanium dioxide.',
    why: spaced`
      In the pot: by quarters of a teaspoon, wetted, by hand. Raw batter looks darker and yellower than the
      bar will. White makes it milky as well as pale; plain batter thins it without. Black greys a colour:
      a speck at most. Gel deepens, no white in that part either. Made soap is not changed any more. Tell
      me the colour and the amount: “ultramarine, 500 g oils, half strength”.
    `,
  },
  'small-batch': {
    answer:
      'With a scale of 1 g: 500 g oils at least; with 0.1 g down to about 100 g. One colour: a spoonful of batter.',
    why: spaced`
      Half a gram of lye is 3.5 % of the lye for 100 g of oils, and that is most of a superfat of 5 %
      (arithmetic). So split a normal batch into cups and colour each with a pinch: 1/32 tsp in 2 Tbsp. A
      narrow, tall jug lets the blender reach; under 200 g whisk by hand. Keep the cups warm, so that they
      gel like the loaf would.
    `,
  },
};
