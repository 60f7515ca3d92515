/** The core against other libraries, all on one slab from text: 28 ft by 18 ft, 5 in thick. */
import { Decimal } from 'decimal.js';
import Qty from 'js-quantities';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { length, slabVolume } from '../../src/index';
import type { Case } from './case';

const math = create(all as FactoryFunctionMap, { number: 'BigNumber' });
const Bare = Decimal.clone({ defaults: true, precision: 60 });

const INPUT = {
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '5 in',
} as const;

const [L, W, T] = [length('28 ft'), length('18 ft'), length('5 in')];
const [l, w, t] = [new Bare('8.5344'), new Bare('5.4864'), new Bare('0.127')];

export const cases: readonly Case[] = [
  {
    name: 'mathjs BigNumber, expression from text',
    run: () => math.evaluate('28 ft * 18 ft * 5 inch to yd^3'),
  },
  {
    name: 'mathjs BigNumber, three units from text',
    run: () =>
      math.multiply(math.multiply(math.unit('28 ft'), math.unit('18 ft')), math.unit('5 inch')).to('yd^3'),
  },
  {
    name: 'js-quantities (binary), from text',
    run: () => new Qty('28 ft').mul(new Qty('18 ft')).mul(new Qty('5 in')).to('yd3').toString(),
  },
  {
    name: 'decimal.js bare, from text',
    run: () =>
      new Bare('28')
        .times('0.3048')
        .times(new Bare('18').times('0.3048'))
        .times(new Bare('5').times('0.0254'))
        .div('0.764554857984'),
  },
  {
    name: 'our quantities, from text',
    run: () => length('28 ft').times(length('18 ft')).times(length('5 in')),
  },
  {
    name: 'our slabVolume: checked input, working, cautions',
    run: () => slabVolume(INPUT).working.length,
  },
  { name: 'decimal.js bare, two products', run: () => l.times(w).times(t) },
  { name: 'our quantities, two products', run: () => L.times(W).times(T) },
];

export const ratios: readonly (readonly [slow: string, fast: string, what: string])[] = [
  [
    'mathjs BigNumber, expression from text',
    'our slabVolume: checked input, working, cautions',
    'mathjs expression ÷ our slabVolume',
  ],
  [
    'mathjs BigNumber, three units from text',
    'our slabVolume: checked input, working, cautions',
    'mathjs units ÷ our slabVolume',
  ],
  ['our quantities, two products', 'decimal.js bare, two products', 'our products ÷ decimal.js bare'],
  [
    'our quantities, from text',
    'decimal.js bare, from text',
    'our products from text ÷ decimal.js bare from text',
  ],
];
