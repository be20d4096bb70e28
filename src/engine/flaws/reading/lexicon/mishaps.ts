import { spaced } from '../../../over-lines.ts';

/** Everyday words for lye that was weighed or dissolved wrong, and for metal that it met. Rules as in `looks.ts`. */
export const MISHAPS = {
  lyeerr: spaced`
    misweighed, mis weighed, mismeasured, miscalculated, weighed wrong, measured wrong,
    wrong amount of lye, forgot an oil, forgot the oil, forgot one of the oils, forgot one oil,
    forgot to add the oil, forgot to add, forgot the coconut, forgot the castor, forgot the olive,
    forgot the palm, forgot the shea, left out an oil, left out the oil, left out one, swapped an oil,
    swapped the oil, swapped oils, swapped, substituted, didnt rerun, did not rerun, didnt run it through,
    without a lye calculator, no lye calculator, eyeballed, guessed the lye, too much lye, extra lye,
    double lye, double the lye, twice the lye, measured by cups, by volume, scale died, scale battery,
    scale was off, scale is off, scale broke, scale was wrong, scale acting up, scale glitch, lost count,
    koh instead, used koh, used naoh, wrong lye, typo in the calculator, me equivoque, pese mal,
    olvide un aceite, olvide el aceite, demasiada sosa, mucha sosa, exceso de sosa, balanza, bascula,
    more lye than, lye twice, forgot to tare, didnt tare, calculated wrong, calculator wrong,
    old recipe in cups, kitchen scales, battery was low, misread, mis read, wrong column, skipped an oil,
    missed an oil, missed out an oil, missed one oil
  `,
  undissolved: spaced`
    lye not dissolved, lye wasnt dissolved, lye didnt dissolve, undissolved lye, not fully dissolved,
    not dissolved, didnt dissolve, wasnt dissolved, hadnt dissolved, lye crystals, lye beads, beads of lye,
    lye lumps, lye flakes, bits of lye, didnt strain the lye, didnt strain, cloudy lye, lye still cloudy,
    lye at the bottom, lye on the bottom, lye stuck, no se disolvio, sosa sin disolver,
    sin disolver la sosa, grains of lye, lye granules, settled at the bottom, clump of lye, crust of lye,
    lye had settled, lye crust, unstrained
  `,
  metal: spaced`
    aluminium, aluminum, copper, tin, zinc, cast iron, iron pot, iron pan, brass, galvanised, galvanized,
    steel, metal, smells metallic, metallic smell, metallic taste, cooling rack, wire rack, metal rack,
    baking rack, cake rack, rejilla, rejilla de metal, skillet, sheet pan, baking sheet, sieve, colander,
    ladle metal, tin can, cookie tin, biscuit tin, bucket metal, grater, pewter, silver dish, copper wire,
    nickel, chrome, metal spoon, rust, rusty, rusted, oxidado metal, foil, tin foil, tinfoil,
    aluminium foil, aluminio, cobre, hierro, hojalata, metalico, papel de aluminio, lata, zinc, bronze pot,
    non stick, nonstick, cake tin, loaf tin, baking tin, loaf pan, baking tray, cookie cutter,
    ring cake tin, baking pan, cake pan, muffin tin, tart tin, biscuit tin, saucepan, pan, cacerola,
    molde de metal, enamel, rusty pot, metal mould, tin mould, aluminium mould, metal bowl, metal pot,
    metal pan, metal tray, metal stamp, metal scraper, tin pan, bread pan, bread tin, brownie pan, pie tin,
    steel wool, old pan, old pot, camping pot, hierro fundido, sarten, cacerola de aluminio,
    cuchara de aluminio, cuchara de metal, galvanizado, alloy, cheap alloy, plated, chromed,
    lost all the shine, rusted whisk, whisk rusted, not stainless, isnt stainless, wasnt stainless,
    no era inoxidable, no es inoxidable, mild steel, cheap whisk, metal whisk, old whisk, laton,
    bronce molde, estaño
  `,
  vessel:
    'pan, pot, mould, bowl, tray, spoon, whisk, utensil, blender head, dish, tin, container, olla, cazo, molde, recipiente, cuenco, bandeja, ladle',
  touch: spaced`
    touch, touched, touching, against, contact, contacted, in contact, next to the, sides of the,
    where it sat, where it met, where it was sitting, against the, toco, tocaba, contacto, contra, pegado al
  `,
  fizz: spaced`
    fizz, fizzed, fizzing, hiss, hissed, hydrogen, black foam, bubbling and, burbujeo, siseo, smoke,
    corroded, corrosion, pitted pan, ate the, ate through, ate a hole, dissolved the pan, etched,
    burbujeaba, burbujeo con, hizo burbujas, espumo, gas, gas came off, evolved gas, hydrogen evolved,
    pitting, pitted now, blackened pan, effervesced, effervescence, hirviendo solo
  `,
};
