import { spaced } from '../../../over-lines.ts';

/** Names makers give a flaw, and words for when it showed. Rules as in `looks.ts`. */
export const NAMED = {
  n_undispersed: spaced`
    undispersed, not dispersed, didnt disperse, pigment clumps, undissolved pigment, unmixed pigment,
    pigmento sin dispersar, undissolved colour, unmixed colour, pigment specks, mica clumps,
    undispersed oxide, mal dispersado
  `,
  n_carrier:
    'carrier pockets, glycerin pockets, pockets of glycerin, colour pockets, pockets of colour, bolsas de glicerina, bolsas de color, pockets of pigment',
  n_crackle: 'td crackle, titanium crackle, white crackle, crackle effect, crackled titanium',
  n_rivers: spaced`
    glycerin river, glycerin rivers, glycerine river, glycerine rivers, glyc rivers, rivers,
    rios de glicerina, rio de glicerina, glycerin veins, glicerin rivers, rivering
  `,
  n_white: spaced`
    too much titanium, too much td, too much titanium dioxide, too much white, too much tio2,
    overdid the titanium, overdid the td, heavy on the titanium, heavy hand with the titanium,
    demasiado dioxido de titanio, exceso de titanio, mucho titanio, excess titanium, demasiado titanio,
    loads of titanium, lots of titanium dioxide, a lot of titanium dioxide, lots of td, heavy on the td,
    extra titanium, extra td
  `,
  n_lyeheavy: spaced`
    lye heavy, lye excess, excess lye, too much lye, heavy on the lye, exceso de sosa, lejia en exceso,
    caustic soap, too alkaline, alkaline, unsaponified lye, extra lye, excess alkali, free alkali,
    residual alkali, negative superfat, pasado de sosa, sosa de mas, exceso de lejia
  `,
  n_lyepocket: spaced`
    lye pocket, lye pockets, pocket of lye, pockets of lye, lye crystals, lye spots, bolsas de sosa,
    bolsas de lejia, unmixed lye, lye chunk, lye chunks, undissolved lye, lye bubble
  `,
  n_hard: spaced`
    too much coconut, too much cocoa butter, too much stearic, too much beeswax, too many hard oils,
    too many hard fats, too much hard oil, too much hard fat, too much palm, too much palm kernel,
    demasiada manteca, mucha manteca de cacao, mucho coco
  `,
  n_ash: spaced`
    soda ash, ash, ashy, ceniza, ceniza de soda, ceniza de sosa, sodium carbonate, sodash, efflorescence,
    efflorescence of carbonate, carbonate bloom, carbonato, carbonatacion, carbonation, eflorescencia
  `,
  n_partialgel: spaced`
    partial gel, partially gelled, half gelled, part gelled, incomplete gel, gel parcial, gel ring,
    gelled in the middle, gelled only in the middle, middle gelled, centre gelled, partial gelling,
    gelled in the centre, gelled middle, only gelled
  `,
  n_vanillin:
    'vanillin browning, vanilla discolouration, vanilla browning, vanillin discolouration, vanilla discolouring, vanillin discolouring',
  n_unstable: spaced`
    not alkali stable, not lye stable, alkali unstable, not ph stable, lye killed, killed by lye,
    killed by the lye, ph sensitive, not stable in, ph change, morphed, morphing, lye ate the colour,
    lye ate, high ph, no es estable, reacted with the lye, lye reacted, react with lye, reacted with lye,
    reacts with lye, not soap stable, ate my colour, color morphing
  `,
  n_bleed: spaced`
    bleeding colour, colour bleed, colour bleeding, dye bleed, colour migration, dye migration,
    migrating colour, sangrado de color, migracion de color, bleeder
  `,
  n_overdose: spaced`
    too much colour, too much pigment, too much colourant, too much mica, too much oxide,
    too much charcoal, overdid the colour, over coloured, overcoloured, too heavy handed with,
    demasiado colorante, demasiado color, demasiado pigmento, mucho pigmento, mucho colorante,
    exceso de color, exceso de colorante, overdosed, way too much colour
  `,
  n_underdose: spaced`
    not enough colour, not enough pigment, not enough colourant, not enough mica, too little colour,
    too little pigment, too little mica, poco colorante, falta color, falta de color, poco pigmento,
    underdosed, under coloured, needs more colour, needed more colour, more colour needed,
    concentration too low, dose too low, dosage too low, pigment too low, loading too low, underpigmented,
    under pigmented, dosis baja, dosis muy baja, poca dosis, muy poco color, muy poco colorante,
    muy poco pigmento, not used enough, didnt use enough, didnt put enough
  `,
  n_cast:
    'base colour, base oils colour, colour of the oils, oils tint, colour of my oils, from the olive oil, from the oils',
  n_overheat: 'soap volcano, volcano, heat crack, heat tunnel, heat tunnels, volcan',
  n_accel:
    'acceleration, accelerated, accelerating, seized, seizing, seize, soap on a stick, aceleracion, acelerante, acelero',
  n_rice: 'ricing, riced, rices, arroz, efecto arroz, ricey',
  n_separation: 'separation, false trace, traza falsa, falsa traza, separacion',
  n_stearic: spaced`
    stearic spot, stearic spots, stearic acid spots, stearic, stearin spots, stearine,
    manchas de estearico, puntos de estearico, palm spots, unmelted butter, unmelted palm, unmelted fat,
    unmelted oil, unmelted cocoa butter, unmelted shea
  `,
  n_dos: spaced`
    dos, dreaded orange spots, orange spots, rancidity, gone rancid, went rancid, going rancid, rancid,
    manchas naranjas, puntos naranjas, rancidez, ranciedad, enranciado, oxidised, oxidized, oxidation,
    lipid oxidation, autoxidation, rancidification, oxidacion, oxidado el aceite, se oxido el aceite,
    peroxides
  `,
  n_air:
    'air bubble, air bubbles, air pocket, air pockets, trapped air, burbujas de aire, aire atrapado, air hole, air holes',
  n_dew:
    'glycerin dew, sweating, sweat, sweaty, dew, sudando, sudor, suda, humidity, weeping glycerin, humectant',
  n_fade: spaced`
    faded in the sun, sun faded, sun bleached, light fade, light faded, sunbleached, destenido por el sol,
    bleached by the sun, sun fading, uv fade, uv, photobleached, photobleaching, photodegradation,
    not lightfast, poor lightfastness, light sensitive, fotosensible, comido por el sol, quemado por el sol
  `,
  n_discolour: spaced`
    fragrance discolouration, fragrance discoloured, discolouring fragrance, discolours, fo discolouration,
    discolouration from the fragrance, the fragrance discoloured, fragrance discolours,
    discoloured by the fragrance
  `,
  n_metal: spaced`
    metal reaction, reacted with the metal, reacted with the pan, reaction with the pan,
    reacted with the aluminium, reacted with aluminium, reacts with aluminium, reaccion con el metal,
    reaccion con el aluminio, rusty mark
  `,
  n_micapool:
    'mica pool, mica pools, mica oil pools, pools of mica, mica puddle, mica puddles, charcos de mica, oily mica',
  n_drag: spaced`
    drag marks, drag mark, drag lines, drag line, wire drag, knife marks, cutter marks, cutting marks,
    cutter lines, wire marks, wire lines, marcas de corte, marcas del cortador, marcas del alambre,
    knife drag
  `,
  n_mould: spaced`
    moho, mouldy, going mouldy, gone mouldy, went mouldy, mould growth, mould growing, mould on,
    growing mould, grew mould, mould spots, spots of mould, green mould, black mould, blue mould,
    white mould, moho, mohoso, enmohecido, mildew, fungus, hongos, hongo, fuzzy mould, is it mould,
    actual mould, mould patches, patches of mould, mould in my soap, bacteria, fungal, like mould,
    mould spot, be mould, looks mouldy, penicillin, mould colony, moldiness, mould is, got mould,
    found mould, real mould
  `,
  n_apart: spaced`
    delamination, delaminated, delaminating, delaminate, layers separated, layers separating,
    layer separation, layers came apart, layers come apart, capas separadas, delaminado
  `,
  n_muddy:
    'muddy swirl, muddied swirl, overmixed, over mixed, overswirled, over swirled, overworked swirl, sobremezclado, mezclado de mas',
  n_sunk: 'sunken swirl, sunk swirl, sinking swirl, swirl sank, swirl sunk, remolino hundido',
  n_warped: 'warped, warping, warp, warpage, pandeado, alabeado, combado',
  n_loosemica: 'loose mica, mica suelta, unbound mica, loose glitter',
  n_gelshift: spaced`
    gel changed, gel shifted, gel phase changed, gel made it darker, gel made it, gel made my,
    colour shift from gel, gel deepened, gel intensified, because it gelled, from gelling, from the gel,
    por el gel, por la fase de gel
  `,
  n_unsuitable: spaced`
    not for soap, not meant for soap, isnt for soap, wasnt for soap, not made for soap, not soap colour,
    not soap safe, wrong kind of colour, wrong type of colour, no es para jabon, no era para jabon,
    not suitable for soap, unsuitable
  `,
  n_early: spaced`
    unmoulded too soon, unmoulded too early, unmoulded early, unmoulded it too soon,
    unmoulded it too early, unmoulded it early, took it out too soon, took it out too early,
    took them out too soon, demoulded too soon, demoulded too early, demoulded early, desmolde muy pronto,
    desmolde antes, lo desmolde antes, desmoldado pronto, lo saque muy pronto, lo saque antes,
    los saque antes, out of the mould too soon, out of the mould too early, sacarlo antes
  `,
  n_texture: spaced`
    liner marks, mould marks, liner wrinkles, liner creases, silicone rash, mould texture,
    marcas del molde, marcas del forro, marcas del papel, liner folds, orange peel
  `,
  n_wrinkled: spaced`
    alien brain, alien brains, alligator skin, elephant skin, crocodile skin, brain top, wrinkled top,
    wrinkly top, wrinkled surface, piel de cocodrilo, piel de elefante, superficie arrugada, heat wrinkles,
    wrinkles on top
  `,
  mouldform: spaced`
    in the mould, into the mould, out of the mould, of the mould, from the mould, silicone mould,
    wooden mould, mould liner, loaf mould, the mould, my mould, el molde, del molde, plastic mould,
    wood mould, slab mould, individual moulds, cavity mould, column mould, mould sides, each mould, moulds,
    a mould, mould was, mould corners
  `,
  curing: 'cure, cured, curing, on the rack, curing rack, drying rack, curado, curando, curar',
  t_once: spaced`
    straight away, immediately, at once, right away, instantly, as soon as, the moment, the second,
    the minute, while stirring, while i was mixing, as i stirred, as i mixed, within minutes,
    within seconds, in the bowl, in the pot, in the jug, enseguida, al momento, al instante, right when,
    when i added, when i mixed, when it hit, when the lye, when it met, into the batter, hit the batter,
    hit the lye, hit the lye water, al agregar, al anadir, al echar, apenas, in front of my eyes,
    before my eyes, right before my eyes
  `,
  t_nextday: spaced`
    next day, next morning, overnight, the morning after, in the morning, this morning, by morning,
    24 hours, 24h, 24 hrs, after a day, one day later, a day later, al dia siguiente, a la manana,
    por la manana, de la noche a la manana, day after, woke up, 12 hours, hours later, few hours,
    yesterday, last night, al otro dia, 48 hours, un dia
  `,
  t_days: spaced`
    after a few days, few days, couple of days, days later, three days, 3 days, 4 days, 5 days,
    within days, unos dias, a los dias, dias despues, several days, some days, day 3, day 4, tres dias,
    over the days, over a few days
  `,
  t_weeks: spaced`
    weeks, few weeks, couple of weeks, weeks later, after a week, a week later, over the weeks,
    in the cure, during cure, while curing, gradually, slowly, over time, semanas, una semana, poco a poco,
    during the cure, week by week, week after week, little by little, con el tiempo, every week, each week,
    con los dias, a fortnight, fortnight, slow
  `,
  t_months: spaced`
    months, few months, months later, half a year, a year, year old, last year, meses, un ano, hace meses,
    over the winter, since christmas, from last summer, over a year, since last, long storage, last spring,
    last autumn, back in, ages ago, old bars, older bars, old batch, year
  `,
  t_cut: spaced`
    when i cut, when i cut it, on cutting, upon cutting, after cutting, at cutting, cut it open, cut into,
    sliced it, sliced it open, al cortar, al cortarlo, cuando corte, cuando lo corte, when cut,
    when i sliced, cut open, cut the loaf, cut it today, cutting it, cut them, cut my
  `,
} as const;
