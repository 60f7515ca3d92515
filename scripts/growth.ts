/**
 * Grows every size in the input of every calculation and plan until it is refused, and prints how large a
 * job is taken, how long it takes there and how the time grows.
 *
 *     npm run growth -- [calculation, or its beginning] [part of what grows]
 *
 * The exit code is 1 where anything that is taken takes more than a second, where time grows beyond
 * proportion without a reason in test/support/growth/known.ts, or where a refusal does not name the limit.
 */
import { SIZES } from '../test/support/growth/all';
import { measures } from '../test/support/growth/measures';
import { type Grown, grow } from '../test/support/growth/run';

const [only = '', part = ''] = process.argv.slice(2);
const wanted = [...SIZES, ...measures()].filter(({ of, what }) => of.startsWith(only) && what.includes(part));

const line = ({ growth, largest, ms, exponent, beyond, faults }: Grown): string => {
  const cells = [
    growth.of.padEnd(22),
    growth.what.padEnd(48),
    String(largest).padStart(9),
    `${ms.toFixed(0)} ms`.padStart(9),
    (exponent === undefined ? '-' : exponent.toFixed(2)).padStart(6),
  ];
  return `${cells.join(' ')}  ${beyond ?? 'not refused'}${faults.length > 0 ? `  !! ${faults.join('; ')}` : ''}`;
};

console.log(
  `${'calculation'.padEnd(22)} ${'what grows'.padEnd(48)} ${'largest'.padStart(9)} ${'time'.padStart(9)} ${'growth'.padStart(6)}  beyond`,
);
let wrong = 0;
for (const growth of wanted) {
  const grown = grow(growth);
  // Of the many measures that are only scaled, those that are worth a look.
  if (growth.anyRefusal && growth.to >= 2 ** 30 && grown.faults.length === 0 && grown.ms < 10) continue;
  if (grown.faults.length > 0) wrong += 1;
  console.log(line(grown));
}
console.log(`\n${wanted.length} sizes grown, ${wrong} with a fault`);
process.exitCode = wrong > 0 ? 1 : 0;
