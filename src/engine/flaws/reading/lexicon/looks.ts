import { spaced } from '../../../over-lines.ts';
import { LOOKS_OF_COLOUR } from './looks-of-colour.ts';

/**
 * Everyday words for what an eye sees, English and Spanish together, by the idea they share.
 * Words are compared by stem, so endings need no rows of their own; phrases are taken longest first.
 */
export const LOOKS = {
  spot: spaced`
    spot, dot, speck, speckle, freckle, fleck, blemish, polka dot, measles, chicken pox, blotch, splotch,
    patch, bit, spek, spec, specs, pimple, blip, particle, mota, motita, punto, puntito, peca, mancha,
    manchita, lunar, pinta, trocito, pedacito, starlike, stars, star, estrellitas, puntitas, lunares,
    lunarcito, lunarcitos, moteado, moteada, punteado, pecoso, pecosa, salpicado, salpicadas, pintitas,
    particles, particulate, agglomerate, agglomerates, aggregates, flecking, flecked, pinheads, pinpoints,
    sprinkles of colour
  `,
  filler:
    'a bit, a little bit, little bit more, bit too, bit more, a bit of a, quite a bit, bit disappointed, a bit like',
  clump: spaced`
    clump, lump, blob, glob, nugget, ball, chunk, clot, knot, unmixed, undissolved, undispersed,
    dispersed badly, raw pigment, grumo, grumoso, pegote, bola, bolita, terron, sin disolver, sin mezclar,
    agglomerate, agglomerates, agglomerated, aggregate, aggregates, flocculated, flocculate, flocs,
    grumitos, bolitas de polvo, pelotitas, pelotas, apelmazado, lumps of powder, dry pockets, dry cores,
    powder cores, unwetted, not wetted
  `,
  powder:
    'powder, powdery, dust, dusty, dusting, flour, floury, talc, talcum, baby powder, icing sugar, powdered sugar, polvo, polvillo, harina, talco, polvoriento',
  film: spaced`
    film, coating, coat, haze, hazy, bloom, veil, frost, frosty, frosted, crust, crusty, skin on top,
    residue, layer of white, layer of dust, snow, snowy, cast on top, capa, pelicula, velo, costra,
    escarcha, residuo, nieve, efflorescence, efflorescent, deposit, white deposit, crystalline film,
    crystals on top, like frost, carbonate, carbonate layer, bicarbonate, powder coat, whitish film,
    dusty layer, salts, salitre, polvito, polvillo, blanquecina, velito, escarchado, nevado,
    espolvoreado de blanco, capa blanca
  `,
  vein: spaced`
    wiggle, wiggles, ribbon, channel,  veiny, veining, river, rivulet, squiggle, squiggly, squiggles,
    wiggly, wavy line, wavy, marble, marbling, marbled, map, roads, lightning, worm, vena, venas, vetas,
    veta, rio, ondulado, marmol, marmoleado, serpenteando, serpenteantes, snaking, snakes, snake like,
    meandering, meanders, tributaries, dendritic, branching, caminos, carreteras, mapa, mapa de carreteras,
    riachuelos, arroyos, rios, lombrices, gusanitos, hilos transparentes, streams, wandering lines,
    mottling, mottled translucent
  `,
  translucent: spaced`
    translucent, translucency, semi transparent, semi translucent, see through, transparent, glassy,
    glass like, clear, jelly, gelatinous, gel like, glycerin looking, traslucido, translucido,
    transparente, vidrioso, gelatinoso, semi clear, clearish, seethru, see thru, vitreous, glassy looking,
    more transparent, translucidas, translucida, semitransparente, medio transparente, medio transparentes,
    transparentes, cristalino, cristalina, vidriosas, traslucida, traslucidas, gelatina, cristalizadas
  `,
  crackle: spaced`
    crackle, crackly, crackled, crackling, craze, crazed, crazing, crackle glaze, cracked glass,
    shattered glass, smashed glass, broken glass, old china, cracked china, old plate, old porcelain,
    old pottery, cracked porcelain, old painting, old teapot, old mug, old vase, dried mud, cracked mud,
    dry mud, mud flat, cracked earth, cracked desert, dry lake, dry riverbed, lake bed, river bed,
    riverbed, dried up river, cocodrilo, piel de cocodrilo, windscreen, windshield, parched, parched earth,
    crazy paving, craquele, broken tile, eggshell, egg shell, hairline cracks, tiny cracks, fine cracks,
    little cracks, snake skin, snakeskin, crocodile, alligator, lizard, reptile, spider web, spiderweb,
    cobweb, mosaic, web of lines, network of lines, web of cracks, net of lines, crosshatch, elephant skin,
    giraffe, dry skin, crocodile skin, craquelado, craqueado, craquelada, cuarteado, cuarteada,
    tierra seca, barro seco, telarana, piel de serpiente, porcelana vieja, craquelure, cuarteadas,
    cuarteados, cuartea, cuarteo, net of, mesh, reticulated, reticulate, mesh of lines, red de lineas,
    telaraña, malla, cracked glaze, glaze, plato viejo, loza vieja, loza, vidrio roto, cristal roto,
    vidrio estrellado, barro cuarteado, polygonal, polygons, cells pattern, tortoise shell, tortoiseshell
  `,
  crack: spaced`
    crack, cracked, split, agrieto, agrietaron, rajo, fissure, ravine, canyon, crevice, gash, earthquake,
    fault line, grand canyon, grieta, agrietado, raja, rajado, abrio, partido, fisura, crevasse, chasm,
    rift, raja de punta a punta, se abrio en, se abrio, abierto, abierta, rajada, rajadura,
    cuarteo la tapa, hendidura, fissured, fissuring, thermal crack, split open,
    se partio arriba, se me partio arriba, se partio por arriba, se me partio por arriba, se partio por encima,
    se partio a lo largo, se me partio a lo largo, se partio de punta a punta, se partieron arriba
  `,
  burst: spaced`
    exploded, explode, explosion, burst, burst open, bursting, blew open, popped open, tore open,
    ripped open, open up, opened up, estallo, revento, broke open, broken open, cracked open,
    splitting open, split open
  `,
  rose: spaced`
    volcano, volcanoed, volcanic, erupt, eruption, overflow, overflowed, rose up, rose, risen, rising,
    puffed up, puff, mushroomed, swelled, swollen, swell, bubbled over, boiled over, climbed out, grew out,
    dome, domed, bulge, like bread, muffin, popover, souffle, volcan, desbordo, se salio, se sale,
    salio del molde, crecio, inflo, hincho, subio, abombo, se abombo, abombado, inflado, se inflo,
    se levanto, levanto, monto, rebaso, rebalso, rebosó, reboso, spilled over, spilled on the table,
    crawled out, crawled up, climbing out, grew out of, creeping out of the mould, expanded, expansion,
    swole
  `,
  ring: spaced`
    ring, circle, oval, halo, bullseye, bulls eye, egg shape, donut, doughnut, circular, round shape,
    round patch, ellipse, tree trunk, eyeball, iris, like a target, dartboard, anillo, circulo, aro, ovalo,
    ovalado, redondo, yolk, yema, aureola, aureola ovalada, ovalada, diana, halo ovalado,
    mancha redonda en el centro, ojo, ojo de buey, two zone, concentric, concentric ring, bull eye,
    nucleo oscuro, elliptical, elipse, egg yolk
  `,
  centre: 'centre, center, middle, core, heart, centro, medio, corazon, nucleo',
  inside: 'inside, interior, inner, inwards, por dentro, adentro, dentro',
  edge: 'edge, border, outside, outer, rim, corner, perimeter, outsides, borde, orilla, exterior, esquina, por fuera, afuera',
  outsidein: spaced`
    outside in, from the outside in, from the outside, outside first, edges first, from the edges,
    creeping in, creeping inward, inward, working its way in, outer edge, outer part, outer layer,
    outer rim, de fuera hacia dentro, de afuera hacia adentro, desde fuera, desde el borde, por fuera
  `,
  top: 'top, surface, upper, exposed, lid, arriba, superficie, encima, por encima, parte superior, tapa, topside, tops',
  bottom: 'bottom, underneath, underside, base of the mould, fondo, abajo, debajo',
  pocket:
    'pocket, hole, cavity, void, pit, tunnel, cave, dimple, hollow, sac, bolsita, bolsillo, hueco, agujero, hoyo, cavidad, burbuja de liquido',
  liquid: spaced`
    liquid, runny, fluid, leak, leaked, leaking, ooze, oozy, weep, wept, seep, drip, dripped, dribble,
    trickle, juice, ink, inky, watery, syrup, syrupy, ran out, runs out, running out, squirt, liquido,
    gotea, gotear, chorrea, escurre, supura, tinta, suelta
  `,
  bead: spaced`
    bead, droplet, dew, dewy, sweat, sweaty, sweating, perspire, condensation, drop, drops, tear, gota,
    gotita, sudor, suda, sudando, rocio, perla, condensacion, sudada, cry, crying, tears, droplets,
    moisture beads, perspiring, perspiration, hygroscopic, deliquescent, deliquesce, deliquescence,
    higroscopico, perlado de agua, perlitas, perlitas de agua, beading up, beading, beads up, dripping wet,
    llora, lloran, llorando, lagrimas, lagrimitas, sudorosa, sudorosas, transpira, transpiran, moja,
    wet film
  `,
  pinhole: spaced`
    pinhole, pin hole, pin prick, pinprick, tiny hole, tiny round hole, little hole, small hole,
    tiny crater, needle hole, pock mark, pockmark, pocked, sponge, swiss cheese, gruyere, aero, aerated,
    moon surface, crater, bubble, bubbly, air bubble, air pocket, trapped air, air trapped, got air, foamy,
    froth, frothy, porous, pore, honeycomb, pitted, pumice, crumpet, burbuja, burbujita, poro, poroso,
    agujerito, hueco de aire, como esponja, gap, gaps, hollow spot, tiny voids, little voids, like foam,
    honeycombed, air holes, bubble holes, vacio, vacios, hueca, hueco seco, huequitos secos,
    agujeritos redondos, agujeros redondos, voids, void, entrained air, air entrainment, occluded air,
    aire ocluido, aire, macropores, spherical voids, empty holes, queso gruyere, como un queso,
    queso suizo, como queso suizo, swiss
  `,
  grain: spaced`
    granule, granules, semolina, sago, bitty, wet sand, polenta, oatmeal like, like oatmeal, egg drop,
    frogspawn, pebbly, gravelly, couscous like, hard bits floating, bits floating, tiny lumps, small lumps,
    little lumps, little balls, tiny balls, hard balls, lumpy porridge, rice, rice like, rice pudding,
    grain, grainy, cottage cheese, curdle, curdled, tapioca, cous cous, couscous, quinoa, caviar, risotto,
    scrambled egg, lentil, orzo, arroz, grano, granito, granulado, granuloso, requeson, cortada, cortado,
    tiny seeds, seeds in my batter, little seeds, bits like, lumps like, like tapioca, pellets,
    beads of fat, semolina like, granular, gritty batter, batter gritty, pebbles, arroz con leche, cuajada,
    tipo requeson, queso cottage, bolitas duras, granitos, granitos tipo, se granulo, granulo, grumosa,
    se cortaba en granos, curds, curdy, oatmeal, riced, sandy batter, clumpy batter, avena, granuladita
  `,
  wax: spaced`
    wax, waxy, candle, candle wax, stearin, soft white bit, butter bit, bit of butter, lard, tallow bit,
    fat spot, solidified fat, hard fat, unmelted, fatty bit, cera, ceroso, vela, manteca sin derretir,
    sin derretir
  `,
  fuzz: spaced`
    fuzz, fuzzy, furry, fur, hair, hairy, fluff, fluffy, cottony, whiskers, growing, growth, pelusa, pelo,
    peludo, pelitos, algodonoso, penicillin, bread mould, blue cheese, like old bread, forgotten bread,
    spore, hongo, velloso, vellosa, algodon, pelusilla, micelio, mycelium, colony, colonies, colonias,
    hyphae, spores, filaments, filamentos, hairs, whiskery, fuzzies, furry spots, pelusita, pelusas,
    peludita
  `,
  crystal: spaced`
    crystal, crystalline, crystallised, crystallized, crunch, crunchy, gritty, grit, sandy bit, sugar like,
    salt like, hard bit, hard white bit, hard lump, cristal, cristalito, crujiente, arenoso
  `,
  line: 'line, stripe, striped, groove, ridge, score, scored, scoring, stria, parallel, track, linea, raya, surco, estria, rayita',
  drag: spaced`
    drag, dragged, drag mark, dragging, scratch, scrape, comet, comet tail, tail, smear, smeared, smudge,
    pulled, scratched, scratchy, gouge, tyre track, arrastre, arrastra, arrastro, aranazo, rayado,
    cola de cometa, embarrado, tracks, left tracks, trail marks, gouged, scuff marks, skid, skid marks,
    streak marks, dug in, arrastrado, arrastrada, arrastradas, jalado, jalada, jalones, corrido al cortar,
    rayones, rasguños, rasguno, rasgunos, aranado, aranazos, pulls the, pulls, pulling, scuffed,
    comet tails, colitas, tailing, streaked by the, tramlines, tram lines, striations
  `,
  streak:
    'streak, streaky, uneven, patchy, mottled, unevenly, blotchy, desigual, disparejo, rayado de color, streaked',
  glitter: spaced`
    glitter, glittery, shimmer, shimmery, sparkle, sparkly, shiny, pearly, pearlescent, metallic, gold,
    golden, bronze swirl, copper swirl, brillo, brillante, brillito, nacarado, purpurina, dorado,
    metalizado, iridescent, lagunas doradas, brillos, tornasol, perlado, dorada, plateada, cobre, copper,
    cobrizo, cobriza
  `,
  pool: spaced`
    pool, puddle, trail, slick, rivulets, lake, snail trail, charco, charquito, rastro, reguero,
    separated oil, halo of oil, oil ring, ring of oil, oily ring, oily halo, lagoons, lagoon, lagunas,
    laguna, charquitos, encharcado, encharcada, gotas grasas, oil beads, oily drops, unabsorbed,
    not absorbed, never absorbed, never went in, never soaked in, didnt soak in, no se absorbio,
    no se absorbe, no lo absorbio, no lo chupo, se quedo encima
  `,
  layer: spaced`
    layer, floating, floats, float, sitting in, sat in a, standing in, sits in, sitting on top, standing,
    capa de, flota, flotando, inch of, cm of, mm of, poured off
  `,
  ...LOOKS_OF_COLOUR,
  separate: spaced`
    separate, separated, separating, separation, batter split, batter kept splitting, mixture split,
    mix split, mixture kept splitting, kept separating, came out in two, two layers, de emulsified,
    emulsion broke, layered out, unmixed oil, se separo, separado, separacion, dos capas,
    una capa de aceite, in two layers, split into two, split into layers, phase separation,
    phases separated, demixed, coalesced, de emulsify, emulsion failed, emulsion collapse,
    unstable emulsion, broken emulsion, broke down into, se corto, corto la mezcla, se me corto, dos fases,
    fases, se aparto el aceite, solto aceite, suelta aceite, aceite por un lado, se partio la mezcla,
    never came together, came apart in the pot, wept oil, oil came out
  `,
  everywhere: spaced`
    all over, throughout, all through, everywhere, whole bar, whole loaf, entire, entire bar,
    all the way through, every bar, por todo, todo el jabon, en todas partes, completamente, whole thing,
    the lot
  `,
  only: 'only, just, solely, exclusively, confined, restricted, limited, solo, solamente, unicamente, nada mas',
  same: spaced`
    same place, same spot, same side, every slice, every bar, every cut, each slice, same direction,
    all in one direction, in the same direction, each face, misma direccion, cada corte, cada barra,
    misma zona
  `,
  face: 'face, cut face, cut side, cut surface, slice, cara, corte, faces',
} as const;
