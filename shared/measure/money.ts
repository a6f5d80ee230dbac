import { Big } from 'big.js';

/** Money as it travels in files: a decimal string with two places, half a cent up. */
export const moneyText = (value: Big): string => value.round(2, Big.roundHalfUp).toFixed(2);

/** Sum of money given as decimal strings; exact. @throws Error when a text is not a decimal number. */
export const addMoney = (...amounts: readonly string[]): string => moneyText(amounts.reduce((sum, a) => sum.plus(a), new Big(0)));
