/**
 * Random inputs are the same at every run, so that a failure can be made again; `FUZZ_SEED` gives others.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env['FUZZ_SEED'] ?? 20_261_125) });
