declare module 'spectral.js' {
  export class Color {
    constructor(value: string | readonly number[]);
    readonly XYZ: readonly [number, number, number];
    readonly lab?: readonly number[];
    toString(options?: object): string;
  }
  export function mix(...parts: readonly (readonly [Color, number])[]): Color;
}
