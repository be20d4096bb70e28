import { spaced } from '../../../over-lines.ts';

/** How batter thickens while it is poured. */
export const THICKENING = {
  trace: 'trace, traced, traza, emulsion, emulsified, emulsify, emulsionado',
  batter: 'batter, mix, mixture, raw soap, mezcla, masa, pasta, in the pot, in the bowl, in the jug',
  pour: 'pour, poured, pouring, swirl, swirled, swirling, work with, get it out, get it into, verter, vertir, echar, remolino',
  thickfast: spaced`
    thick at once, thick all at once, thick suddenly, thick right away, thick immediately, espesa de golpe,
    espeso de golpe, espesa de repente, espeso de repente, seized, seize, seizing, seizes, siezed, seizure,
    soap on a stick, soap on stick, set like, set solid, instant solid, accelerate, accelerated,
    accelerates, acceleration, thickened instantly, went solid, solid in, solid within, solid before,
    stiff, stiffened, wall filler, glopped, plopped, plop, glop, had to scoop, had to spoon, spoon it in,
    spooned it in, shovel it, shovelled, shoveled, too thick too, solid before, hard before, stood up,
    stone before, to stone, to rock, five seconds before, pack it, packed it, shove, shoved, smash it,
    smashed it, mush it into, thick trace immediately, instant trace, turned into a rock, turned to rock,
    turned to cement, turned to concrete, solido en, duro en segundos, se endurecio en, se acelero,
    acelero, se hizo una piedra, se solidifico, set up in, set up on me, set on me, hard in the pot,
    hard in the bowl, hard in the jug, hardened in the pot, hardened in the bowl, stuck in the pot,
    stuck to the blender, stuck in the bowl, got away from me, no working time, trace too fast,
    traced too fast, froze up, turned solid, turned hard, went hard, went rock hard, hardened before,
    solidified, thick trace, too thick to, couldnt get it out, solid mass, solid lump, set before,
    hard before i, locked up, instant pudding, stiffened up, clumped up solid, me agarro,
    me agarro de golpe, agarro de golpe, agarro de una, batidora parada, cuchara parada, quedo parada,
    parada en el medio, no me dio tiempo, ni me dio tiempo, ni tiempo, sin tiempo, hormigon,
    se cuajo de golpe, cuajo de golpe, traza inmediata, traza instantanea, fraguo, se fraguo,
    se me endurecio en, se puso como piedra, se hizo pasta en, se puso durisima, pushed it in the mould,
    slammed it, had to press, pressed it into, punch it in, packed into, into the mould with a spoon,
    chiseled, chisel, lost working time, viscosity, viscosity shot up, viscosity jumped,
    viscosity increase, gelled in the jug, locked solid, blocked, went from fluid to, spatula stood,
    spoon stood, stick blender stood, stuck the blender, blender stuck, trace in seconds, overtraced,
    over traced, thick trace in
  `,
  thicklike: spaced`
    mashed potato, mashed potatoes, mash, pudding, frosting, dough, cookie dough, clay, cement, concrete,
    stone, rock, brick, custard, porridge, peanut butter, toffee, fudge, plaster, pure de papa,
    pure de patata, cemento, concreto, piedra, masa dura, shovel, rocky, putty, soup to, thick as
  `,
  thick:
    'thick, thicken, thickened, thickening, thickens, thicker, espeso, espeso de, espesa, espesar, espeso rapido',
  fast: spaced`
    fast, quick, quickly, so fast, seconds, instantly, instant, immediately, suddenly, sudden,
    before i could, before i, too fast, too quickly, no time, straight away, in no time, in an instant,
    rapido, rapidamente, segundos, de golpe, de repente, enseguida, al instante, superfast,
    within a minute, in a minute, within minutes, in under a minute, blink, in the blink, the moment,
    the second i, as soon as i
  `,
  notrace: spaced`
    false trace, never traced, never reached trace, wouldnt trace, wont trace, didnt trace,
    didnt reach trace, not traced, hadnt traced, poured too early, poured too soon, poured too thin,
    thin trace, very thin trace, barely emulsion, barely emulsified, barely traced, light trace,
    wouldnt thicken, wont thicken, didnt thicken, didnt blend long enough, didnt blend enough,
    thought it was trace, traza falsa, falsa traza, no llego a traza, no espeso, no espesa, no traza,
    never came together, didnt come together, no llego a trazar, no bati bastante, no bati suficiente,
    me quede corto batiendo, stopped blending, stopped too early, stopped mixing too soon,
    insufficient mixing, insufficient shear, under blended, underblended, cold fats set, butters got cold,
    fats were setting, looked thick because, poca traza, sin traza
  `,
} as const;
