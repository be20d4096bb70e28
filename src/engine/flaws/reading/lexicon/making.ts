import { spaced } from '../../../over-lines.ts';

/** Everyday words for what was put in and what was done. Rules as in `looks.ts`. */
export const MAKING = {
  colourant: spaced`
    pigment, colourant, colorant, oxide, ultramarine, mica, micas, dye, powder colour, colour powder,
    iron oxide, chromium, pigmento, colorante, oxido, ultramar, matcha, cocoa, clay, neon, arcilla, cacao,
    spirulina, turmeric, indigo, lake, pigments, tio2, charcoal
  `,
  carbon: 'charcoal, activated charcoal, carbon activado, carbon',
  oxide: spaced`
    oxide, iron oxide, ultramarine, ultramarines, chromium, chrome green, oxido, ultramar, red oxide,
    black oxide, yellow oxide, ultramarino, tio2 no, chromium oxide, oxidos, ochre, ocre, sienna, umber,
    iron pigment, hematite, magnetite, goethite
  `,
  mica: 'mica, micas, mica powder',
  fragilemica: spaced`
    iron blue, ferric ferrocyanide, ferrocyanide, prussian blue, carmine mica, carmine, prussian,
    azul de prusia, carmin, bath bomb mica, non soap stable, not soap safe, eyeshadow mica, eye shadow,
    craft mica, resin mica, nail polish pigment, cheap mica
  `,
  lake: 'lake, lakes, laca, fd and c lake, d and c lake, la bomb colour, bath bomb colour',
  dye: spaced`
    dye, dyes, food colouring, food colour, food dye, liquid colour, liquid dye, liquid colourant, fd&c,
    fd and c, d&c, d and c, candle dye, water soluble, soap dye, label colour, lab colour,
    melt and pour colour, melt and pour colours, easter egg, easter egg dye, drink powder, gel food colour,
    gel colours, colorante alimentario, colorante liquido, tinte liquido, colorante de cocina,
    colorante alimenticio, anilina, anilinas, anilina vegetal, cake colouring, icing colour, icing gel,
    baking dye, batik dye, fabric dye
  `,
  botanical: spaced`
    beetroot, beet, beets, hibiscus, rose petal, rose petals, lavender buds, lavender bud, cabbage,
    red cabbage, butterfly pea, pea flower, berry, blueberry, raspberry, strawberry, blackberry, spinach,
    alkanet, madder, turmeric, paprika, annatto, calendula, petals, plant powder, plant colour,
    natural colourant, natural colourants, hibisco, remolacha, jamaica, betabel, flor, petalos, curcuma,
    plant based, purple sweet potato, sweet potato, cornflower, dragon fruit, pitaya, saffron, elderberry,
    spirulina, chlorophyll, clorofila, espirulina, grape juice, flower powder, dried flower, beet root,
    purple carrot, black carrot, rose clay no, achiote, madder root, woad, indigo root, anthocyanin,
    anthocyanins, antocianinas, betalain, carrot powder, nettle, ortiga, chlorella, clorela, henna,
    espinaca, zanahoria, frutos rojos, mora, moras, arandano, arandanos, frambuesa, rosas,
    pigmento natural, natural dye, jugo de, te de, infusion de, infused petals, cochineal, cochinilla
  `,
  neon: 'neon, neons, fluorescent, fluoro, neon pigment, fluorescente, fluorescentes',
  titanium: spaced`
    titanium, titanium dioxide, td, tio2, ti02, zinc oxide, white pigment, white oxide, white colourant,
    whitener, dioxido de titanio, titanio, oxido de zinc, titan, titanium white
  `,
  glycerin: 'glycerin, glycerine, glycerol, glicerina, veg glycerin, vegetable glycerin',
  lye: 'lye, sodium hydroxide, naoh, caustic soda, sosa, sosa caustica, soda caustica, lejia, hidroxido de sodio, lye water, lye solution',
  oils: 'oil, oils, fat, fats, butter, butters, aceite, aceites, manteca, mantecas, grasa',
  oilthing: 'oil, oils, aceite, oily, grease, aceitoso, aceites',
  hardoils: spaced`
    cocoa butter, shea butter, palm, palm oil, stearic acid, stearic, beeswax, tallow, lard, coconut,
    coconut oil, palm kernel, babassu, mango butter, kokum, soy wax, hard oils, hard oil, hard butters,
    hard fats, solid oils, butters, manteca de cacao, manteca de karite, palma, coco, aceite de coco, sebo,
    cera de abeja, acido estearico, solid fats, butter heavy, saturated fats, saturated, cocoa, karite,
    monoi, palm flakes
  `,
  softprone: spaced`
    sunflower, grapeseed, hemp, hempseed, flax, flaxseed, linseed, canola, rapeseed, rosehip,
    evening primrose, soybean, walnut oil, safflower, girasol, canamo, pepita de uva, rosa mosqueta,
    linaza, canola oil, vegetable oil, corn oil, sweet almond, rice bran
  `,
  yellowoils: spaced`
    olive oil, olive, extra virgin, evoo, unrefined, unrefined shea, pomace, castile, red palm,
    sunflower oil yellow, aceite de oliva, oliva, castilla, virgen extra, sin refinar, hemp oil,
    avocado oil, neem, laurel, yellow batter, dark oils, oils are yellow, batter is yellow, yellow base,
    my base is, base is yellow, base was yellow, aceite de palma rojo, base amarilla, tallow yellow,
    wheat germ, carrot oil, virgen extra de la verde, verde fuerte, oliva verde, oliva virgen,
    aceite verdoso, aceite amarillo, aceite bien amarillo, palma roja, aguacate, aceite de aguacate,
    canamo, beta carotene, carotene, carotenoids, greenish oil, yellow oil, yellow tallow, sebo amarillo,
    unrefined olive, virgin olive, green olive oil, dark green oil
  `,
  old: spaced`
    old, expired, out of date, past its date, past date, best before, back of the cupboard,
    bottom of the cupboard, left over from, been sitting, viejo, vieja, caducado, caducada, vencido,
    pasado de fecha, pasado, passed its date
  `,
  superfat: 'superfat, super fat, lye discount, sobreengrasado, sobre engrasado, sf',
  vanilla: spaced`
    chai, latte, smores, eggnog, pie, apple pie, donut, brownie, hot cocoa, hot chocolate, bourbon,
    sandalwood, cashmere, sweet scent, sweet fragrance, baked goods, bakery type, cookie dough, waffle,
    pancake, rice pudding fragrance, chocolate scent, coconut scent, fudge scent, vanila, vanilla,
    vanillin, ethyl vanillin, birthday cake, cupcake, sugar cookie, cookie, creme brulee, brown sugar,
    caramel scent, pumpkin spice, buttercream, marshmallow, bakery, bakery scent, bakery fragrance,
    oatmeal milk and honey fragrance, warm sugar, sugar fragrance, tonka, amber fragrance, cake fragrance,
    frosting fragrance, vainilla, vainillina, gourmand, dessert scent, cinnamon roll, chocolate fragrance,
    coconut cream fragrance, toasted, sandalwood vanilla, dulce de leche fragrance, custard fragrance,
    ice cream fragrance, cinnamon bun, maple, butterscotch, gingerbread, biscuit fragrance, pastry,
    almond biscotti, cake scent, pink sugar, cotton candy, candy floss, tarta, galleta, pastel fragancia,
    warm vanilla, natillas, natilla, flan, bizcocho, magdalena, magdalenas, galletas, horchata, caramelo,
    turron, dulce de leche, pastelito, pan dulce, creme, creme anglaise, pastel de, helado, cafe con leche,
    chocolate, capuchino, cappuccino, biscuit, shortbread, cheesecake, ice cream, nougat, praline,
    tiramisu, churro, churros, pudding fragrance, muffin scent, bakery oil, pumpkin pie, kahlua, rum,
    cream soda, root beer, bizcochuelo, alfajor, cajeta, chocolatina, aldehyde, vanilina
  `,
  novanilla: spaced`
    vanilla free, vanillin free, no vanilla, no vanillin, without vanilla, without vanillin, zero vanillin,
    0% vanillin, 0 vanillin, zero vanilla, vanillin 0, 0 percent vanillin, vanillin content 0,
    vanillin is zero, vanillin content is zero, non vanilla, vanilla content 0, hasnt got vanilla,
    sin vainilla, sin vainillina, not vanilla, no lleva vainilla, no tiene vainilla, no tiene vainillina,
    doesnt have vanilla, doesnt contain vanilla, isnt vanilla, doesnt contain vanillin, vanillin none,
    0 % vanillin, 0.0% vanillin, no vanilla in it, vanillin content zero, not a vanilla, vanillin free 0,
    contains no vanillin, sin nada de vainillina, sin nada de vainilla, 0 vainillina, 0% vainillina,
    libre de vainillina, zero % vanillin, no vanillin on the sds, no vanillin per the sds, vanillin nil,
    nil vanillin
  `,
  discolourscent: spaced`
    patchouli, clove, eugenol, cinnamon oil, cinnamon essential, orange essential oil, folded orange,
    10x orange, 5x orange, lemongrass, litsea, citral, jasmine, indole, gardenia, heliotropin,
    heliotropine, benzoin, vetiver, honeysuckle, tea tree, coumarin, floral fragrance, floral,
    citrus fragrance, orange oil, citrus oil, carrot seed, chamomile, blue chamomile, lilac fragrance,
    magnolia, tuberose, neroli, ylang, clavo, canela aceite, jazmin, naranja aceite esencial, azahar,
    honey fragrance, leather fragrance, tobacco, coffee fragrance, lemon essential oil, lemon oil, musk
  `,
  fragrance: spaced`
    fragrance, fragrance oil, fo, fos, scent, scented, perfume, essential oil, eo, eos, essential oils,
    aroma, perfumed, fragancia, esencia, aceite esencial, perfume oil, aroma oil, esencial
  `,
  unscented:
    'unscented, fragrance free, no fragrance, no scent, without fragrance, sin fragancia, sin aroma, sin perfume',
  water: 'water, liquid, full water, agua, aqua',
  muchwater: spaced`
    full water, lots of water, extra water, too much water, more water than, more water, high water,
    heavy on the water, loads of water, tons of water, 38% water, 38 water, 40% water, water heavy,
    no water discount, no discount, didnt discount, agua extra, mucha agua, demasiada agua, agua completa,
    agua total, sin descuento de agua, extra splash of water, generous with the water, wet recipe,
    low lye concentration, weak lye, 25% lye, 26% lye, 27% lye, 28% lye, full amount of water
  `,
  gel: spaced`
    gel, gelled, gel phase, gelled fully, full gel, cpop, forced gel, force gel, oven process, fase gel,
    gelifico, gelificado, horno, oven, heating pad, heat mat, gelling, gelled hard, manta electrica,
    warm oven
  `,
  insulate: spaced`
    insulate, insulated, insulation, towel, towels, blanket, blankets, wrapped, wrapped up, wrap, tucked,
    cosy, cooler box, cardboard box, bundled, manta, toallas, abrigue, tapado, tape, cobija, arrope,
    arropado, envolvi, envuelto, duvet, quilt, polystyrene box
  `,
  hot: spaced`
    hot, overheat, overheated, overheating, boiling, too hot, really hot, so hot, very hot, warm to touch,
    steaming, heat, heated, heated up, hot spot, temp spiked, caliente, sobrecalento, calento, recalento,
    calor, hot batter, got hot, roasting, high temp, high temperature, hot temps, hot lye, scorching, warm
  `,
  cold: spaced`
    fridge, freezer, refrigerator, cold, cool, cold room, cold garage, winter, cooled, low temperature,
    low temps, room temperature, room temp, soaped cool, refrigerador, la nevera, congelador, frio, fria,
    temperatura ambiente, kept cool, cool temps, garage, froze, chilly, too cool, heladera
  `,
  nogel: spaced`
    didnt gel, no gel, not gel, never gelled, without gel, ungelled, prevented gel, avoid gel, avoided gel,
    stop gel, prevent gel, no gelifico, sin gel, sin gelificar, uninsulated, uncovered, left uncovered,
    didnt cover, didnt insulate, not covered, open air, left open, sin tapar, sin cubrir, no lo tape,
    no tape, no la tape, not insulated, no insulation, wasnt covered, wasnt insulated
  `,
  sugar: spaced`
    sugar, honey, milk, goat milk, goats milk, coconut milk, buttermilk, beer, fruit puree, puree, wine,
    maple syrup, agave, azucar, miel, leche, leche de cabra, cerveza, yogurt, yoghurt, cream milk,
    molasses, condensed milk, sorbitol, breast milk, breastmilk, oat milk
  `,
  freshfood: spaced`
    puree, fruit, pumpkin, banana, avocado flesh, carrot puree, cucumber, fresh, milk, petals on top,
    flowers on top, oatmeal bits, oats, botanicals on top, dried flowers, fruta, pure, platano, calabaza,
    pepino, avena, fresca, fresco, aloe from the plant, food, bananas, strawberries, tomato, yogurt,
    yoghurt, lemon peel, orange peel, peel, herbs on top, carrot juice, fresh juice, tea leaves,
    coffee grounds, orange slices, lemon slices, fruit slices, herbs, rose petals on, petals, orange slice,
    veg, vegetable, egg, aloe vera gel
  `,
  lots: spaced`
    doubled then, galore, load up on, loaded up, load up,  lots, loads, tons, heaps, too much, so much,
    way too much, overdid, over did, heavy handed, heavy hand, went mad, went overboard, overboard, extra,
    double, doubled, tripled, triple, tablespoons, heaped, heaping, generous, generously, kept adding,
    dumped, piles, plenty, excess, a bunch, ton of, load of, mucho, mucha, muchisimo, demasiado, demasiada,
    exceso, un monton, doble, cucharadas, me pase, se me fue la mano, bastante, a mountain of, shedload,
    truckload, 8x, 3x, 4x, 5x, triple dose, double dose, four times, three times, kilos de, a puñados,
    a punados, a lo loco, cargado, cargada, recargado, heavily loaded, heavily pigmented, high loading,
    pigment load, overload, overloaded, saturado de, te pasas, me pase con
  `,
  jarful: spaced`
    half the jar, whole jar, half a jar, whole bottle, whole packet, full jar, whole pot, whole tub,
    entire jar, entire packet, entire bottle, whole sample, all the jar, half the packet, half the bottle,
    todo el frasco, medio frasco, el frasco entero, todo el bote
  `,
  little: spaced`
    dusting of, sprinkle, light sprinkle, halved it, half of what, half the amount, punta de una cuchara,
    la punta de una cuchara, wrong spoon, mini spoon, mini one, smallest spoon, smallest scoop,
    little scoop, tiny scoop, mini scoop, one scoop, small scoop, pinch, tiny bit, tiny amount, smidge,
    smidgen, dash, little bit, bare, a touch, just a touch, small amount, sprinkle of, sparingly, stingy,
    not enough, too little, hardly any, barely any, half the usual, less than usual, light handed,
    scared to add, afraid to add, afraid to use, toothpick, drop of, couple drops, few drops, one drop,
    poquito, muy poco, una pizca, pizca, poca, poco, unas gotas, gotitas de colorante, didnt add much,
    didnt use much, scant, tip of a knife, tip of the knife, knife tip, punta de cuchillo, tantito,
    tantita, poquitito, poquitita, una puntita, pizquita, few grains, a few grains, tiny pinch,
    half a pinch, one pinch, a speck of, scared to put, was scared to, afraid of too much,
    scared of too much, too timid, chickened out, timid with, went light on, went easy on, easy on the,
    stingy with, me dio miedo, por miedo, media cucharadita para todo, puse apenas, le puse apenas,
    le eche apenas, eche poquito, le falto, falto color, under dosed, 1/16, 1/32, corta de color,
    me quede corto, me quede corta, skimped, skimpy, conservative with, cautious with, mezquina
  `,
  dry: spaced`
    dry powder, dry pigment, dumped in dry, in dry, straight in, straight into, directly into, directly in,
    direct to, right into, straight to, straight from the jar, powder in, tipped in, sprinkled in,
    sprinkled into, threw in, chucked in, chucked, dumped in, dropped in, dropped into, dropped it in,
    just stirred in, no premix, didnt premix, not premixed, without premixing, without mixing,
    without wetting, didnt wet, no carrier, in seco, en seco, directamente, directo, sin dispersar,
    sin diluir, didnt disperse, without dispersing, didnt mix it with oil first, tossed in, spooned in,
    shook in, added dry, added the dry, stirred in dry, spooned dry, dry into, dry mica, dry oxide,
    dry ultramarine, undiluted, sin hidratar, sin mojar, a lo bruto, a palo seco, directo a la masa,
    directo a la mezcla, directo en la masa, directo en la mezcla, en polvo, en polvo asi, tal cual,
    sin disolver antes, sin premezclar, sin predispersar, asi nomas, asi no mas, a cucharadas secas,
    not wetted, unwetted, without wetting agent, no predispersion, dusted into, scattered into, shaken in,
    straight from, as is, as powder, went dry, dry in the batter
  `,
  premix: spaced`
    premixed, premix, predispersed, pre dispersed, dispersed in, dispersed it, dispersed the,
    mixed in oil first, wetted it, wet it first, mixed with oil first, slurry, made a paste, paste,
    pre mixed, disperso en aceite, predisperse, dispersado, mixed with a little oil, mixed it with oil,
    mixed with glycerin first, diluido en, disuelto en
  `,
  blend: spaced`
    blend, blended, stick blend, stick blended, stickblend, stickblended, mixed well, mix well, well mixed,
    mixed in, mix in, incorporated, incorporate, mixed enough, mix enough, blended in, mixed properly,
    mix properly, stir enough, stirred enough, stirred well, stir well, mixed thoroughly, whisked well,
    batido, licuado, mezclado bien, mezcle bien, bien mezclado, batidora, integrado, integro, fully mixed,
    mix it properly, mix it all the way, mix all the way, combine, combined, stirred in properly,
    mixed all the way, blending, stirred through, stir through, disperse, dispersed
  `,
  handstir: spaced`
    hand stirred, hand stir, by hand, with a spoon, with a spatula, with a fork, with a whisk,
    a quick stir, quick stir, few stirs, couple of stirs, stirred by hand, gave it a stir, lightly stirred,
    barely stirred, barely mixed, barely blended, hardly mixed, half mixed, lazy, in a hurry, rushed,
    a mano, con cuchara, con espatula, apenas mezcle, poorly mixed, badly mixed, mal mezclado, swirled in,
    folded in, chopstick, mixed it badly, con una cucharilla, con cucharilla, con palito, con un palillo,
    spatula only, with spatula only, spatula, spoon only, con la espatula, a correr, low shear, no shear,
    manual stirring, manually, stirred with
  `,
  overblend: spaced`
    overblended, over blended, blended too long, stick blended for ages, stick blender on, whipped,
    whipped air, beat air, whisked hard, whisked it hard, whisked a lot, beat it, whipped it, frother,
    hand mixer, mixer, didnt burp, not burp, burp, burped, blended like crazy, blended for ages,
    bati mucho, batiendo, tap the mould, tapped the mould, bang the mould, banged the mould, tapped,
    banged, thump, golpear el molde, golpee el molde, didnt tap, didnt bang, in and out of the batter,
    high speed, lifting the blender, lifted the blender, whirring, bati de mas, batí arriba y abajo,
    up and down, arriba y abajo, in and out, no golpee el molde, no golpee, did not knock, didnt knock,
    never knock, never knocked, no le di golpecitos, sin golpear, vortex, pulled in air, sucking air,
    sucked in air, aerated it
  `,
  carrier: spaced`
    carrier, oil to disperse, oil i mixed, extra oil, extra glycerin, oil for the colour,
    oil in the colour, dispersing oil, tablespoon of oil, tablespoons of oil, tbsp oil, tbsp of oil,
    tablespoon oil, tablespoons oil, cucharadas de aceite, cucharada de aceite, aceite extra,
    aceite para dispersar, oil to wet, oil to mix, slurry, more oil than powder, lots of oil, too much oil,
    loads of oil, extra water, watered down, thinned with oil, tablespoons of glycerin, tbsp glycerin,
    tbsp of glycerin, lots of glycerin, too much glycerin, loads of glycerin, mucho aceite,
    demasiado aceite, mucha glicerina, cucharadas de glicerina, quarter cup of oil, half a cup of oil,
    half cup of oil, third of a cup of oil, glugs of oil, glug of oil, oil to thin, oz of oil,
    ounce of oil, ounces of oil, tablespoons of water, tbsp water, tbsp of water, ml of oil,
    ml of glycerin, g of oil, ml de aceite, ml de glicerina
  `,
  cut: 'cut, cutting, sliced, slicing, slice, unmould, unmoulded, corte, cortar, corto, al cortar, cortarlo, desmolde, desmoldar, cortado en, cortarla',
  cutlate: spaced`
    waited too long, waited days, left it too long, cut too late, cut late, cut it late, cut after a week,
    cut after three days, left it a week, left it for days, forgot to cut, forgot about it, sat for days,
    deje mucho tiempo, tarde en cortar, corte tarde, didnt cut it until, left in the mould for,
    waited 2 days, waited 3 days, waited three days, waited a week, left it three days
  `,
  wire: spaced`
    wire, wire cutter, cheese wire, cutter, knife, blade, slicer, planer, bench scraper, crinkle cutter,
    guitar string, alambre, cortador, cuchillo, lira, cuchilla, wires, guillotine, multi bar cutter,
    cortadora, hilo, hilo de la cortadora, cuerda de guitarra, lira de corte, guillotina, with the planer,
    cepillo, si cepillo, al cepillar, planing, plane it, if i plane, shaved a layer
  `,
  swirltool: 'hanger, skewer, hanger swirl tool, gear tie, palito, percha',
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
  drizzle: spaced`
    drizzle, drizzled, mica swirl, mica oil, oil swirl, mica line, mica lines, mica in oil, mica and oil,
    mica mixed with oil, mica mixed in oil, oil mica, mica oil swirl, mica drizzle, mica on top,
    mica on the top, gold on top, top swirl, swirl on top, swirled on top, painted on top, pencil line,
    pencil lines, dibujo arriba, remolino arriba, mica con aceite, mica en aceite, hilos de mica,
    swirled mica, decorated the top, decorate the top
  `,
  damp: spaced`
    humid, humidity, muggy, rainy, rain, monsoon, bathroom, steamy, shower, damp, damp room, basement,
    cellar, wet weather, tropical, coast, tropics, summer, storm, thunderstorm, humedad, humedo clima,
    lluvia, bano, verano, lluvioso, sotano, moist air, dew point, plastic wrap, shrink wrap, cling film,
    sealed, airtight, plastic bag, bolsa de plastico, plastico, swamp cooler, heatwave, levante, costa,
    playa, junto al mar, humedo el clima, bochorno, dias humedos, epoca de lluvias, temporada de lluvias,
    llueve, lloviendo, aire humedo, humid day, humid days, rh, relative humidity, high rh, % rh,
    sticky weather, summer stall, beach, seaside, greenhouse, laundry room, by the sea, hurricane
  `,
  sun: spaced`
    lamp, light bulb, bulb, spotlight, led, window, windowsill, window sill, sill, sun, sunlight, sunny,
    sunshine, sunlit, daylight, light exposure, exposed to light, exposed to the light, under the lamp,
    under lights, shop lights, display, shop window, display shelf, markets, summer of markets,
    market stall, strip light, led lights, fluorescent tube, ventana, sol, escaparate, luz, luz del sol,
    vitrina, conservatory, facing the light, in the light, uv, south facing, market table, front row,
    booth, stall, craft fair, repisa, en la repisa, aparador, mostrador, terraza, balcon, tianguis, puesto,
    feria, asoleado, asoleados, le da la luz, les da la luz, le da el sol, les da el sol,
    donde pega el sol, patio, sunroom, porch, dashboard, car window, skylight, bright room, store front,
    storefront, shop front, shelf by the window, counter by the, lit shelf, halogen, grow light,
    delante del escaparate, mercadillo, photobleached, photobleaching, photodegraded, lightfast,
    lightfastness, uv exposure, lux, irradiated, lit, sunlit side, light side, table at market
  `,
  shade: spaced`
    drawer, box, cupboard, in the dark, kept dark, under the label, behind the label, other side,
    back side, underneath side, closet, cigar band, under the band, cajon, caja, armario, cara de atras,
    etiqueta, wrapper, inside of the bar, wardrobe, los de la caja, las de la caja, en la caja,
    en el cajon, guardados, las guardadas, los guardados, the boxed ones, boxed ones, boxed,
    ones in the box, ones in the drawer, stored in, wrapped ones, under the wrap, under the paper,
    the covered part, covered side, the back is, back side is, behind, facing the wall,
    bottom of the stack, bottom of the pile
  `,
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
