import { spaced } from '../../../engine/over-lines.ts';

/** What is said of fire, heat and current near lye. */
export const lyeFire = {
  'electric-shock': {
    answer: [
      'Switch off at the mains first.',
      'Until it is off touch neither the tool, nor anything wet, nor whoever holds it.',
    ],
    why: [
      'Not breathing properly, unconscious, a burn, a racing heart: your emergency number at once.',
      'Anyone else who had a shock sees a doctor today, even if they feel well.',
      'A cable or blender that fell into lye: power off, pull the plug, then goggles and gloves, take it out by the dry end.',
      'It is not used again.',
      'Lye on skin: running water for 20 minutes.',
    ],
  },
  'alcohol-and-fire': {
    answer: [
      'No: alcohol never near a flame, gas stove, candle, hot plate or cigarette.',
      'Its vapour catches fire.',
    ],
    why: [
      'The vapour creeps along the table and lights a metre away, and so does the spray from a bottle.',
      'Flames out and gas off first, window open, then spray.',
      spaced`
        To melt soap with alcohol: that is a trade of its own, in a covered water bath on switched off
        electric heat, with an extinguisher; not for beginners.
      `,
      'If it burns: step back, lid or damp cloth over it, emergency number.',
    ],
  },
  'smoking-oil': {
    answer: ['Heat off, and put nothing in: neither lye nor water.', 'Smoking oil is about to catch fire.'],
    why: [
      'Leave the pot where it is, lid on, face away, until it has cooled under 50 °C (122 °F); that takes an hour.',
      'If it burns: lid or fire blanket, heat off, never water; everybody out and the emergency number.',
      'Oil that smoked smells burnt: better not for soap.',
      'Fats are melted on the lowest heat and need no more than 60 °C (140 °F).',
    ],
  },
  'hot-liquid': {
    answer: ['No: only ice-cold or frozen.', 'Lye in a hot liquid boils up and spits at once.'],
    why: [
      'Lye alone heats cold water by 40 to 60 °C (72 to 108 °F).',
      'Coffee, tea or broth: brew it the day before, strain it, chill or freeze it; milk frozen to slush.',
      'At least as much liquid as lye by weight, lye a spoonful at a time, jug in ice, goggles, gloves, draught.',
      'Simplest: plain cold water for the lye, and coffee or tea as a weighed part of it: /plan liquid:“half coffee”.',
      'Hot broth never goes in.',
    ],
  },
  'heating-lye': {
    answer: ['No: lye water is never heated, neither on a flame nor in a microwave.'],
    why: [
      'It spits, boils over and fills the room with caustic mist.',
      'Cold is no fault: lye water at room temperature goes into oils at 35 to 45 °C (95 to 113 °F).',
      'Lye that has not dissolved: stir on, in at least its own weight of cold water.',
      'Crystals in a stored bottle: loosen the cap and stand it in warm tap water, goggles and gloves on.',
    ],
  },
};
