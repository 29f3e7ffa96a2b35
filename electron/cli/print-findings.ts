import type { Finding } from '../../core/findings/finding.ts';

/** A finding on one line; its message says where it stands in the file. */
const findingLine = ({ at, severity, message }: Finding, file: string): string =>
  `${at.file ?? file}: ${severity}: ${message}`;

/** All findings, errors first, in the order of their rows. */
export function findingLines(findings: readonly Finding[], file: string): readonly string[] {
  const rank = ({ severity }: Finding) => (severity === 'error' ? 0 : 1);
  return findings
    .toSorted((a, b) => rank(a) - rank(b) || (a.at.row ?? 0) - (b.at.row ?? 0))
    .map((finding) => findingLine(finding, file));
}

/** `2 errors, 1 warning` */
export function findingCounts(findings: readonly Finding[]): string {
  const count = (severity: Finding['severity']) =>
    counted(findings.filter((finding) => finding.severity === severity).length, severity);
  return `${count('error')}, ${count('warning')}`;
}

/** `1 line`, `2 lines` */
export const counted = (number: number, word: string): string =>
  `${number} ${word}${number === 1 ? '' : 's'}`;
