import { spaced } from '../../../engine/over-lines.ts';

/** What is said to questions of safety about heat and cold: lye that heats, what it is cooled in, oils, loaf and room. */
export const lyeHeat = {
  'cooling-lye': {
    answer: ['Cold water only, and cool the jug from outside: nothing goes into hot lye.'],
    why: [
      'Lye heats its water by 40 to 60 °C (72 to 108 °F): in warm or boiling water it boils up and spits.',
      'Weigh cold water, or part of it as ice, and add the lye slowly to that.',
      'Then stand the jug, open, in a basin of cold water or ice; not in a fridge or freezer with food, where it tips and is mistaken.',
      'Never water or ice onto lye that is already hot.',
    ],
  },
  'lye-heats': {
    answer: ['Usual: lye heats cold water to 80 to 95 °C (176 to 203 °F), and it steams for some minutes.'],
    why: [
      spaced`
        Step back, window open, do not lean over it or breathe the steam; leave it to cool to 35 to 45
        °C (95 to 113 °F), open, where nobody goes.
      `,
      'Cold or iced water and lye a spoonful at a time keep it lower.',
      'Not usual: it boils, spits, foams, goes grey, or the jug softens: get away, add nothing.',
      'Coughing or a splash: /first-aid.',
    ],
  },
  'lye-water-in-cold': {
    answer: [
      'It does not go bad, but it sets: lye water of 30 to 50 % goes solid between 0 and 15 °C (32 and 59 °F).',
    ],
    why: [
      'Outside only until it is at 35 to 45 °C (95 to 113 °F): steady, labelled, no snow or rain into it, no child or animal near.',
      'Fetch it walking, with goggles and gloves: who runs, spills.',
      'Grains or a crust in it: the open jug in warm tap water, stir until it is clear, or lye is missing from what you pour.',
      'Never a glass jug in frost.',
    ],
  },
  'cold-room': {
    answer: [
      'Better where it is 18 to 24 °C (64 to 75 °F): in the cold hard fats set before they are soap, with pockets and ash.',
    ],
    why: [
      'Cold sets palm, lard and butters within minutes: that looks like trace and is none.',
      spaced`
        If it has to be there: only the lye out there for its air, oils and mould at 38 to 45 °C (100 to
        113 °F), all olive or other soft oils, blended to a true trace, then the mould wrapped and
        indoors, out of reach, for a day.
      `,
      'It may miss gel or gel in the middle only, which shows as a ring.',
    ],
  },
  microwave: {
    answer: ['No: never heat raw batter or lye water in a microwave.'],
    why: [
      'It heats in spots, boils over at once and throws hot lye at whoever opens the door.',
      'A batter that is too thick: press it into the mould as it is.',
      'One that has gone cold: let it stand in a warm place or a water bath under 45 °C (113 °F), gloves and goggles on.',
    ],
  },
  'hot-loaf': {
    answer: ['No: do not wrap it.', 'Unwrap it, move it to moving air, and keep your face away.'],
    why: [
      'At that heat it is near boiling and may rise, crack or spit hot lye.',
      'Gloves, goggles; a tray under it; a fan beside it, or stand the mould on a cold floor.',
      'Do not press or stir it while it rises.',
      'Once it has cooled, look for oil or clear drops that have separated, and use it only if it shows none and does not zap.',
    ],
  },
  'hot-oven': {
    answer: ['No: soap in an oven that hot boils, rises and separates.'],
    why: [
      'To force gel: oven to 60 °C (140 °F) at most, switched off, the loaf in a covered mould on a tray, an hour or two, somebody near.',
      'Never overnight with the heat on, never with sugar, milk or a scent that heats, and never with food.',
      'If it is in there already: oven off, door ajar, gloves and goggles, do not move it while it is soft.',
    ],
  },
  'hot-oils': {
    answer: ['No: let the oils cool first, to 35 to 50 °C (95 to 122 °F), and the lye water too.'],
    why: [
      'Hot oils with lye thicken at once, may boil up and spit, and the loaf overheats.',
      'Stand the pot in cold water, stir, measure.',
      'Then pour the lye water in slowly, goggles and gloves on.',
    ],
  },
};
