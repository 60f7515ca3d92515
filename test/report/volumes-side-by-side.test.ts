/** Volumes of one step are told in one unit: nobody checks a difference of yards that comes out in feet. */
import { expect, it } from 'vitest';
import { concreteOrder } from '../../src/index';
import { stepText } from '../../src/report/view';

it('tells what large volumes come to in their unit', () => {
  const { working } = concreteOrder({
    volume: '8.5 yd3',
    allowance: '5%',
    increment: '0.25 yd3',
    truckCapacity: '10 yd3',
  });
  const told = working.map((step) => stepText(step)).find(({ what }) => what === 'above the net volume');
  // 8.5 × 1.05 = 8.925, ordered as 9; 9 − 8.5 = 0.5.
  expect(`${told?.put} = ${told?.gives}`).toBe('9 yd3 − 8.5 yd3 = 0.50 yd3');
  const small = concreteOrder({
    volume: '8.7 yd3',
    allowance: '3%',
    increment: '0.25 yd3',
    truckCapacity: '10 yd3',
  });
  const rest = small.working
    .map((step) => stepText(step))
    .find(({ what }) => what === 'above the net volume');
  expect(`${rest?.put} = ${rest?.gives}`).toBe('9 yd3 − 8.7 yd3 = 0.30 yd3');
});

it('tells small ones among themselves in the small unit', () => {
  const { working } = concreteOrder({
    volume: '8 ft3',
    allowance: '10%',
    increment: '0.25 yd3',
    truckCapacity: '10 yd3',
  });
  const told = working.map((step) => stepText(step)).find(({ what }) => what === 'with allowance');
  expect(told?.gives).toBe('8.8 ft3');
});
