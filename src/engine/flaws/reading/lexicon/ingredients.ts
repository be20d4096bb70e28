import { spaced } from '../../../over-lines.ts';

/** What goes into a soap. */
export const INGREDIENTS = {
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
} as const;
