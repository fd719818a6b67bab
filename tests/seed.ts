import fc from 'fast-check';

// The same inputs in every run, so that a failure is about the change that was made and not about luck.
// `npm run fuzz` draws new ones each time.
if (import.meta.env.MODE !== 'fuzz')
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20261125 });
