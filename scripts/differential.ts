/**
 * Recomputes random jobs by ways that share no code with the library, and prints what was compared, the greatest
 * deviation and every disagreement. A job is made again by its seed: `npm run differential -- 1 SEED FAMILY`.
 *
 *     npm run differential -- [comparisons, 40000] [seed] [family]
 */
import { compareFamily, FAMILIES, KNOWN, SHARES, type Tally } from '../test/support/differential/run';

const [wanted = '40000', seed = '20261127', only] = process.argv.slice(2);
const SHOWN = 20;
/** Of an input, where it is long. */
const LONGEST = 4000;

const listed = (counts: ReadonlyMap<string, number>): string =>
  [...counts].map(([name, n]) => `${n} ${name}`).join('; ');

function report(tally: Tally, by: string): void {
  const { name, jobs, figures, deviation, skipped, known, disagreements } = tally;
  console.log(`${name}: ${by}`);
  console.log(
    `  ${jobs} jobs, ${figures} figures; greatest relative deviation ${deviation.toExponential(1)}; ${disagreements.length} disagreements`,
  );
  if (skipped.size > 0) console.log(`  not compared: ${listed(skipped)}`);
  if (known.size > 0) console.log(`  known differences: ${listed(known)}`);
  for (const { seed: at, said, input } of disagreements.slice(0, SHOWN)) {
    console.log(`  seed ${at}: ${said.slice(0, 3).join('; ')}`);
    console.log(`    ${JSON.stringify(input).slice(0, LONGEST)}`);
  }
}

async function main(): Promise<void> {
  const families = FAMILIES.filter(({ name }) => !only || name === only);
  let [jobs, figures, disagreed, differed] = [0, 0, 0, 0];
  for (const family of families) {
    const share = only ? Number(wanted) : Math.ceil((Number(wanted) * family.share) / SHARES);
    const tally = await compareFamily(family, share, Number(seed));
    report(tally, family.by);
    jobs += tally.jobs;
    figures += tally.figures;
    disagreed += tally.disagreements.length;
    differed += [...tally.known.values()].reduce((a, b) => a + b, 0);
  }
  const { user, system } = process.cpuUsage();
  console.log(
    `\n${jobs} jobs recomputed, ${figures} figures, ${disagreed} disagreements, ${differed} known differences; seed ${seed}; ${Math.round((user + system) / 1e6)} s of processor time`,
  );
  for (const [name, why] of Object.entries(KNOWN)) console.log(`  ${name}: ${why}`);
  process.exitCode = disagreed > 0 ? 1 : 0;
}

void main();
