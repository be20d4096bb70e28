import { remembered } from '../../colourants/catalogue/origins.ts';

/** What plant colours have in common. */
export const plant = {
  role: 'botanical',
  kind: 'botanical',
  ci: [],
  us: 'none',
  light: 'fades',
  confidence: 'medium',
  source: remembered('food chemistry and indicator tables'),
} as const;
/** How lye changes a colour: not at all ... */
export const stable = { behaviour: 'stable' } as const;
/** ... it is gone, and what is left ... */
export const lost = (towards: string) => ({ behaviour: 'destroyed', towards }) as const;
/** ... it turns ... */
export const shifts = (towards: string) => ({ behaviour: 'shifts', towards }) as const;
/** ... or it hangs on how alkaline the batter is. */
export const varies = (towards: string) =>
  ({ behaviour: 'conditional', towards, on: 'how-alkaline' }) as const;
