/**
 * Makes bids and holds every amount of them, in two orders, to whole cents in big integers.
 *
 *     npm run bids -- [bids] [seed]
 */
import { bidObjections, madeBid } from '../test/support/job/bids';
import { chance } from '../test/support/relations/random';

const [bids = '100000', seed = '1'] = process.argv.slice(2);
const dice = chance(Number(seed));
let wrong = 0;
for (let n = 0; n < Number(bids); n++) {
  const objections = bidObjections(madeBid(dice), dice);
  if (objections.length === 0) continue;
  wrong += 1;
  if (wrong <= 10) console.log(`bid ${n + 1}: ${objections.join('; ')}`);
}
console.log(`${bids} bids, ${wrong} that do not come to the cent`);
process.exitCode = wrong > 0 ? 1 : 0;
