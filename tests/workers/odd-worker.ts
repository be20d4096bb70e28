/** A thread that does what a test asks of it: never ends, waits, or dies. Named as jobs are, for the type only. */
export default async ({ input }: { input: { act: 'spin' | 'wait' | 'die'; ms?: number; said?: string } }) => {
  if (input.act === 'die') process.exit(1);
  if (input.act === 'spin') for (;;);
  await new Promise(resolve => setTimeout(resolve, input.ms ?? 0));
  return { output: input.said };
};
