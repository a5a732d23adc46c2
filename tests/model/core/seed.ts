/** How many histories are played: MODEL_RUNS, or 2,000. */
export const runs = Number(process.env['MODEL_RUNS'] ?? 2000);

/** The seed of this run: MODEL_SEED plays a run again, else it is a new one each time. */
export const seed = Number(process.env['MODEL_SEED'] ?? Math.floor(Math.random() * 2 ** 31));
