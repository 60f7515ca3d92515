/** `npm run repl`: to check a hand estimate. */
import { session } from './repl-session';

console.log('Everything is loaded. Try: slopeOf({ slope: "1/4 in/ft", over: "12 ft" }), or help()');
session();
