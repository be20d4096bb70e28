import { spaced } from '../../../over-lines.ts';

/** How a colour came out. */
export const LOOKS_OF_COLOUR = {
  fade: spaced`
    fade, faded, fading, bleach, bleached, washed out, lost colour, lost its colour, lost the colour,
    lost their colour, lost all its colour, loses colour, lighter than before, lost its brightness, duller,
    dulled, went pale, gone pale, gone dull, paler than, destenido, desteñido, decolorado, descolorido,
    se aclaro, perdio color, perdio el color, se fue el color, apagado, blanqueado, lost its punch,
    less vibrant, lost vibrancy, lost its vibrancy, losing colour, losing its colour, lost pigment,
    sun bleached, less bright than, duller than before, greyed out, turned pale, went lighter,
    getting lighter, got lighter, paler each, poniendo blancos, poniendo palidos, poniendo blanco,
    se ponen blancos, se ponen palidos, perdiendo color, perdiendo el color, se esta yendo el color,
    se les fue el color, se le fue el color, se despinto, se despintaron, se destine, deslavando,
    deslavandose, comido por el sol, comio el color, se comio el color, losing its color,
    lost most of its colour, losing vibrancy, lighter every week, lighter every day, fainter,
    fainter every, ghosted, washed out over time, whitened, whitening, photobleached, photodegraded,
    lost chroma, lost saturation, discoloured by sun, desvaido, desvaida, desvanecido, desvaneciendo,
    perdio fuerza, perdio intensidad, se va yendo el color, bajo de color, aclarandose, aclaro
  `,
  samecolour: spaced`
    same colour as the uncoloured, same colour as the plain, practically the same colour,
    almost the same colour, nearly the same colour, practically uncoloured, same as the plain,
    same as the uncoloured, no different from the plain, looks uncoloured, looks plain, like plain soap,
    like uncoloured soap, like no colour, as if i added nothing, like i never added, like i didnt add
  `,
  pale: spaced`
    casi sin color, sin color, colourless, almost no colour, next to no colour, baby blue, baby pink,
    baby version, icy, milky pink, milky blue, pale, paler, washed out, faint, weak, pastel, barely there,
    barely see, barely visible, barely tinted, can barely, hardly see, hardly any colour, hardly visible,
    barely any colour, barely blue, barely pink, barely purple, barely green, wishy washy, dull, insipid,
    too light, very light, so light, lighter than, whisper, anemic, anaemic, ghost, ghostly, blah, muted,
    almost white, nearly white, just looks white, tint of, hint of, not strong, palido, debil, clarito,
    muy claro, tenue, apenas, casi blanco, flojo, soso, weaker than, weak colour, wimpy, pitiful,
    underwhelming, feeble, band aid, bandage colour, flesh, flesh coloured, flesh tone, skin tone,
    skin colour, skin coloured, color piel, color carne, blush, barely tell, barely even, hardly tell,
    hardly notice, barely notice, barely noticeable, hardly noticeable, not noticeable, can barely tell,
    casi ni se nota, casi no se nota, ni se nota, no se nota, apenas se nota, apenas se ve, casi no se ve,
    casi no se ve el color, no se ve el color, ni se ve, celestito, rosita, azulito, verdecito, amarillito,
    moradito, deslavado, deslavada, descolorida, lavado de color, sin fuerza, sin intensidad, watered down,
    watery colour, whitewashed, milky, chalky pastel, diluted, ghost of, shadow of, more like pastel,
    pinkish white, bluish white, off white with a hint, not vivid, didnt come through, not come through,
    doesnt come through, doesnt show, didnt show up, doesnt show up, wont show, meh, sad pink, sad blue,
    sad little, aguado de color, verdecito aguado, rojo aguado, no llega a, no llego a, no alcanza a,
    never reached, not quite red, rosa viejo, old pink, elephant grey, mousy grey, light grey instead,
    gris claro, paliducho, paliducha, chafa, pobre de color, poco intenso, poco intensa, poca intensidad,
    low chroma, low saturation, desaturated, unsaturated, lacks saturation, lacks intensity, lacks depth,
    lacking depth, underwhelming colour, nada que ver con el rojo, no pinta nada, no tiñe, no tine,
    no da color, bajito, bajito de color, cast rather than colour, insufficient colour,
    insufficient pigment, hint, tinge, need it darker, needs to be darker, want it darker,
    wanted it darker, could be darker, should be darker, not dark enough, too low for, weak shade,
    lighter than wanted, lighter than i wanted, lighter than expected, lighter than the, quiero mas oscuro,
    lo queria mas oscuro, mas claro de lo que
  `,
  bright: spaced`
    bright, vivid, vibrant, intense, saturated, bold, strong colour, rich colour, deep enough, dark enough,
    strong, deep, vibrante, intenso, fuerte, vivo, pop, pops
  `,
  dark: 'dark, darker, too dark, nearly black, almost black, like ink, oscuro, obscuro, casi negro, negruzco, darkish',
  light: 'light, lighter, claro, mas claro',
  stain:
    'stain, stained, staining, discolour, discoloured, discolouration, tarnish, smudge mark, blackened, scuff, tizne',
  transfer: spaced`
    comes off on, come off on, came off on, coming off on, rubs off on, rub off on, rubbed off on,
    gets on everything, gets everywhere, comes off when, comes off in, washes out on, ends up on my hands,
    transfers, transfer, comes off on my hands, leaves my hands, turns my hands, turned my hands, dyes my,
    dyed my, dyes the, dyed the, dyed her, colours my hands, stains my, stained my, stains the,
    stained the, stains her, stains everything, stains hands, stains washcloth, stains washcloths,
    mancha la, mancha las, mancha todo, tine las manos, tine la, pinta las manos, deja las manos,
    deja color, runs off in the shower
  `,
  bleed: spaced`
    bleed, bled, bleeding, migrate, migrated, migration, seeped into, leached, leach, ran into, run into,
    running into, runs into, soaked into, leaking into, leaked into, colour ran, colours ran, ran together,
    run together, halo of colour, corrio, corrieron, sangra, sangro, migro, se paso, se pasa, se extendio,
    se corre, se corren, invade, invadio, se mezclaron, se me mezclaron, paso al blanco, pasa al blanco,
    moved into, moved over, spilled into, osmosis, diffuse, diffused, diffusing, diffusion, difundio,
    difunde, se difunde, se difumino, migrando, se va comiendo, se esta comiendo, comiendo a la,
    comiendose, travelled, traveled, travelling, traveling, has travelled, wandered, wandering, creeping,
    creeps, crept, spreading into, spread into, spreads into, halo, halos, contaminating, contaminates,
    leaching, leaches, se pinto lo blanco, tino lo blanco, se tino, pinto el blanco, manchando lo blanco,
    manchando el blanco, pasandose a, se esta pasando, pasado a la, moved to the
  `,
  blur: spaced`
    blur, blurry, blurred, fuzzy line, fuzzy edge, blurry edge, soft edge, smudgy, lost definition,
    definition, crisp, sharp line, sharp, borroso, difuso, nitido, watercolour, merged, indistinct,
    fuzzy edges, edges fuzzy, edge fuzzy, furry edge, soft edges, blurrier, less crisp, lost its crispness
  `,
  lather:
    'lather, sud, foam, foams, bubbles when, espuma, jabonadura, wash water, bath water, shower water, rinse water, water runs, water turns, water goes',
  cloth: spaced`
    washcloth, wash cloth, flannel, towel, loofah, cloth, sink, tub, bathtub, bath tub, grout, basin,
    shower floor, tray, hand towel, facecloth, face cloth, toalla, lavabo, banera, esponja de bano,
    manopla, lufa, tina
  `,
  tint: 'tint, tinted, tinge, cast, undertone, hue, tone, shade, tono, matiz, tinte, tirando a, subtono',
  different: spaced`
    wrong colour, different colour, different shade, off colour, not the colour, another colour,
    completely different, otro color, color equivocado, distinto color, ugly colour, weird colour,
    odd colour, strange colour
  `,
  vanish: spaced`
    vanish, vanished, disappear, disappeared, all gone, was gone, is gone, gone completely,
    completely gone, no trace of, nothing left, lost completely, poof, desaparecio, desaparecieron,
    se esfumo, se perdio
  `,
} as const;
