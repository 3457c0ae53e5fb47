/**
 * Property tests try the same values on every run, so that a failure is the doing of what was changed. `SEED=n npm test`
 * tries others.
 */
import { configureGlobal } from 'fast-check';

configureGlobal({ seed: Number(process.env['SEED'] ?? 1871) });
