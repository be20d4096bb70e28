import type { UnweighedId } from '../../../engine/hazards/index.ts';

/**
 * Fire: fire services' pages on pans that burn (States of Jersey, "Dealing with a fire in the kitchen"; Cornwall, advice
 * on chip pans): do not move it, heat off if that is safe, smother it, no water and no extinguisher on a pan of oil, leave
 * it to cool; if in doubt out, door shut, call. The metal lid for the blanket, the oven door, stop-drop-roll and cooling
 * a burn for 20 minutes: from memory.
 * Poisonous gas: Northern New England Poison Center, household bleach (with acid or ammonia; worse with asthma; clothes
 * off); first aid for chlorine of MedlinePlus and of the Estonian Rescue Board (fresh air, splashed clothes off, skin and
 * eyes 15 minutes under water). Leaving a rescue to the fire service: hydrogen sulfide fact sheets ("never attempt a
 * rescue"). Holding the breath, windows only from outside: from memory.
 */
export const householdFirstAid = {
  headlines: {
    fire: 'Fire: lid on and heat off if you can do it safely, never water. Else out, and call.',
    'toxic-gas': 'Cleaners that react make a poisonous gas: everybody out into fresh air now.',
  } satisfies Record<UnweighedId, string>,
  steps: {
    fire: ({ call }) => [
      'Small and in the pot: slide a metal lid or baking tray over it and turn the heat off. Leave the lid on until it is cold.',
      'Never water on burning oil or wax, nor an extinguisher’s jet into the pot: it flares up. Do not carry the pot.',
      'Oven or microwave: keep the door shut and switch it off.',
      `Larger than the pot, or not out at once: everybody out, shut the door behind you, call ${call} from outside. Do not go back in.`,
      'Clothes on fire: stop, drop, roll. Burnt skin: cool running water for 20 minutes, nothing else on it.',
    ],
    'toxic-gas': ({ call, poison }) => [
      'Everybody and every animal out into fresh air. Hold your breath on the way; leave everything as it stands.',
      `Hard breathing, a tight chest, wheezing, fainting: call ${call} now. Cough, or eyes or throat that sting: call too${poison}.`,
      'Eyes that sting: rinse with water for 15 minutes. Splashed clothes off, skin under running water.',
      'Add nothing to it, and do not go back in to pour it away or to fetch anybody: that is for the fire service.',
      'Open windows only from outside, or on your way out. Stay out until the smell is gone.',
      'Bleach never meets vinegar, any other acid, ammonia or another cleaner.',
    ],
  } satisfies Record<UnweighedId, (v: { call: string; poison: string }) => readonly string[]>,
  short: {
    fire: 'fire: lid on, heat off, never water, else out and call',
    'toxic-gas': 'cleaners that react: everybody out into fresh air',
  } satisfies Record<UnweighedId, string>,
  names: {
    fire: 'fire, or oil that burns',
    'toxic-gas': 'bleach met acid or ammonia; chlorine smell',
  } satisfies Record<UnweighedId, string>,
  /** Kept under every answer where a member took an alarm back. */
  stillHere: 'If somebody is hurt: /first-aid',
  callNow: (v: { call: string }) => `In danger now: call ${v.call}.`,
};
