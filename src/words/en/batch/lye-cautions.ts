import type { LyeCautionId } from '../../../engine/batch/lye/lye-cautions.ts';

const whole: Readonly<Record<LyeCautionId, string>> = {
  'lye-burns': 'Lye burns skin and eyes severely, and so does raw batter for a day or two.',
  'lye-gear':
    'Wear sealed goggles, chemical-resistant gloves, long sleeves and closed shoes until all is washed up.',
  'lye-into-water': 'Add lye slowly to cold water, never water to lye: it gets very hot at once.',
  'lye-air': 'Mix outdoors or in a strong draught, and keep your face away from the steam.',
  'lye-children': 'Keep children and pets out of the room. Never leave lye alone.',
  'lye-by-scale': 'Weigh lye on a scale, never by spoon or cup.',
  'lye-aluminium': 'No aluminium, tin or zinc: lye attacks them and aluminium gives off flammable hydrogen.',
  'lye-vessel': 'Use heatproof polypropylene or stainless steel, not glass. Never close the vessel tight.',
  'lye-label': 'Label the jug “LYE, caustic” before it is filled.',
  'lye-first-aid':
    'In the eyes: rinse at once with running water for at least 30 minutes and get medical help. On skin: clothes off, rinse long. No vinegar.',
  'tested-recipe':
    'This does not replace a tested recipe, your local rules or a licensed product assessment. Test small first.',
};

/** The cautions of lye, whole and in short for whoever has met them. */
export const lyeCautions = {
  lyeCautions: whole,
  /** What is left of the other lye cautions for whoever has met them. */
  lyeBrief:
    'Lye burns: strong draught, no aluminium, open polypropylene jug, labelled, lye by scale, children and pets out.',
  /** Those that stay a line of their own. */
  lyeBriefs: {
    'lye-gear': 'Sealed goggles, gloves, long sleeves, closed shoes.',
    'lye-first-aid':
      'In the eyes: rinse at once for 30 minutes, get medical help. On skin: clothes off, rinse long. No vinegar.',
  },
};
