/*
 * The layout of everything that is remembered, by whose it is and what it is about; how a key is written is in
 * `keys/key.ts`.
 */
export * from './keys/batches.ts';
export * from './keys/challenges.ts';
export * from './keys/deadlines.ts';
export * from './keys/flaws.ts';
export * from './keys/groups.ts';
export * from './keys/house.ts';
export { alone, part, textOfPart, under } from './keys/key.ts';
export * from './keys/members.ts';
export * from './keys/shelf.ts';
