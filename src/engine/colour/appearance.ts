/** CIELAB under D65, 2 degree observer. */
export type Lab = { readonly l: number; readonly a: number; readonly b: number };
