import type { Origin } from '../origin.ts';
import { type Faces, type Layer, type Section, type Substance, sectionOf } from './section.ts';
import type { HeatSetting, MouldMaterial } from './setting.ts';

/**
 * Of fresh soap, W/(m K). From memory: an estimate between vegetable oil, 0.165, and water, 0.6; it may lie from 0.2 to 0.4.
 */
const SOAP_CONDUCTIVITY = 0.3;

type Wall = Substance & { readonly thickness: number; readonly origin: Origin };
const WALL_ORIGIN: Origin = {
  trust: 'from memory',
  source: 'handbook values of building materials and plastics',
};

/** Usual walls: metres, W/(m K), J/(m3 K). */
export const WALLS: Readonly<Record<MouldMaterial, Wall>> = {
  silicone: { thickness: 0.003, conductivity: 0.2, capacity: 1.4e6, origin: WALL_ORIGIN },
  wood: { thickness: 0.015, conductivity: 0.12, capacity: 0.9e6, origin: WALL_ORIGIN },
  plastic: { thickness: 0.004, conductivity: 0.3, capacity: 1.7e6, origin: WALL_ORIGIN },
  cardboard: { thickness: 0.004, conductivity: 0.07, capacity: 0.3e6, origin: WALL_ORIGIN },
};

/** The inside of a mould as its heat sees it, centimetres. */
export type HeatShape =
  | { readonly shape: 'loaf'; readonly widthCm: number; readonly heightCm: number }
  | { readonly shape: 'round'; readonly diameterCm: number; readonly heightCm: number };

/**
 * About this wide, metres. Against cells of 2.5 mm the peak is within 0.6 K in the core and 0.8 K at the edge, and the
 * share that gels within a tenth (tests/engine/heat/solver.test.ts): far less than the band of what is not known.
 */
const CELL = 0.0075;
const FEWEST_CELLS = 5;

/**
 * The cross-section of a filled mould with its walls: half a slice of a loaf, or a cylinder about its axis. `transfer`
 * is the heat transfer of its outside, W/(m2 K), `soapCapacity` the batter's heat capacity, J/(m3 K), `cell` about how
 * wide its cells are, metres.
 */
export function mouldSection(
  shape: HeatShape,
  setting: Pick<HeatSetting, 'material'>,
  soapCapacity: number,
  transfer: number,
  cell = CELL,
): Section {
  const soap: Substance = { conductivity: SOAP_CONDUCTIVITY, capacity: soapCapacity };
  const layer = (thickness: number): Layer => ({
    thickness,
    cells: Math.max(FEWEST_CELLS, Math.round(thickness / cell)),
    substance: soap,
    soap: true,
  });
  const wall: Layer = {
    ...WALLS[setting.material],
    cells: 1,
    substance: WALLS[setting.material],
    soap: false,
  };
  const across = shape.shape === 'loaf' ? shape.widthCm : shape.diameterCm;
  const faces: Faces = { side: transfer, top: transfer, bottom: transfer };
  return sectionOf({
    shape: shape.shape === 'loaf' ? 'plane' : 'round',
    outward: [layer(across / 200), wall],
    upward: [wall, layer(shape.heightCm / 100)],
    faces,
  });
}
