/** Volumes of one step are told in one unit: nobody checks a difference of yards that comes out in feet. */
import { expect, it } from 'vitest';
import { concreteOrder } from '../../src/index';
import { stepText } from '../../src/report/view';

/** A step of an order, as it is told. */
function told(volume: string, allowance: string, step: string) {
  const { working } = concreteOrder({ volume, allowance, increment: '0.25 yd3', truckCapacity: '10 yd3' });
  return working.map((one) => stepText(one)).find(({ what }) => what === step);
}

it('tells what large volumes come to in their unit', () => {
  const above = told('8.5 yd3', '5%', 'above the net volume');
  // 8.5 × 1.05 = 8.925, ordered as 9; 9 − 8.5 = 0.5.
  expect(`${above?.put} = ${above?.gives}`).toBe('9 yd3 − 8.5 yd3 = 0.50 yd3');
  const rest = told('8.7 yd3', '3%', 'above the net volume');
  expect(`${rest?.put} = ${rest?.gives}`).toBe('9 yd3 − 8.7 yd3 = 0.30 yd3');
});

it('tells small ones among themselves in the small unit', () => {
  expect(told('8 ft3', '10%', 'with allowance')?.gives).toBe('8.8 ft3');
});
