import { remembered } from '../../colourants/catalogue/origins.ts';

export const plant = {
  role: 'botanical',
  kind: 'botanical',
  ci: [],
  us: 'none',
  light: 'fades',
  confidence: 'medium',
  source: remembered('food chemistry and indicator tables'),
} as const;
export const stable = { behaviour: 'stable' } as const;
export const lost = (towards: string) => ({ behaviour: 'destroyed', towards }) as const;
export const shifts = (towards: string) => ({ behaviour: 'shifts', towards }) as const;
export const varies = (towards: string) =>
  ({ behaviour: 'conditional', towards, on: 'how-alkaline' }) as const;
