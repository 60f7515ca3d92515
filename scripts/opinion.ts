/**
 * `npm run opinion`: misprints and slips that stand in print, and what the check of an estimate makes of each: those
 * named rightly and first, those that are roundings and were confirmed, and the rest with the reason.
 */
import { estimateCheck } from '../src/index';
import { sentenceOf } from '../src/quantity/words';
import { misprints } from '../test/opinion/more-misprints';
import { type Published, published } from '../test/opinion/published-slips';

interface Judged {
  readonly one: Published;
  readonly rank: number;
  readonly verdict: string;
  readonly told: string;
}

function judged(one: Published): Judged {
  const check = estimateCheck(one.calculation, one.input, one.claims);
  const codes = typeof one.is === 'string' ? [] : (one.is as readonly string[]);
  const rank = check.slips.findIndex(
    ({ slips }) => slips.length === 1 && codes.includes(slips[0]?.code ?? ''),
  );
  return { one, rank, verdict: check.verdict, told: sentenceOf(check.says) };
}

const all = [...published, ...misprints].map(judged);
const print = (title: string, some: readonly Judged[]): void => {
  console.log(`\n${title}: ${some.length}`);
  for (const { one, rank, verdict, told } of some)
    console.log(
      `  ${one.where}: ${one.what}\n    ${verdict}${rank > 0 ? `, in place ${rank + 1}` : ''}: ${told}`,
    );
};

const isSlip = ({ one }: Judged): boolean => typeof one.is !== 'string';
print(
  'Named rightly and first',
  all.filter((j) => isSlip(j) && j.rank === 0),
);
print(
  'Named, but not first',
  all.filter((j) => isSlip(j) && j.rank > 0),
);
print(
  'Not named',
  all.filter((j) => isSlip(j) && j.rank < 0),
);
print(
  'Roundings, not flagged',
  all.filter(({ one, verdict }) => one.is === 'rounding' && verdict !== 'differs'),
);
print(
  'Roundings, flagged',
  all.filter(({ one, verdict }) => one.is === 'rounding' && verdict === 'differs'),
);
print(
  'Off in print for no reason that is known',
  all.filter(({ one }) => one.is === 'unexplained'),
);
