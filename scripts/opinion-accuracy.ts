/**
 * Makes hand estimates with slips and without, has them checked, and counts how often the slip is named.
 *
 *     npm run opinion-accuracy -- [estimates, 20000] [seed]
 */
import { siOf } from '../src/opinion/scale';
import { answersPutBack, drawsWithin } from '../test/support/opinion/inverse';
import { falseAlarms, type Miss, nameOf, slipsTold, type Tally } from '../test/support/opinion/measured';
import { chance } from '../test/support/relations/random';

const [estimates = '20000', seed = '1'] = process.argv.slice(2);
const count = Number(estimates);
const percent = (n: number, of: number): string => `${((100 * n) / Math.max(1, of)).toFixed(2)}%`;

function told(title: string, tally: Tally): void {
  const { count: n, first, firstThree, asWell, hidden, crowded, confusion, calculations } = tally;
  console.log(
    `${title}: ${n} over ${calculations} calculations: first ${percent(first, n)}, in the first three ${percent(firstThree, n)}; another that gives the same as written ${percent(asWell, n)}; of those not in the first three, hidden by rounding ${percent(hidden, n)}, behind three that give the same as written ${percent(crowded, n)}`,
  );
  for (const [name, row] of [...confusion].sort()) {
    const named = [...row].sort((a, b) => b[1] - a[1]).slice(0, 6);
    console.log(`  ${name}: ${named.map(([code, times]) => `${code} ${times}`).join(', ')}`);
  }
}

function shown({ made, found, rank }: Miss): void {
  const { job, claims, meant, slips } = made;
  console.log(`- ${job.calculation.id}, ${nameOf(made)}: ${rank === 0 ? 'not named' : `in place ${rank}`}`);
  console.log(`    input ${JSON.stringify(job.input)}`);
  for (const { input, step, figure, otherwise } of slips)
    console.log(`    made at ${input ?? figure ?? `step ${step}`} ${otherwise?.formula ?? ''}`);
  claims.forEach(({ figure, claimed }, i) => {
    const right = found.claims[i];
    console.log(
      `    ${figure} ${String(claimed)}, right ${right?.reckoned.format()} (${right?.verdict}); meant ${meant[i]} of ${right && siOf(right.reckoned)}`,
    );
  });
  for (const { slips: named, gives, exact } of found.slips.slice(0, 3)) {
    const what = named.map(
      ({ code, input, step, figure }) => `${code} at ${input ?? figure ?? `step ${step}`}`,
    );
    console.log(
      `    found ${what.join(' + ')} giving ${gives.map(({ would }) => would.format()).join(', ')}${exact ? ', as written' : ''}`,
    );
  }
}

/** The worst first: those not named at all. */
const worst = (misses: readonly Miss[]): Miss[] =>
  [...misses]
    .sort((a, b) => (a.rank || 99) - (b.rank || 99))
    .reverse()
    .slice(0, 20);

console.log(`seed ${seed}\n`);
const one = slipsTold(count, 1, chance(Number(seed)));
told('one slip', one);
const alarms = falseAlarms(count, chance(Number(seed) + 1));
console.log(
  `\nright but rounded: ${count}: said to differ ${percent(alarms.differs.length, count)}, a slip named ${percent(alarms.named.length, count)}`,
);
const two = slipsTold(Math.ceil(count / 4), 2, chance(Number(seed) + 2));
console.log('');
told('two slips', two);
for (const [title, misses] of [
  ['one slip', one.misses],
  ['false alarms', alarms.named],
  ['two slips', two.misses],
] as const) {
  console.log(`\nworst of ${title}`);
  worst(misses).forEach(shown);
}

const back = answersPutBack(count, chance(Number(seed) + 3));
console.log(
  `\nsolveFor: ${back.tried} tried, ${back.refused} refused, ${back.objections.length} not put back`,
);
for (const said of back.objections.slice(0, 20)) console.log(`  ${said}`);
const draws = drawsWithin(count, chance(Number(seed) + 4));
console.log(
  `tolerances: ${draws.tried} draws, ${draws.refused} refused, ${draws.objections.length} outside of bounds, ${draws.outsideSamples} outside of what is said to be no bound`,
);
for (const said of draws.objections.slice(0, 20)) console.log(`  ${said}`);
