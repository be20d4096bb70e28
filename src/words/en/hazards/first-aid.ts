import type { EmergencyId } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { householdFirstAid } from './first-aid-household.ts';

/**
 * First aid as published: NIOSH Pocket Guide, sodium hydroxide and its first aid codes (irrigate eyes at
 * once; dust off
 * solids, then flush skin; breathing; swallowed: medical attention at once); International Chemical Safety
 * Cards 0360
 * (sodium hydroxide: rinse the mouth, no vomiting, at most one small glass of water, skin 15 minutes or more,
 * half-upright
 * after fumes) and 0165 (hydrogen sulfide; hydrogen sulfide fact sheets: the nose goes blind, no rescue
 * without breathing apparatus); New Jersey Right to Know fact sheet (eyes at least 30 minutes); MedlinePlus
 * on lye (nothing sour to neutralise). Animals: common practice of vets.
 */
export const firstAid = {
  /** Asked why a colour with ultramarine smells, where nobody feels it and no acid is told. */
  ultramarineWhiff: spaced`
    A whiff of rotten eggs with ultramarine is a little hydrogen sulfide, a poisonous gas: open the
    windows, stand back until it is gone, and keep every acid away. Where it is strong, or anybody has a
    headache, sore eyes or feels dizzy or sick: everybody out, then /first-aid.
  `,
  headlines: {
    ...householdFirstAid.headlines,
    'lye-swallowed': 'Lye or raw soap in the mouth: rinse, do not vomit, call now.',
    'lye-eye': 'Lye or raw soap in the eye: rinse with water now, before you read on.',
    'lye-skin': 'Lye or raw soap on skin: running water now.',
    'fumes-inhaled': 'Fumes or powder breathed in: out into fresh air now.',
    'hydrogen-from-metal': 'Lye eats this metal and makes hydrogen, which can explode: no flames, step back.',
    'hydrogen-sulfide': 'Rotten-egg smell is a poisonous gas (hydrogen sulfide): everybody out now.',
    'lye-eruption': 'The lye is out of control: step back, leave it, keep everybody away.',
    'animal-exposed': 'An animal met lye or raw soap: water, no licking, call a vet now.',
    'skin-reaction':
      'A skin reaction: stop using this soap and rinse. Swollen face or throat, or hard breathing: call your emergency number now.',
  } satisfies Record<EmergencyId, string>,
  steps: {
    ...householdFirstAid.steps,
    'lye-swallowed': ({ call, poison }) => [
      'Rinse the mouth with water and spit it out, several times.',
      `Call ${call} now, also when it seems fine${poison}. Short of breath, drooling, cannot swallow, sleepy: ambulance.`,
      'Do not make them vomit: it burns a second time.',
      'No vinegar, no lemon, nothing to “neutralise” it.',
      'Only if fully awake and able to swallow: a few sips of water, one small glass at most. Nothing else.',
      'Sit upright. Take the lye container along.',
    ],
    'lye-eye': ({ call, poison }) => [
      'Hold the eye open under gently running water, the hurt eye lowest. Contact lenses out if that is easy.',
      'Keep rinsing for at least 30 minutes by the clock. Tap water is right.',
      `Have somebody call ${call} meanwhile${poison}.`,
      'Then to a hospital or eye doctor at once, even if it feels better.',
      'No vinegar, no drops, no rubbing.',
    ],
    'lye-skin': ({ call, poison }) => [
      'Dry flakes: brush them off first. Then running water, plenty, for at least 20 minutes.',
      'Under the water, take off clothes, gloves, shoes and rings that it touched.',
      'Still slippery or stinging means lye is still there: keep rinsing.',
      'No vinegar, no lemon, no cream.',
      `Call ${call} for a child, the face, hands, feet or groin, anything larger than a coin, white or blistered skin${poison}.`,
    ],
    'fumes-inhaled': ({ call, poison }) => [
      'Go outside, or to an open window in another room; rinse powder out of mouth and nose. Take the others and the animals along.',
      'Sit upright, loosen tight clothes, breathe calmly. Do not lie flat.',
      `Call ${call} now if breathing is hard or whistles, with asthma, a tight chest, blue lips, or fainting.`,
      `Cough or sore throat that does not ease within minutes: call too${poison}.`,
      'Stay out of the room until it is aired. Somebody who collapsed in there: leave it to the fire service.',
    ],
    'hydrogen-from-metal': ({ call }) => [
      'Flames, stove and cigarettes out. No sparks. Open the windows.',
      'Step back; keep children and animals away. Do not lean over it and do not breathe what rises.',
      'No lid, no vinegar, no water into it. It is hot and may spit.',
      'Only if it is calm and you wear goggles and gloves: carry it outside, away from you. Else leave it and wait.',
      `Call ${call} if it boils over, smokes, or the pot gives way.`,
      'It is not for use afterwards. Lye only ever meets stainless steel, or plastic marked 5 (PP).',
    ],
    'hydrogen-sulfide': ({ call, poison }) => [
      'Everybody and every animal out into fresh air. Leave everything as it stands.',
      'Do not smell for it again: the nose stops noticing this gas.',
      `Call ${call} at once for dizziness, headache, sickness, hard breathing or fainting${poison}.`,
      'Eyes that sting or run: rinse with water. Sit upright.',
      'Nobody goes back in to fetch anything or anybody: that is for the fire service.',
      'Add nothing to it. Acid (vinegar, lemon, citric acid) and ultramarine or sulphur never meet.',
    ],
    'lye-eruption': ({ call, poison }) => [
      'Step back and keep everybody, animals too, out of the room. Do not pick the jug up.',
      'Add nothing: no water, no vinegar. Do not lean over it; do not breathe the steam. Open a window if you can reach it.',
      'On skin: running water for at least 20 minutes. In an eye: at least 30 minutes, then hospital.',
      `Call ${call} if anybody is hurt or coughs, or if it spreads or melts things${poison}.`,
      'Wait until it is quiet and cold. Then with goggles, gloves and covered skin: sweep up what is dry, soak up what is wet, wash with plenty of water.',
    ],
    'animal-exposed': () => [
      'Put gloves on. Keep it from licking: hold it in a towel.',
      'On fur, paws or in eyes: lukewarm running water for at least 20 minutes.',
      'In the mouth: let water run through from the side, if it lets you. Do not force it.',
      'Call a vet or an animal poison line now, also when it seems fine.',
      'Do not make it vomit. No vinegar, no milk, no oil.',
      'Take the container or the recipe along.',
    ],
    'skin-reaction': ({ call, poison }) => [
      `Swollen lips, tongue, face or throat, or hard breathing: call ${call} now.`,
      'Rinse the skin with plenty of cool water, pat it dry. No scrubbing, no vinegar, nothing new on it.',
      'If it burns like lye: keep rinsing for at least 20 minutes.',
      `Doctor or pharmacist for blisters, near the eyes, for a baby, or if it spreads or is there tomorrow${poison}.`,
      'Nobody uses this soap until you know why. Keep the bar and its recipe.',
    ],
  } satisfies Record<EmergencyId, (v: { call: string; poison: string }) => readonly string[]>,
  /** One line for what is told beside the emergency that is shown whole. */
  also: (v: { what: string }) => `Also: ${v.what}.`,
  short: {
    ...householdFirstAid.short,
    'lye-swallowed': 'lye in the mouth: rinse and spit, no vomiting, call now',
    'lye-eye': 'lye in an eye: running water, 30 minutes, then hospital',
    'lye-skin': 'lye on skin: running water, 20 minutes',
    'fumes-inhaled': 'fumes breathed in: fresh air, sit upright, call if breathing is hard',
    'hydrogen-from-metal': 'metal in lye: no flames, step back',
    'hydrogen-sulfide': 'rotten-egg smell: everybody out, nobody goes back in',
    'lye-eruption': 'lye out of control: step back, add nothing',
    'animal-exposed': 'the animal: lukewarm water, 20 minutes, no licking, call a vet',
    'skin-reaction': 'skin reaction: stop using the soap, rinse',
  } satisfies Record<EmergencyId, string>,
  /** In place of the headline where throat, tongue or face swell or the breath fails: an allergic shock kills in minutes. */
  airway: (v: { call: string }) => `Swollen throat or face, or hard breathing: call ${v.call} now.`,
  /** In place of headline and steps where it is soap that rises in its mould: heat of its own, and no jug of lye. */
  inMould: {
    headline: 'The soap has overheated. Goggles and gloves, children out, a tray under the mould, cover off.',
    steps: ({ call, poison }: { call: string; poison: string }) => [
      'Goggles, gloves, long sleeves; children and animals out of the room. Face away: it is hot and caustic.',
      'A tray under the mould. Towel and lid off, out of the oven, onto a cold floor, a fan on it.',
      'It climbs to the rim: stir it down with a long spoon, or spoon some into a bigger pot. Add nothing.',
      'It spits, smokes or runs off the tray: step back, leave it, keep everybody away.',
      `On skin: running water for at least 20 minutes. In an eye: at least 30 minutes, then hospital. Call ${call} if anybody is hurt${poison}.`,
    ],
  },
  yourNumber: 'your emergency number',
  number: (v: { number: string; country: string }) =>
    `${v.number} (${v.country}; elsewhere your emergency number)`,
  poison: (v: { number: string; country: string }) => `; poison centre ${v.number} (${v.country})`,
  anyPoison: ', or your poison centre',
  stillHere: householdFirstAid.stillHere,
  callNow: householdFirstAid.callNow,
  ifHurt: 'If somebody is hurt:',
  misread: 'Did I misread you and nobody is in danger? Ask again with the words “false alarm”.',
  share: 'Show this to everyone here',
  waterFirst: 'Lye or raw soap in an eye or on skin: running water on it now, then read on.',
  which: 'What happened? Choose one, or tell me in your own words.',
  names: {
    ...householdFirstAid.names,
    'lye-swallowed': 'swallowed, or in the mouth',
    'lye-eye': 'in an eye',
    'lye-skin': 'on skin or clothes',
    'fumes-inhaled': 'fumes or powder breathed in',
    'hydrogen-from-metal': 'aluminium, zinc or tin met lye',
    'hydrogen-sulfide': 'rotten-egg smell',
    'lye-eruption': 'the jug boils, smokes or melts',
    'animal-exposed': 'an animal met lye or raw soap',
    'skin-reaction': 'rash or itch from soap',
  } satisfies Record<EmergencyId, string>,
};
