/** What a layer is made of. */
export type Substance = {
  /** Thermal conductivity, W/(m K). */
  readonly conductivity: number;
  /** Heat capacity by volume, J/(m3 K). */
  readonly capacity: number;
};

/** A layer of the section, cut into equal cells; metres. `soap` cells are those that react. */
export type Layer = {
  readonly thickness: number;
  readonly cells: number;
  readonly substance: Substance;
  readonly soap: boolean;
};

/** Heat transfer to the surroundings at each face, W/(m2 K); 0 is perfect insulation. */
export type Faces = { readonly side: number; readonly top: number; readonly bottom: number };

/**
 * A symmetric cross-section: `outward` layers from the middle to the side, `upward` layers from bottom to top. `plane`
 * is a slice of a long loaf (one half of it), `round` turns about the middle axis.
 */
export type SectionPlan = {
  readonly shape: 'plane' | 'round';
  readonly outward: readonly Layer[];
  readonly upward: readonly Layer[];
  readonly faces: Faces;
};

/**
 * The section as cells: arrays indexed `row * columns + column`, column 0 in the middle, row 0 at the bottom. Per metre
 * of length (plane) or per radian (round): conductances in W/K, capacities in J/K, volumes in m3.
 */
export type Section = {
  readonly columns: number;
  readonly rows: number;
  /** Of each column, metres. */
  readonly widths: Float64Array;
  readonly volume: Float64Array;
  readonly capacity: Float64Array;
  /** To the neighbour further out; 0 in the last column. */
  readonly outwardConductance: Float64Array;
  /** To the neighbour above; 0 in the top row. */
  readonly upwardConductance: Float64Array;
  /** To the surroundings. */
  readonly outsideConductance: Float64Array;
  /** Indices of the cells that are soap. */
  readonly soap: Int32Array;
};

type Cut = { readonly size: number; readonly from: number; readonly layer: Layer };

function cut(layers: readonly Layer[]): readonly Cut[] {
  let from = 0;
  return layers.flatMap(layer => {
    const size = layer.thickness / layer.cells;
    return Array.from({ length: layer.cells }, () => {
      const piece = { size, from, layer };
      from += size;
      return piece;
    });
  });
}

/** Where a wall crosses a soap layer there is wall; only soap by soap is soap. */
function substanceOf(column: Cut, row: Cut): { readonly substance: Substance; readonly soap: boolean } {
  if (!column.layer.soap) return { substance: column.layer.substance, soap: false };
  return { substance: row.layer.substance, soap: row.layer.soap };
}

/** Cuts a section into finite volumes. Pure geometry: temperatures come later. */
export function sectionOf(plan: SectionPlan): Section {
  const [across, up] = [cut(plan.outward), cut(plan.upward)];
  const [columns, rows] = [across.length, up.length];
  const round = plan.shape === 'round';
  /** Floor area of a column, and length of its outer edge. */
  const floor = ({ from, size }: Cut) => (round ? ((from + size) ** 2 - from ** 2) / 2 : size);
  const edge = ({ from, size }: Cut) => (round ? from + size : 1);
  const cells = () => new Float64Array(columns * rows);
  const section = {
    columns,
    rows,
    widths: Float64Array.from(across, ({ size }) => size),
    volume: cells(),
    capacity: cells(),
    outwardConductance: cells(),
    upwardConductance: cells(),
    outsideConductance: cells(),
  };
  const soap: number[] = [];
  up.forEach((row, r) => {
    across.forEach((column, c) => {
      const at = r * columns + c;
      const here = substanceOf(column, row);
      if (here.soap) soap.push(at);
      section.volume[at] = floor(column) * row.size;
      section.capacity[at] = section.volume[at] * here.substance.capacity;
      const [sideways, upwards] = [column.size / 2, row.size / 2].map(
        half => half / here.substance.conductivity,
      );
      const [further, above] = [across[c + 1], up[r + 1]];
      const side = edge(column) * row.size;
      if (further) {
        const there = further.size / 2 / substanceOf(further, row).substance.conductivity;
        section.outwardConductance[at] = side / (sideways! + there);
      } else section.outsideConductance[at]! += outside(side, sideways!, plan.faces.side);
      if (above) {
        const there = above.size / 2 / substanceOf(column, above).substance.conductivity;
        section.upwardConductance[at] = floor(column) / (upwards! + there);
      } else section.outsideConductance[at]! += outside(floor(column), upwards!, plan.faces.top);
      if (r === 0) section.outsideConductance[at]! += outside(floor(column), upwards!, plan.faces.bottom);
    });
  });
  return { ...section, soap: Int32Array.from(soap) };
}

/** From a cell's middle through its half and the surface film. */
function outside(area: number, halfResistance: number, transfer: number): number {
  return transfer === 0 ? 0 : area / (halfResistance + 1 / transfer);
}
