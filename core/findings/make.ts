import type { Finding, Place } from './finding.ts';

type Values = Finding['values'];

/** A finding that stops the export. */
export const error = (code: string, message: string, at: Place = {}, values: Values = {}): Finding => ({
  code,
  severity: 'error',
  message,
  at,
  values,
});

/** A finding that is shown, and lets the work go on. */
export const warning = (code: string, message: string, at: Place = {}, values: Values = {}): Finding => ({
  code,
  severity: 'warning',
  message,
  at,
  values,
});

export const hasErrors = (findings: readonly Finding[]): boolean =>
  findings.some((finding) => finding.severity === 'error');
