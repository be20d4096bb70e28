import { remembered } from '../../colourants/catalogue/origins.ts';

const handbook = remembered('pigment handbooks (Buxbaum): insoluble in dilute alkali');
const stable = { behaviour: 'stable' } as const;
/** What mineral pigments have in common. */
export const pigment = { role: 'pigment', alkali: stable, confidence: 'high', source: handbook } as const;
