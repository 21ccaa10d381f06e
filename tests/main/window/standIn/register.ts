import { registerHooks } from 'node:module';

// Whoever asks for electron gets the stand-in beside this file.
registerHooks({
  resolve(name, context, next) {
    if (name !== 'electron') return next(name, context);
    return { url: new URL('./electron.ts', import.meta.url).href, shortCircuit: true };
  },
});
