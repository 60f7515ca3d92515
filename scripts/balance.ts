/**
 * Makes pours with the stated error model and counts in how many the range of the last load holds the truth.
 *
 *     npm run balance -- [pours] [seed]
 */
import { randoms } from '../test/steel/outlines';
import { balanceTried } from '../test/support/pour/balance';

const [pours = '10000', seed = '1'] = process.argv.slice(2);
const { held, short, width } = balanceTried(Number(pours), randoms(Number(seed)));
const percent = (n: number): string => `${((100 * n) / Number(pours)).toFixed(1)}%`;
console.log(`${pours} pours: low to high holds the truth in ${percent(held)}`);
console.log(`what is called for runs short in ${percent(short)}`);
console.log(`from low to high is ${(100 * width).toFixed(0)}% of what is needed, on average`);
