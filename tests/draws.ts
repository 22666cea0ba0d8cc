import fc from 'fast-check';

/** Property tests draw the same values in every run, so that a failure is about the change at hand and comes back.
 *  `DRAWS=new npm test` draws others, and thousands of them: run it after work on what properties are tested on. */
fc.configureGlobal(process.env['DRAWS'] === 'new' ? { numRuns: 3000 } : { seed: 20261125 });
