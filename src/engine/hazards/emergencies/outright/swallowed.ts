import { spaced } from '../../../over-lines.ts';
import { HARM_WORDS } from '../lexicon/harm.ts';
import { pairs } from '../lexicon/pairs.ts';

/** Ideas that tell outright of lye that was drunk, bitten or tasted. Written as in `lexicon.ts`. */
export const SWALLOWED = {
  drink: `${HARM_WORDS.swallow}, le dio un trago, dio un trago, un trago`,
  tookself:
    'se tomo, se bebio, se trago, se ha tomado, se ha bebido, se lo tomo, se la tomo, se mando, me tome, me bebi, me trague',
  bite: spaced`
    bit, bitten, bit into,
    took a bite, bite of, ate,
    eaten, eating, licked, licking,
    chewed, chewing, mordio, mordisco,
    comio, comi, se comio,
    lamio, chupo, mastico
  `,
  jug: spaced`
    the jug, a jug, my jug,
    lye jug, jug, pitcher,
    the bottle, a bottle, unlabelled bottle, unlabeled bottle,
    the jar, la jarra, jarra,
    el frasco, un frasco, la botella, el bote,
    el vaso, el recipiente
  `,
  find: 'found, caught, discovered, walked in on, came in and, encontre, encontramos, encontro, halle, pille, lo vi con, la vi con',
  mistaken: spaced`
    thinking it was, thought it was, thought that it was,
    wrong bottle, wrong cup, wrong glass,
    wrong mug, wrong jug, wrong jar,
    by mistake, by accident, accidentally,
    penso que era, pense que era, pensando que era,
    creyo que era, crei que era, creyendo que era,
    por error, por equivocacion, se confundio, botella equivocada,
    vaso equivocado
  `,
  seizure:
    'seizure, seizures, convulsion, convulsions, convulsing, fitting, convulsiones, convulsiona, convulsionando',
  ontongue: pairs(
    'on, in, en',
    spaced`
      tongue, my tongue, his tongue, her tongue, the tongue,
      my mouth, his mouth, her mouth, the mouth,
      la lengua, la boca, los labios,
      my lips, his lips, her lips
    `,
  ),
  tasted: 'probo, probe, tasted, tried a sip, tried some',
  lyewater:
    'agua de sosa, agua con sosa, agua de soda, agua de lejia, solucion de sosa, lye water, lye solution, lejia de sosa, sosa disuelta',
  cantswallow:
    'cant swallow, cannot swallow, can not swallow, couldnt swallow, no puedo tragar, no puede tragar, no logra tragar',
  kid: spaced`
    kid, child, son, daughter,
    baby, toddler, boy, girl,
    niece, nephew, grandson, granddaughter,
    somebody, someone, hijo, hija,
    nino, nina, nene, nena,
    bebe, sobrino, sobrina,
    nieto, nieta, hijita, hijito,
    alguien
  `,
} as const;
