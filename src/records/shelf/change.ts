import type {
  Calibration,
  Change,
  DishTestResult,
  Ingredients,
  NewItem,
  Outcome,
  Shelf,
  SpoonWeight,
} from './shelf.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-name-taken': { readonly name: string };
    'shelf-name-unfit': { readonly most: number };
    'shelf-full': { readonly most: number };
    'shelf-grams-unfit': { readonly grams: number; readonly most: number };
    'shelf-pigment-unfit': { readonly percent: number };
    'shelf-spoon-unfit': { readonly grams: number; readonly least: number; readonly most: number };
    'shelf-not-enough': { readonly name: string; readonly asked: number; readonly left: number };
    'shelf-amount-unknown': { readonly name: string };
  }
}

export declare function addItem(shelf: Shelf, item: NewItem, change: Change): Promise<Outcome>;
/** Takes grams off; refuses more than is left, or when nobody said how much there is. */
export declare function useItem(shelf: Shelf, asked: string, grams: number, change: Change): Promise<Outcome>;
/** Puts grams on. */
export declare function restockItem(
  shelf: Shelf,
  asked: string,
  grams: number,
  change: Change,
): Promise<Outcome>;
export declare function removeItem(shelf: Shelf, asked: string, change: Change): Promise<Outcome>;
export declare function dishTest(
  shelf: Shelf,
  asked: string,
  result: DishTestResult,
  change: Change,
): Promise<Outcome>;
/** What one level teaspoon of it weighs. */
export declare function weighSpoon(
  shelf: Shelf,
  asked: string,
  weight: SpoonWeight,
  change: Change,
): Promise<Outcome>;
/** A new lot: dish test, spoon weight and calibration start anew; the grams, if given, are added. */
export declare function startLot(
  shelf: Shelf,
  asked: string,
  lot: { readonly label?: string | undefined; readonly grams?: number | undefined },
  change: Change,
): Promise<Outcome>;
export declare function setLowMark(
  shelf: Shelf,
  asked: string,
  grams: number,
  change: Change,
): Promise<Outcome>;
export declare function keepIngredients(
  shelf: Shelf,
  asked: string,
  ingredients: Ingredients,
  change: Change,
): Promise<Outcome>;
export declare function keepCalibration(
  shelf: Shelf,
  asked: string,
  calibration: Calibration,
  change: Change,
): Promise<Outcome>;
