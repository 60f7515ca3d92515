/**
 * The rear yard of a corner bakery as one job file: its purchase list, its bid, and a sheet that a crew carries. All
 * invented. `npm run demo -- metric` takes the metric one; `npm run demo -- pages <folder>` writes its pages,
 * `-- pages <folder> metric` those of the metric one.
 */

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { jointPlan, sitePlan } from '../src/drawing/index';
import { bidOfJob, type ItemPrice, type JobInput, reckonJob } from '../src/index';
import { ITEM_NAMES } from '../src/job/item-names';
import { jobHtml, jobParts, purchaseRows, quoteHtml, textSheet } from '../src/report/index';

const given = process.argv.slice(2);
const metric = given.includes('metric');
const [kind, folder] = given.filter((word) => word !== 'metric');
const file = new URL(`demo/rear-yard${metric ? '-metric' : ''}.json`, import.meta.url);
const document = JSON.parse(readFileSync(file, 'utf8')) as JobInput;
const job = reckonJob(document);
const title = document.name ?? '';

/** Prices that a small contractor might pay, invented like the rest. */
const PRICES: readonly ItemPrice[] = [
  { item: 'ready-mix', price: { amount: '168 USD', per: metric ? '0.75 m3' : '1 yd3' } },
  { item: 'base', price: { amount: '31 USD', per: metric ? '1 tonne' : '1 ton' } },
  { item: 'haul-away', price: { amount: '22 USD', per: metric ? '1 m3' : '1 yd3' }, kind: 'fee' },
  { item: 'bar', price: { amount: '11.40 USD', per: '1 each' } },
  { item: 'tie', price: { amount: '3 USD', per: '100 each' } },
  { item: 'bar-support', price: { amount: '0.65 USD', per: '1 each' } },
  { item: 'mesh', price: { amount: '36 USD', per: '1 each' } },
  { item: 'board', price: { amount: '13 USD', per: '1 each' } },
  { item: 'stake', price: { amount: '1.20 USD', per: '1 each' } },
  { item: 'isolation-board', price: { amount: '9 USD', per: metric ? '3 m' : '10 ft' } },
  { item: 'saw-cut', price: { amount: '12 USD', per: metric ? '3 m' : '10 ft' }, kind: 'subcontract' },
];

/** The job with its bid. */
const bidOf = () =>
  bidOfJob({
    ...document,
    prices: {
      items: PRICES,
      lines: [
        {
          kind: 'labor',
          name: 'Form, place and finish',
          hours: '26 h',
          crew: [{ count: 4, wage: { amount: '34 USD', per: '1 h' } }],
        },
      ],
      contingency: { share: '5%' },
      profit: { markup: '20%' },
    },
  } as JobInput);

function printPages(into: string): void {
  mkdirSync(into, { recursive: true });
  const joints = job.parts.find(({ part }) => part === 'joints');
  const pictures = [
    ...(joints ? [{ title: 'Joints of the delivery slab', svg: jointPlan(joints.input as never) }] : []),
    { title: 'The yard', svg: sitePlan(job, { width: 660 }), phone: sitePlan(job, { width: 358 }) },
  ];
  for (const page of ['crew', 'yard', 'calculation'] as const) {
    writeFileSync(join(into, `${page}.html`), jobHtml(title, job, page, page === 'yard' ? {} : { pictures }));
  }
  const quote = { bid: bidOf().bid, job, stands: 'four weeks from today', prices: 'elements' } as const;
  writeFileSync(join(into, 'customer.html'), quoteHtml(title, quote, { pictures: pictures.slice(-1) }));
}

if (kind === 'pages') printPages(folder ?? 'pages');
else {
  console.log('To buy');
  for (const { item, kind: of, quantity, elements } of purchaseRows(job)) {
    console.log(`  ${`${item}${of === '' ? '' : `, ${of}`}:`.padEnd(64)} ${quantity.padEnd(10)} ${elements}`);
  }
  const { bid, unpriced } = bidOf();
  const { cost, price } = bid.figures;
  console.log(`\nBid: ${cost.format()} at cost, ${price.format()} to the customer`);
  const lacking = unpriced.map(({ item }) => ITEM_NAMES[item]).join(', ');
  console.log(lacking === '' ? '' : `Without a price: ${lacking}\n`);
  console.log(textSheet(title, jobParts(job), { detail: 'crew', date: 'to be poured on a Tuesday in May' }));
}
