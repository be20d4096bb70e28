import { readFile } from 'node:fs/promises';
import { env, InferenceSession, Tensor } from 'onnxruntime-web';

/**
 * What the network says of a square picture: logits of the bar's map and of each finding's, rows of `side` values, one
 * map after another; and logits of the answers, each finding's, then "no soap in view" and
 * "too poor to read".
 */
export type Said = { readonly side: number; readonly maps: Float32Array; readonly answers: Float32Array };

// The WebAssembly files lie in node_modules/onnxruntime-web/dist and are read from there; nothing is fetched. One
// thread: each worker is one already, and sums in one order give the same answer every time.
env.wasm.numThreads = 1;
env.wasm.proxy = false;

let session: Promise<InferenceSession> | undefined;

/** Opens the model when a photo is first read in this thread. */
const opened = () =>
  (session ??= readFile(new URL('../model/reader.onnx', import.meta.url)).then(
    async model =>
      await InferenceSession.create(model, { executionProviders: ['wasm'], graphOptimizationLevel: 'all' }),
  ));

/** Runs the network on a square of sRGB values 0 to 1, its three channels one after another; `side` a multiple of 32. */
export async function said(square: Float32Array, side: number): Promise<Said> {
  const reader = await opened();
  const { maps, answers } = await reader.run({ image: new Tensor('float32', square, [1, 3, side, side]) });
  if (!maps || !answers) throw new Error('the model lacks an output');
  return {
    side: side / 2,
    maps: maps.data as Float32Array,
    answers: answers.data as Float32Array,
  };
}
