import { spaced } from '../../../engine/over-lines.ts';
import { techniqueAsked } from './technique-asked.ts';
import { techniqueBench } from './technique-bench.ts';
import { techniqueBeside } from './technique-beside.ts';
import { techniqueMatters } from './technique-matters.ts';
import { colourGiven, techniqueNamed } from './technique-named.ts';
import { techniqueOutright } from './technique-outright.ts';

/** What is said to how coloured batter is worked with: first what to do, then why, and what comes next. */
export const technique = {
  rawBatter: 'Gloves and goggles on: lye and raw batter burn, the batter for a day or two.',
  dust: 'Fine powder: no draught, a dust mask while it is dry, wipe up damp.',
  topics: {
    'thick-now': {
      answer: 'Stop the stick blender. Stir by hand and get it into the mould now.',
      why: spaced`
        Still pourable: leave the swirl, pour the colours you have one after the other. Like pudding: spoon
        it in, press each spoonful down, knock the mould on the table to close the gaps; fold what colour
        is left into the last spoonfuls, streaks are fine. Hard in the jug: press it into the mould with
        gloved hands, or warm it gently and finish it as hot process. One jug thicker than the others: that
        one first, as a layer. It is good soap if the lye was weighed right. Next time: 30 to 35 °C (86 to
        95 °F), lye of 28 to 30 %, scent last and by hand. Hot and climbing out of its pot: gloves,
        goggles, into a bigger pot or a tray, no lid.
      `,
    },
    'riced-now': {
      answer: 'Grainy like rice: stick blend it smooth in short bursts, then pour at once.',
      why: spaced`
        Mostly the scent did it. Once smooth it thickens fast, so no swirl. Oil standing on top in the pot:
        it has split or never joined; blend on until no oil shows, and where hard fats have set warm it
        gently to about 40 °C (104 °F). Will it not join: finish it as hot process. In the mould already
        and oil or water lies on it next day: do not use it; stir it together or rebatch it, and use
        nothing that zaps.
      `,
    },
    'thin-it': {
      answer: 'No: neither oil nor water undoes trace. Stir by hand and pour now.',
      why: spaced`
        More oil raises the superfat and softens the bar. A spoonful of warm water may buy a minute; more
        makes soft bars and glycerin rivers. Warming helps only where cool hard fats made it thick (false
        trace).
      `,
    },
    'keep-fluid': {
      answer:
        'Blend only until no oil streaks show, then stir by hand; oils and lye at 30 to 38 °C (86 to 100 °F).',
      why: spaced`
        Slow oils, 60 % or more: olive, high-oleic sunflower, rice bran, lard; castor at most 5 %,
        few butters. Lye of 28 to 30 %,
        which is 2.3 to 2.6 parts of water to one of lye. Powders wetted beforehand,
        everything set out before the lye goes in. A scent that you have tried, last,
        by hand. Not so cool that hard fats turn cloudy.
      `,
    },
    'pot-time': {
      answer:
        'With slow oils and a quiet scent 10 to 30 minutes from emulsion; with a fast scent perhaps one.',
      why: spaced`
        Each burst of the blender costs minutes, so does warmth. Set colours, moulds and tools out first,
        scent last. For more time: lye of 28 to 30 %, 30 to 38 °C (86 to 100 °F), slow oils.
      `,
    },
    'slow-oils': {
      answer:
        'Slow: olive, high-oleic sunflower, rice bran, almond, lard. Fast: castor over 5 %, palm, butters.',
      why: spaced`
        A swirl recipe by common practice: 50 to 60 % slow liquid oil, 20 to 25 % coconut, the rest lard or
        palm, castor 0 to 5 %. Pomace olive is quicker than other olive. Every oil takes its own lye: /plan
        oils:“55% olive, 25% coconut, 20% lard” weighs it.
      `,
    },
    'swirl-water': {
      answer:
        'Lye of 28 to 30 % for a fine swirl (2.3 to 2.6 parts of water to one of lye), 33 % for a simple one.',
      why: spaced`
        A water discount thickens sooner: not for swirls. More water gels sooner and brings glycerin rivers
        in white. Never less water than lye. /plan water:“29% lye” weighs it.
      `,
    },
    'swirl-temperature': {
      answer: 'Oils and lye water both at 30 to 38 °C (86 to 100 °F) for swirls.',
      why: spaced`
        Warmer thickens sooner; cooler and hard fats set, which is false trace: palm, lard and butters have
        to be clear. They lie not more than about 10 °C (18 °F) apart. Batter at 45 °C (113 °F) is usable,
        only quicker.
      `,
    },
    'blend-or-stir': {
      answer: 'Bursts of 2 to 3 seconds with stirring between, until no oil streaks show; the rest by hand.',
      why: spaced`
        Often 20 to 60 seconds in all. Colours and scent are stirred in; a second of the blender in one
        portion only against lumps, since it thickens. No blender, or it broke: whisk steadily, it takes 20
        to 60 minutes, longer with much olive, with rests in between. Stay with it. Nothing after an hour:
        check the weights of the lye.
      `,
    },
    'when-colour': {
      answer: 'At emulsion or first light trace, wetted beforehand, and before the scent.',
      why: spaced`
        As soon as no oil streaks show there is nothing to wait for: split the batter, stir each colour in
        by hand. One colour for the whole batch may go into the oils before the lye. At thick trace it no
        longer spreads evenly.
      `,
    },
    'colour-or-scent': {
      answer: 'Colour first, scent last.',
      why: spaced`
        A scent may thicken it within seconds. Stir it in by hand, or share it among the cups just before
        they are poured. One that you know to be quiet may go into the oils from the start.
      `,
    },
    'colour-in-lye-water': {
      answer:
        'Better not: wet colours in oil or water of their own and add them at emulsion, or to the oils.',
      why: spaced`
        Mica floats on lye water, and strong lye turns some dyes for good. One colour for the whole batch
        may go, wetted, into the oils before the lye. Indigo and madder are put into lye water by some
        makers: a small test first. Lye goes into cold water, slowly, with nothing in it that foams or
        heats.
      `,
    },
    'dry-in': {
      answer:
        'Better not: dry powder leaves specks. Wet each teaspoon in about a tablespoon of light oil first.',
      why: spaced`
        Mica often forgives it; oxides, titanium dioxide, charcoal and clay do not. Clay is wetted in about
        three times its own volume of water. /dose says for each what to wet it in.
      `,
    },
    'which-trace': {
      answer: 'Light trace for swirls, medium for layers, thick for piping.',
      why: spaced`
        Light: like thin custard, a drizzle just shows (in the pot, drop, divider, comb, stripes). Medium:
        a spoonful rests on top (layers, spoon swirl). Thick: holds a peak like buttercream (piping,
        textured tops). All colours of one pour at the same thickness.
      `,
    },
    'false-trace': {
      answer: 'Warm it: if it turns thin again it was false trace, hard fats that set, not soap.',
      why: spaced`
        Signs: cool, under about 30 °C (86 °F), dull or grainy, streaks of oil, with palm, lard or butters
        in it. Warm it to about 40 °C (104 °F) while stirring and blend on until it stays thick. Poured as
        it is it can split, with oil and lye in pockets.
      `,
    },
    'layers-how': {
      answer:
        'Medium trace, and pour the next when a spoonful rests on the layer below: often 5 to 20 minutes.',
      why: spaced`
        Mould level, knocked down to let air out. Pour low, over the back of a spoon or a spatula. Too soon
        and they run into each other; too late and they come apart: then roughen the surface with a fork.
        Keep the batter that waits at emulsion, unblended.
      `,
    },
    'mica-line': {
      answer: 'A thin veil of mica, dusted through a fine sieve onto a firm layer, the next one poured low.',
      why: spaced`
        Thick lines part the bar: the soap should still show through. Leave a hair free at the edge. Pour
        over a spatula so that it does not wash away. Cut the loaf on its side, so that the wire draws
        along the line and not the powder down the face.
      `,
    },
    'drop-swirl': {
      answer:
        'Base at light to medium trace in a tall mould, thin colours poured in lines from different heights.',
      why: 'High pours sink, low ones stay up. Two or three colours, each in a jug with a spout. No stirring, or one pass with a hanger at the end.',
    },
    'pot-swirl': {
      answer:
        'Light trace; pour the colours into the pot in three or four places, one or two turns, then pour.',
      why: spaced`
        Like single cream. Two or three colours beside the base, with contrast. Stir no more than one or
        two slow turns, and pour along one line of the mould: more stirring makes mud.
      `,
    },
    'hanger-swirl': {
      answer: 'Light trace, and one to three passes with the hanger: more makes mud.',
      why: spaced`
        Layers or drops of two to four colours first, just thick enough not to sink. Down at one side to
        the bottom, across, up and over in loops, out where it went in. Put white or plain batter between
        colours that turn brown together, such as blue and orange.
      `,
    },
    'spoon-swirl': {
      answer:
        'Spoonfuls of light to medium trace side by side in turn, then one spoon or stick drawn through.',
      why: 'Medium enough to lie beside each other. One figure of eight or a few loops, then stop. Knock the mould down at the end.',
    },
    'comb-swirl': {
      answer: 'Thin lines of light-trace colour side by side; comb across once, back between, then curves.',
      why: spaced`
        Squeeze bottles make even lines; a slab mould has the room. First the rake one way, then the other
        between its own lines, then the comb in curves for the feathers. Slow batter and no racing scent,
        since it takes time.
      `,
    },
    'divider-swirl': {
      answer:
        'Each colour at light trace between its dividers, all equally full; pull them straight up, then draw lines.',
      why: spaced`
        Pour all of them a little at a time so that the dividers stay upright. Then lines with a stick:
        crosswise first, then lengthwise, and perhaps curves. Equal thickness matters more than thin.
      `,
    },
    'how-many-colours': {
      answer: 'Two or three and the plain base are plenty; four at most for a first swirl.',
      why: spaced`
        Each wants its own jug, wetted beforehand, and at least half a cup (120 ml) of batter. Leave a
        third to a half of the batter as base, with contrast to the rest. /plan shares a batch out and
        doses each.
      `,
    },
    'gel-and-colour': {
      answer:
        'Gel makes most colours deeper and a little see-through; without it they stay paler and milkier.',
      why: spaced`
        For gel: covered and wrapped, warm, looked at for cracks. Against it: cool batter, small moulds, a
        cold place (no fridge with food). Half gelled leaves a darker ring. Whites stay whiter without, and
        have fewer rivers with less water. /plan reckons whether yours gels.
      `,
    },
    'mix-colourants': {
      answer: 'Yes: oxides, ultramarines, clays and micas mix, together no more than the full dose of one.',
      why: spaced`
        Wet each as it wants: clay in water, mica in oil. Hues that face each other (red and green, blue
        and orange, yellow and violet) turn grey-brown. /preview mix:“1/4 tsp ultramarine + 1/4 tsp yellow
        oxide” shows what comes of it.
      `,
    },
    'premix-keeps': {
      answer: 'Wetted in oil: weeks, closed and dark, while the oil is fresh. In water: the same day.',
      why: spaced`
        Label it with the day and how much powder is in a spoonful, stir it up before use. Smells old: away
        with it. Oil kept that way counts among the oils of the batch.
      `,
    },
    'carrier-counts': {
      answer: 'Take it off the oils or the water of the recipe: then nothing changes.',
      why: spaced`
        A tablespoon of oil on top (14 g) in 1 kg of oils makes 5 % superfat 6.3. Water on top only makes
        it softer for longer. /dose says what it does to your portion.
      `,
    },
    'spoon-or-grams': {
      answer: 'Grams from one gram up; below that a level spoon, never heaped.',
      why: spaced`
        A level teaspoon weighs by the powder: mica 1 to 2 g, charcoal about 1.5, ultramarine and oxides 2
        to 4, titanium dioxide about 3. Weigh a level spoon of your own jar once. /dose gives both.
      `,
    },
    'of-oils-or-soap': {
      answer: 'Of the oils, in nearly all recipes and groups: water and lye are not counted.',
      why: spaced`
        1 kg of oils makes about 1.4 kg of batter, so a dose by oils is about 1.4 times as strong as the
        same by batter. Tell me which: “500 g oils” or “500 g batter”.
      `,
    },
    'first-colours': {
      answer:
        'Five do a lot: titanium dioxide, activated charcoal, ultramarine blue, red and yellow iron oxide.',
      why: spaced`
        All hold in lye and light. Blue and yellow make a quiet green, red and charcoal a brown, white
        makes any of them pastel. Then one mica whose label names only mineral colours. Begin with one
        colour in a plain recipe, wetted in a little oil. /palette buy finds what brings most beside what
        you have.
      `,
    },
    'mica-or-oxide': {
      answer:
        'Mica stirs in easily and is brighter; oxides are matt, stronger and always hold, but want good wetting.',
      why: spaced`
        To begin with: mica whose label names only mineral colours (CI 77…), since dyes on mica may turn or
        wander. For a colour that must not change: oxide or ultramarine. Clays give soft earth tones and
        are wetted in water. /colourant check reads the list on your jar.
      `,
    },
    'whiter-soap': {
      answer:
        'Pale oils, no vanilla in the scent, 1 to 1 1/2 tsp titanium dioxide per 500 g oils, and no gel.',
      why: spaced`
        Cream comes from olive, unrefined butters, milk and heat. Wet the titanium dioxide well and use no
        more: too much crackles, crumbles and shows rivers. /dose colourant:“titanium dioxide” portion:“500
        g oils”.
      `,
    },
    'bright-colours': {
      answer: 'Pale oils, no titanium dioxide in that portion, the full dose, and let it gel.',
      why: spaced`
        White and the yellow of the oils dull every colour; gel deepens it. Oxides are quiet by nature:
        vivid reds, violets and greens come of micas and lakes, whose label has to be checked for lye.
        /match target:“bright green” shows how near your jars come.
      `,
    },
    'pastel-colours': {
      answer: 'About a quarter of the full dose, with half a teaspoon of titanium dioxide per 500 g oils.',
      why: 'Without white it becomes see-through rather than pastel. /dose has it as strength:pastel.',
    },
    'colour-in-cure': {
      answer:
        'Judge it after four weeks: raw batter looks darker and yellower, most colours lighten as it dries.',
      why: spaced`
        In the first two days colours may look wrong and come back; what is brown or grey after a week
        stays so. Vanilla browns for weeks. Plants go on fading in light.
      `,
    },
    'colours-that-stay': {
      answer: 'Iron oxides, ultramarines, chrome green, charcoal and mineral micas do not fade.',
      why: spaced`
        Plant colours, spirulina and many neons fade in weeks to months, at a window sooner. Cure and keep
        bars out of the sun. Name the colour and I say how it holds.
      `,
    },
    'colours-that-bleed': {
      answer:
        'Oxides, ultramarines, charcoal, clays and mineral micas stay put; dyes, lakes and many neons wander.',
      why: spaced`
        Look for dye numbers on the label (such as CI 16035, 19140, 42090): those may run into white and
        colour the lather. Hot, wet batter spreads them more. /colourant check reads the list.
      `,
    },
    'natural-colours': {
      answer:
        'These hold: charcoal, clays, cocoa (brown), madder (pink), indigo (blue), annatto (yellow to orange, slowly paler).',
      why: spaced`
        Turmeric, paprika, spirulina and green leaves begin well and fade. Beetroot, hibiscus, berries and
        red cabbage turn brown or grey in lye. Name one and I say what becomes of it and how much goes in.
      `,
    },
    'test-colour': {
      answer:
        'Stir a pinch into a spoonful of batter in a small cup, keep it warm, look after two days and four weeks.',
      why: spaced`
        At the end of a batch it costs nothing. Note how much of what, on the cup. Half of it in the light
        and half in the dark tells of fading. /calibrate learns your jars from such bars.
      `,
    },
    'store-colours': {
      answer: 'Closed, dry, dark and labelled: minerals and micas keep for many years, plants about one.',
      why: spaced`
        Clumps from damp: crush and sieve them, they are still good. Off smell or mould in a plant powder:
        away with it. Keep the label with its CI numbers.
      `,
    },
    'no-lumps': {
      answer:
        'Rub 1 tsp powder into 1 Tbsp light oil until nothing is dry, let it soak 10 minutes, stir and sieve.',
      why: spaced`
        A small frother or the back of a spoon does it; glycerin works too, water for clays and for
        titanium dioxide sold for water. Lumps in the batter already: a second or two of the blender in
        that portion, or press it through a sieve.
      `,
    },
    'mica-floats': {
      answer: 'Usual: stir until all of it is wet and shines, and stir again just before it goes in.',
      why: spaced`
        It settles and floats since it is flakes, not a solution. A drop more oil, a small frother, ten
        minutes. Streaks that stay in the batter: stir that portion longer by hand.
      `,
    },
    'powder-thickens': {
      answer: 'A little: clay drinks water, titanium dioxide less. Wet it first and keep to the dose.',
      why: 'Clay in about three times its volume of water, taken off the lye water. Heavy doses stiffen a swirl and make dry, crumbly bars.',
    },
    'egg-smell': {
      answer: 'A whiff of sulphur from ultramarine is usual in warm batter and goes with the cure.',
      why: spaced`
        It gets strong where acid meets it: no vinegar, citric acid or sour juice in that batch. If it is
        strong: window open, out of the room until it is gone.
      `,
    },
    'children-colours': {
      answer:
        'Cosmetic-grade iron oxides, ultramarines, titanium dioxide, clays and plain micas, at a low dose.',
      why: spaced`
        Soap is rinsed off; lips and eyes have lists of their own: /colourant check item:“…” with your
        region says where a colour stands. Small children need none. What you sell or give to many needs a
        safety assessment under your local law.
      `,
    },
    'buy-where': {
      answer: 'I know no shops. Buy what says cosmetic grade and names its ingredients or CI numbers.',
      why: spaced`
        No pigments for resin, nails, candles, crafts or building: heavy metals and dyes are not counted
        there. /palette buy says which colours bring most; the list on a label goes into /colourant check.
      `,
    },
    ...techniqueBeside,
    ...techniqueBench,
  },
  named: { ...techniqueNamed, ...techniqueOutright, ...techniqueAsked },
  given: colourGiven,
  matters: techniqueMatters,
};
