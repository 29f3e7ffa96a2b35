import type { Finding, Place } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { quoteText } from './quote-text.ts';

/** Checks that an order's date, when it has one, is a day of the calendar as `YYYY-MM-DD`. */
export function checkDate(date: string | undefined, at: Place): readonly Finding[] {
  if (date === undefined || isDate(date)) return [];
  const message = `The order's date reads ${quoteText(date)}: write a day as YYYY-MM-DD, such as 2031-05-20.`;
  return [error('order/date', message, at, { read: date })];
}

/** Whether a text is a day of the calendar as `YYYY-MM-DD`. */
export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}
