import { spaced } from '../../../over-lines.ts';
import { SWIRLS } from './swirls.ts';

/**
 * Words for what goes wrong with swirls, layers, tops, moulds and the shape of a bar. Rules as in `looks.ts`; ideas
 * named `s_` leave the words inside their phrases free for other ideas.
 */
export const SWIRL_AND_SHAPE = {
  ...SWIRLS,
  s_bent: spaced`
    bent, bend, bending, curl, curls, curled, curling, curve, curves, curved, curving, curvy, bow, bows,
    bowed, bowing, warp, warps, warped, warping, twist, twisted, twisting, concave, convex, arch, arched,
    arching, banana, crooked, wonky, wonk, lopsided, lop sided, leaning over, rocking, rocks on the table,
    rock on the table, wobble, wobbles, wobbly, not flat anymore, no longer flat, arent flat, isnt flat,
    wont sit flat, wont lie flat, dont lie flat, wont lay flat, dont sit flat, misshapen, skewed, buckled,
    buckle, saddle, taco, potato chip shape, like a chip, lost their shape, turned up at the ends,
    ends lift, ends turn up, ends lifted, corners lift, corners lifted, corners turn up, caved in,
    doblaron, doblado, doblada, dobladas, doblados, se doblo, se doblan, torcido, torcida, torcidos,
    torcidas, torcieron, torcio, tuercen, chueco, chueca, chuecos, chuecas, curvo, curva, curvos, curvas,
    curvaron, curvado, curvadas, arquearon, arqueado, arqueada, arqueadas, pandeado, pandeo, pandearon,
    pandeados, combado, combada, combaron, deformadas al secar, alabeado, alabearon, como teja,
    como banana, platano forma, como barco, no asientan planas, arent straight, not straight,
    no longer straight, arent straight anymore, isnt straight, no quedaron rectas, ya no estan rectas
  `,
  s_bars: 'bar, bars, soap, soaps, ends, barras, jabones, pastillas, pastilla, barra, corners, edges',
  s_unevendry: spaced`
    fan on one side, fan on them, fan, ventilador, dried on one side, drying on one side,
    flat on the counter, flat on the table, flat on the rack, laid flat, lying flat, drying flat,
    next to the heater, by the heater, radiator, next to a vent, near the vent, dehumidifier,
    deshumidificador, cut thin, cut them thin, thin bars, cut too thin, never turned them, didnt turn them,
    didnt flip them, forgot to flip, forgot to turn, one side dried, only one side, air on one side,
    sin voltear, no las voltee, no los voltee, acostadas, al sol, cortadas delgadas, muy delgadas,
    stacked too soon
  `,
  s_shed: spaced`
    comes off, come off, came off, coming off, comes right off, comes away, come away, falls off, fall off,
    fell off, flakes off, flaking off, flies off, flew off, rubs off, rub off, rubbed off, rubs away,
    wipes off, wiped off, smudges off, doesnt stick, didnt stick, wont stick, not stick, dont stick,
    wont stay, doesnt stay, not stay, never stuck, on my fingers, on your fingers, on her fingers,
    fingertips, on my hands, all over my hands, gets on everything, gets everywhere, goes everywhere,
    all over the place, all over the box, on the box, on the wrapper, on the tissue, on the packaging,
    on my clothes, on my shirt, fingerprints, sheds, shed, shedding, leaves glitter, leaves gold,
    leaves shimmer, transfers, transfer, se sale, se me sale, se cae, se quita, se desprende, se despinta,
    queda en los dedos, me queda en los dedos, se me queda, en los dedos, en las manos, mancha los dedos,
    suelta brillo, suelta polvo, suelta el polvo, pinta los dedos, loose, never bonded, suelto, suelta,
    comes on the, comes on, comes on my, se queda en, se queda en los dedos, en la ropa,
    se pega a los dedos, se pega en los dedos, on the hands of, in the wrapping, poor adhesion,
    no adhesion, not fixed, isnt fixed, doesnt adhere, rubs onto, dusts off, powders off, lifts with tape,
    ends up on, finishes on, on the bag, in the bag, on everything, everywhere when, smears everywhere
  `,
  s_drydust: spaced`
    dusted, dust the top, dusting, dusted the top, brushed it on, brushed on, brush on, brush, paintbrush,
    brushed, sprinkled, sprinkled it, sprinkle on, sprinkled on top, sifted on, sieve over, strainer,
    tea strainer, blew, blown on, powdered on, painted it on dry, dry on top, on dry, dry mica, espolvoree,
    espolvoreado, espolvoreada, con brocha, con pincel, en seco arriba, brocha, pincel, despues de cortar,
    after it set, after it had set, after it was hard, on the finished, stamped, stamp, sello
  `,
  s_shine: spaced`
    mica, gold, golden, silver, copper, bronze, glitter, glittery, sparkle, sparkles, sparkly, shimmer,
    shimmery, shiny powder, shiny dust, pearly, luster, lustre, metallic powder, dorado, dorada, lo dorado,
    plateado, brillo, brillito, brillitos, brillantina, purpurina, diamantina, polvo dorado, cobre,
    perlado, escarcha dorada
  `,
  s_deeper: spaced`
    deeper, way deeper, much deeper, darker, way darker, much darker, deepened, richer, more intense,
    intensified, more vivid, more saturated, bolder, more vibrant, brighter, way brighter, stronger colour,
    more dark, darkened, shifted, shift, colour shift, different red, diff red, diff colour,
    different colour, different shade, another shade, other shade, jewel toned, jewel, mas oscuro,
    mas oscura, mas oscuros, mas intenso, mas intensa, mas fuerte, mas fuertes, mas vivo, mas viva,
    mas subido, intensifico, se intensifico, se oscurecio, otro tono, cambio de tono, subio de tono,
    deep rose, burnt, saturated, bold, dark, darker than, went dark, went bold, more see through, vivid,
    botella, blood red, salio burdeos, burdeos, burgundy, maroon, wine red, crimson, tostado, mostaza,
    mustard, navy, cooked, granate, plum, chocolate pink, more transparent, translucent, higher chroma,
    hue shift, chroma, tono mas, dos tonos, two shades, two tones, three shades, morado fuerte,
    rojo fuerte, azul fuerte, verde fuerte, rosa fuerte, fuerte, dark purple, dark red, dark blue,
    dark green, dark pink, darkened uniformly, deep purple, deep red, deep blue, oscuro parejo
  `,
  s_heated: spaced`
    gel, gelled, gelling, gel phase, full gel, cpop, oven, warm oven, heat pad, heating pad, heat mat,
    heated up, got hot, got real hot, got warm, got really warm, too warm, super hot, very hot, heat,
    wrapped, towels, blanket, blankets, insulated, insulation, cooler, cooker, horno, gelifico, gelificado,
    fase gel, calor, cobija, cobijas, toallas, manta, mantas, caliente, calento, tape, tapado, abrigado,
    envolvi, envuelto, bundled up, in the sun, hot in the mould
  `,
  s_evenly: spaced`
    edges too, edge to edge, to the edge, to the edges, right to the edge, all the way to the edge,
    all the way to the edges, all the way through, all through, whole bar, whole loaf, the whole thing,
    right through, evenly, no ring, even colour, hasta la orilla, hasta las orillas, hasta el borde,
    todo parejo, parejo, por completo, todo el jabon, toda la barra, sides too, corners too
  `,
  s_twins: spaced`
    same batter, same batch, same pot, same recipe, same amount of, two moulds, 2 moulds, both moulds,
    other mould, the one in the fridge, the one i put in, one i put in, one in the oven,
    one in the freezer, half in the, other half, misma masa, misma mezcla, mismo lote, misma receta,
    dos moldes, el otro molde, la otra mitad, uno al horno, uno en la nevera, uno en el refri,
    mientras el otro, usual dose, same dose, same as always, last batch, last time
  `,
  s_notsoap: spaced`
    candle dye, candle colour, candle colouring, candle colourant, candle wax dye, dye block, dye chip,
    dye chips, dye for candles, colour for candles, wax dye, tinte de velas, tinte para velas,
    colorante de velas, colorante para velas, anilina para velas, colour block for candles, acrylic,
    acrylic paint, acrylics, craft paint, poster paint, poster colour, tempera, tempera paint, gouache,
    watercolour, watercolours, watercolour paint, water colours, house paint, wall paint, spray paint,
    paint pigment, oil paint, artist paint, oil paints, pintura, pinturas, pintura acrilica, acuarela,
    acuarelas, tempera escolar, temperas, gis, chalk stick, sidewalk chalk, school chalk, chalk pastel,
    soft pastel, oil pastel, oil pastels, oil crayon, melted crayons, melted a crayon, melted crayon,
    melted some crayons, crayons in, crayons to, wax crayon, wax crayons, kids crayons, crayon shavings,
    shaved crayon, shaved a crayon, ceras derretidas, cera de colorear derretida, crayones,
    crayon derretido, marker, markers, highlighter, highlighter ink, pen ink, printer ink,
    fountain pen ink, marcador, plumon, plumones, drink mix, drink powder, drink powder packet,
    gelatin powder, gelatin dessert powder, gelatina en polvo, easter egg, easter egg dye, egg dye,
    tinte de huevo, food colouring, food colour, food dye, food dyes, food colourant, food colours,
    gel food colour, gel food, icing colour, icing gel, frosting colour, cake colouring, cake dye,
    baking colour, baking dye, baking aisle, grocery store colour, grocery store drops, supermarket colour,
    supermarket colouring, kitchen colour, colorante de cocina, colorante de comida, colorante para comida,
    colorante de pasteleria, colorante de reposteria, colorante para pastel, colorante para pasteles,
    colorante alimentario, colorante alimenticio, colorante vegetal, colorante comestible,
    food safe colour, cupcake colouring, candy colour, candy melts, sprinkles, fabric dye, clothes dye,
    tie dye, dye for clothes, tinte para ropa, tinte de ropa, anilina, anilinas, wool dye, wood stain,
    hair dye, tinte de cabello, tinte de pelo, hair chalk, eyeshadow, eye shadow, lipstick, blush,
    nail polish, nail polish pigment, esmalte, sombra de ojos, labial, resin pigment, resin powder,
    resin dye, resin mica, resin colour, slime colour, slime pigment, cement pigment, concrete pigment,
    concrete dye, craft store powder, craft glitter, bath bomb colour, bath bomb colourant, wax melts dye,
    wax melt dye, candle making kit
  `,
  s_crayon: 'crayon, crayons, lipstick, paint, chalk, gises, ink, tinta',
  s_putin: spaced`
    used, melted, melt, put, added, add, dropped, shaved, grated, colour, coloured, colouring, colored,
    use, puse, use, eche, derreti, derretida, ralle, tried, stirred in, chopped, broke up, crushed
  `,
  s_unmould: spaced`
    unmould, unmoulded, unmoulding, demould, demoulded, demoulding, de moulded, took it out, took them out,
    took em out, taken out, take it out, takin it out, pulled it out, pulled them out, pull it out,
    popped it out, popped them out, popped em out, pop it out, got it out, got them out, getting it out,
    out of the mould, out the mould, outta the mould, peeled the mould, peeled the liner,
    pulling the liner, pulled the liner, took the liner off, took the sides off, took the mould off,
    took off the mould, removed it from, removed from the mould, slid it out, pushed it out,
    pushed them out, desmolde, desmoldar, desmoldo, desmoldarlo, desmoldado, desmoldada, desmoldarlos,
    lo saque, los saque, la saque, las saque, sacarlo, sacarlos, sacar del molde, saque del molde,
    quitar el molde, quite el molde, wouldnt release, wont release, didnt release, release, slip it out
  `,
  s_inmould: spaced`
    still in the mould, stuck in the mould, wont come out of the mould, wont leave the mould, cant unmould, cannot unmould,
    cant get it out of the mould, cant take it out of the mould, no lo puedo sacar del molde, no lo puedo sacar,
    no los puedo sacar, no se puede sacar del molde, no sale del molde, sigue en el molde, todavia en el molde,
    aun en el molde, no puedo desmoldar, no lo puedo desmoldar, no desmolda
  `,
  s_early: spaced`
    too soon, too early, so soon, early, soon, couldnt wait, didnt wait, cant wait, didnt wait long enough,
    no patience, impatient, got impatient, was impatient, jumped the gun, rushed it, in a rush, got greedy,
    same day, same night, that night, that same night, that evening, same evening, tonight, last night,
    few hours, couple hours, couple of hours, after hours, hours, hour, hrs, hr, 24h, 12h, next morning,
    this morning, the next day, day after, day later, muy pronto, pronto, antes de tiempo,
    a las pocas horas, pocas horas, horas, no espere, no me espere, no aguante, desesperado, desesperada,
    me desespere, ese mismo dia, esa misma noche, la misma noche, al otro dia, al dia siguiente, antes,
    not long enough, barely a day, hadnt set, wasnt set, not set, wasnt firm, not firm yet, wasnt ready,
    not ready, before it was ready, before it was firm, before it set, impaciente, apurada
  `,
  s_tore: spaced`
    tore, torn, tear off, ripped, rip, rips, stuck, stick, sticks, stuck to the mould, stuck in the mould,
    stayed in the mould, stayed behind, stayed in, left in the mould, stayed stuck, stuck to the sides,
    stuck to the liner, left behind, squashed, squished, squish, deformed, misshapen, dented, dents, dent,
    finger dents, finger marks, fingerprint, fingerprints, mashed, mangled, lost the corners, lost corners,
    lost all the corners, chunk missing, chunks missing, broke off, pulled off, came off with,
    left craters, slumped, slump, sagged, collapsed, corners, se pego, se pegaron, se rompio, se rompieron,
    se quedo pegado, se quedo, se deformo, se deformaron, se desbarato, se aplasto, se desmorono,
    marcados mis dedos, marque los dedos, se hundio el dedo, se me deshizo, se embarro, se vino la orilla,
    se arranco, se desgarro, detail, soft like cheese, like soft cheese, still soft, still mushy
  `,
  s_liner: spaced`
    liner, liners, lined, lining, freezer paper, parchment, parchment paper, baking paper, bake paper,
    wax paper, waxed paper, greaseproof, butcher paper, paper i used, papel, papel encerado,
    papel de horno, papel mantequilla, papel pergamino, trash bag, garbage bag, bin bag, bin liner,
    plastic bag, plastic liner, plastic sheet, cling film, plastic wrap, mylar, acetate, silicone liner,
    silicone, silicon, silicona, forre, forro, forrado, forrada, bolsa de basura, bolsa de plastico, bolsa,
    plastico, bubble wrap, molde de silicon, molde de silicona, touched the silicone
  `,
  s_mouldwall:
    'mould walls, mould wall, mould sides, the mould, against the mould, my mould, del molde, el molde, touched the mould, wall of the mould',
  s_sides: spaced`
    sides, side, bottom, underside, outsides, outside, walls, down the sides, on the sides,
    along the sides, lados, costados, costado, lado, laterales, por fuera, fondo, base, abajo, orillas,
    corners, esquinas, edges, bottoms, outer surface
  `,
  s_crease: spaced`
    crease, creases, creased, dimple, dimples, dimpled, dimply, wrinkle, wrinkles, wrinkled, wrinkly, fold,
    folds, folded lines, fold marks, crinkle, crinkles, crinkled, crinkly, pucker, puckered, puckers,
    bumpy, bumps, bump, texture, textured, orange peel, pockmark, pockmarks, pockmarked, pitted, pits,
    pit marks, golf ball, cellulite, ripple, ripples, rippled, ridges, ridge, ridged, quilted,
    uneven sides, not smooth, isnt smooth, arent smooth, arent straight, lines from, marks from, indent,
    indents, indentation, indentations, imprint, imprinted, imprints, dent, dents, like skin in the bath,
    pruney, silicone rash, pebbled, pebbly, pliegue, pliegues, arruga, arrugas, arrugado, arrugada,
    arrugados, arrugadas, hoyito, hoyitos, hoyuelo, hoyuelos, marca, marcas, doblez, dobleces, textura,
    marcado, marcada, rugoso, rugosa, piel de naranja, bultitos, chipotes, ondas, ondulado, fruncido
  `,
  s_brain: spaced`
    brain, brains, brainy, walnut, walnut shell, prune, pruney, prunes, raisin, raisins, alligator,
    crocodile, croc, lizard, elephant, reptile, dinosaur, dragon skin, snakeskin, toad, intestines, guts,
    coral, old person skin, old skin, old mans skin, old lady skin, grandmas hands, skin on milk,
    skin of cold milk, skin on pudding, skin on custard, custard skin, pudding skin, milk skin, pasa,
    uva pasa, cerebro, sesos, cocodrilo, lagarto, lagartija, tortuga, iguana, piel de viejo,
    piel de viejita, piel de anciano, viejito, nata, elefante, crumpled, crumpled paper, rumpled,
    scrunched, scrunchy, scrunched up, scrunchie, puckered, wrinkled, wrinkles, wrinkle, wrinkly, crinkly,
    crinkled, crinkle, ridges, ridgy, ridged, wavy, waves, wavy lumps, lumpy wavy, squiggly bumps, rippled,
    ripples, ripply, folds, corrugated, bark, tree bark, shar pei, squiggles, worms, arrugado, arrugada,
    arrugas, arrugo, se arrugo, fruncido, fruncida, frunció, corrugado, ondulada, ondas, pliegues, buckled,
    buckling, convoluted, bumpy, lumpy, wrinkley, salieron arrugas
  `,
  s_coldtwin: spaced`
    the fridge one, fridge one, freezer one, in the fridge, in the freezer, from the fridge,
    from the freezer, cold one, cold mould, one on the counter, left on the counter, on the bench,
    uninsulated one, unwrapped one, ungelled one, ungelled, the one that didnt gel, that didnt gel,
    not gelled ones, without heat, without gel, no gel, sin calor, sin gel, sin tapar, de la nevera,
    del refri, del refrigerador, del congelador, de la heladera, en la nevera, en el refri,
    en el congelador, en la heladera, sin cobija, sin manta, la que no gelifico, que no gelifico,
    molde chiquito, moldes individuales, individual moulds, small mould, little moulds, cavity moulds,
    single cavity
  `,
  s_wrapping:
    'wrapped, wrap, wrapping it, envolvi, envolverlo, envuelto, envolver, tape con, tapado, cubri, covered with, insulated, bundled, blankets',
  s_colouroil: spaced`
    coloured oil, colour oil, oil the colour, oil with colour, oil i put the colour in, aceite de color,
    aceite con color, tinted oil, dyed oil, coloured water, agua de color, agua verde, agua roja,
    agua azul, agua rosa, colour juice, coloured goo, coloured syrup
  `,
  s_top: spaced`
    top, tops, surface, topside, on top, the top, arriba, encima, superficie, por encima, parte de arriba,
    cara de arriba, la cara superior, exposed side, upper surface, crust
  `,
} as const;
