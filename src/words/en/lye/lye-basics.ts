import { spaced } from '../../../engine/over-lines.ts';

/** What everybody who handles lye has to know: what is lye and what is none, what it may be kept in, and what to do when it went wrong. */
export const lyeBasics = {
  'clean-up': {
    answer: ['Do not neutralise it: sweep dry lye up, then wash the place with plenty of water.'],
    why: [
      'Goggles and gloves first; keep children and pets away.',
      'Dry flakes: sweep them up dry into a plastic tub, never by hand.',
      'Liquid: soak it up with paper or cloths, then rinse with much cold water several times.',
      'Carpet or wood: pick up every flake dry before any water, then rinse; if it stays slippery or gets warm, rinse on.',
      'Never vinegar or any acid on skin, or on a spill: it heats.',
      'Only the last traces on a rinsed bench may be wiped with weak vinegar.',
      spaced`
        Leftover lye water: label it and keep it closed for the next batch, or ask your local waste
        service; what may go down a drain is a matter of local rules.
      `,
      'Never into an aluminium sink or pipe.',
    ],
  },
  'drain-cleaner': {
    answer: ['No: never use drain cleaner as lye.'],
    why: [
      spaced`
        Even where the label says lye it may hold aluminium chips (they make hydrogen), bleach, salts,
        scent or dye, and its strength is unknown.
      `,
      'Buy sodium hydroxide sold as pure, with its purity on the label.',
    ],
  },
  'baking-soda': {
    answer: ['No: baking soda or washing soda makes no soap out of oil.'],
    why: [
      'They are salts of carbonic acid, far too weak.',
      'Only sodium hydroxide (bars) or potassium hydroxide (soft soap) does it.',
      'What you get otherwise is greasy, wet paste.',
    ],
  },
  bleach: {
    answer: ['No: bleach is not lye.'],
    why: [
      'Household bleach is sodium hypochlorite in water.',
      'It makes no soap, and gives off toxic chlorine with acids.',
      'You need sodium hydroxide (NaOH, caustic soda).',
    ],
  },
  'glass-jug': {
    answer: ['No glass: lye etches it, and the heat can crack it.'],
    why: [
      'Use a heatproof jug of polypropylene (PP, recycling mark 5) or stainless steel.',
      'Glass that held many times breaks without warning, heat-resistant glass too.',
    ],
  },
  aluminium: {
    answer: ['No: never aluminium, tin or zinc with lye.'],
    why: [
      'Lye dissolves them and gives off hydrogen, which burns.',
      'Use stainless steel or polypropylene (PP 5).',
    ],
  },
  'no-goggles': {
    answer: ['Do not start without goggles and gloves: one drop of lye can cost an eye.'],
    why: [
      'Plain glasses are not enough: goggles that close all round, chemical-resistant gloves, long sleeves.',
      'If you find them missing halfway, step back, cover the jug loosely, and put them on before you go on.',
    ],
  },
  'lye-twice': {
    answer: ['Do not use it: twice the lye is lye-heavy and burns skin.'],
    why: [
      'Keep gloves and goggles on.',
      spaced`
        The batter can be saved only if you know exactly what went in: then tell me “I put 300 g lye in
        1000 g olive” for how far off it is, and rebatch with the oils that are missing.
      `,
      'If you do not know the amounts, discard it as caustic waste by your local rules.',
    ],
  },
  'wrong-unit': {
    answer: ['Do not use it yet: with the wrong unit the lye may be far too much.'],
    why: [
      '1 oz is 28.35 g.',
      spaced`
        Write down what the scale showed for each thing, and in which unit, and work out what really
        went in; then tell me “I put 150 g lye in 1000 g olive”.
      `,
      'If you are not sure, treat it as lye-heavy: gloves, no skin, discard it by your local rules.',
    ],
  },
  'lye-forgotten': {
    answer: ['Do not add lye on a guess, and do not use the soap until you know.'],
    why: [
      'Weigh what is left in the lye jar, or the pot against its oils and water: the difference tells.',
      'Batter without lye never thickens and stays oil.',
      'If you cannot find out, treat it as caustic, gloves on, and discard it by your local rules.',
    ],
  },
  'harder-by-lye': {
    answer: ['No: more lye makes no harder bar, it makes one that burns.'],
    why: [
      'Lye beyond what the oils take stays in the bar as lye.',
      spaced`
        For a harder bar use more hard oils (palm, tallow, cocoa butter), less water, salt or sodium
        lactate, and a longer cure; work the lye out anew for every change of oils.
      `,
    ],
  },
  'too-little-water': {
    answer: ['Never less water than lye by weight: it does not dissolve.'],
    why: [
      'Undissolved crystals stay in the bar and burn. 1.5 to 2 times the weight of the lye is usual (33 % lye is 2.03 times).',
      spaced`
        If the lye water was clear and all dissolved, the soap may be sound, only thicker and hotter; if
        there were crystals, gloves on, do not use it, and rebatch with water or discard it.
      `,
    ],
  },
};
