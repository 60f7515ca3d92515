/** Ordinary ranges of the shares in a bid. Prices have none: they are the caller's. */
import { type Ordinary, range } from '../reckoning/ordinary';

export const ALLOWED: Ordinary = /*#__PURE__*/ range('an allowance on what is bought', '0.5%', '50%');

export const TAX_RATE: Ordinary = /*#__PURE__*/ range('a rate of sales tax', '0.25%', '30%');

export const EFFICIENCY: Ordinary = /*#__PURE__*/ range('the efficiency of a crew', '20%', '150%', '80%');

export const WORKDAY: Ordinary = /*#__PURE__*/ range('a working day', '3 h', '16 h', '8 h');

export const BURDEN: Ordinary = /*#__PURE__*/ range('what is paid on top of wages', '1%', '120%');

export const OVERHEAD: Ordinary = /*#__PURE__*/ range('overhead', '1%', '400%');

export const PROFIT: Ordinary = /*#__PURE__*/ range('profit', '0.5%', '300%');

export const CONTINGENCY: Ordinary = /*#__PURE__*/ range('contingency', '0.5%', '50%');

export const RETAINAGE: Ordinary = /*#__PURE__*/ range('retainage', '1%', '20%');

export const BAND: Ordinary = /*#__PURE__*/ range(
  'the variation of quantity that changes no price',
  '1%',
  '50%',
);
