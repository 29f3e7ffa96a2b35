/** Characters that are compared: no known word is longer. */
const LONGEST_WORD = 100;

/**
 * The known word that a mistyped one most likely means: one or two letters off, or one beginning with
 * the other; undefined when nothing is near.
 *
 * @example suggest('opning_w', ['opening_w', 'opening_h']) // 'opening_w'
 */
export function suggest<Word extends string>(word: string, known: readonly Word[]): Word | undefined {
  const typed = word.slice(0, LONGEST_WORD).toLowerCase();
  // Two slips are near in a long word and a different word in a short one.
  const allowed = typed.length >= 6 ? 2 : 1;
  let best: { readonly word: Word; readonly distance: number } | undefined;
  for (const candidate of known) {
    const distance = editDistance(typed, candidate.toLowerCase());
    if (distance <= allowed && (best === undefined || distance < best.distance)) {
      best = { word: candidate, distance };
    }
  }
  return best?.word ?? known.find((candidate) => begins(typed, candidate.toLowerCase()));
}

/** ` (did you mean X?)` to end a clause with, or nothing. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = suggest(word, known);
  return near === undefined ? '' : ` (did you mean ${near}?)`;
}

const begins = (a: string, b: string): boolean =>
  Math.min(a.length, b.length) >= 3 && (a.startsWith(b) || b.startsWith(a));

/** Insertions, deletions, replacements and swaps of neighbours that turn one word into the other. */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = at(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let cost = Math.min(replaced, at(last, j) + 1, at(row, j - 1) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, at(beforeLast, j - 2) + 1);
      }
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] ?? Number.POSITIVE_INFINITY;
