/**
 * Tries the relations that must hold for every calculation on very many inputs, and prints the figures.
 *
 *     npm run relations -- [accepted inputs in all, 100000] [seed] [calculation]
 */
import { calculations as catalog } from '../src/catalog/all';
import { RELATIONS } from '../test/support/relations/relations';
import { tryRelations } from '../test/support/relations/run';

const [wanted = '100000', seed = '20261127', only] = process.argv.slice(2);
const ids = catalog.map(({ id }) => id).filter((id) => !only || id === only);
const share = Math.ceil(Number(wanted) / ids.length);
const totals = new Map<string, { compared: number; objected: number }>();
let [tried, accepted, objected] = [0, 0, 0];

for (const id of ids) {
  const tally = tryRelations(id, share, Number(seed));
  tried += tally.tried;
  accepted += tally.accepted;
  objected += tally.objections.length;
  for (const { name } of RELATIONS) {
    const total = totals.get(name) ?? { compared: 0, objected: 0 };
    total.compared += tally.compared.get(name) ?? 0;
    total.objected += tally.objections.filter(({ relation }) => relation === name).length;
    totals.set(name, total);
  }
  const counts = [...tally.compared].map(([name, n]) => `${name} ${n}`).join(', ');
  console.log(`${id}: ${tally.accepted} of ${tally.tried} accepted; ${counts || 'nothing to compare'}`);
  const seen = new Set<string>();
  for (const { relation, said, input, other } of tally.objections) {
    const kind = `${relation} ${said.replace(/[\d.,/ -]+/g, '#')}`;
    if (seen.has(kind) || seen.size >= 5) continue;
    seen.add(kind);
    console.log(`  ${relation}: ${said}\n    ${JSON.stringify(input)}\n    ${JSON.stringify(other)}`);
  }
}

console.log(
  `\n${accepted} accepted of ${tried} tried (${Math.round((100 * accepted) / tried)}%), seed ${seed}`,
);
for (const [name, { compared, objected: n }] of totals)
  console.log(`  ${name}: ${compared} pairs, ${n} objections`);
process.exitCode = objected > 0 ? 1 : 0;
