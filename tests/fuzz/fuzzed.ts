import * as fc from 'fast-check';

/** What does not hold of one input and must of every one; empty when all is well. */
export type Breaches = readonly string[];

/** A parser and the rules that hold of it whatever it is given. */
export interface Fuzzed {
  readonly name: string;
  /** How many inputs it gets for one run: a quick parser gets more than a slow one. */
  readonly weight: number;
  /** Tries so many random inputs and throws at the first, made small, that breaks a rule. Returns how many it tried. */
  readonly fuzz: (seed: number, runs: number) => Promise<number>;
  /** Tries one text of the corpus. */
  readonly tryText: (text: string) => Promise<Breaches>;
}

/** ms. No input may take longer, on a machine with other work. */
const LONGEST = 15_000;

/** What every parser is asked for: it ends, throws nothing but what it says, and leaves the prototypes alone. */
export function fuzzed<Input>(
  name: string,
  rules: {
    readonly inputs: fc.Arbitrary<Input>;
    readonly check: (input: Input) => Breaches | Promise<Breaches>;
    /** The input that a text of the corpus makes. */
    readonly ofText: (text: string) => Input;
    /** What it may throw. */
    readonly mayThrow?: (problem: unknown) => boolean;
    readonly weight?: number;
  },
): Fuzzed {
  const { inputs, check, ofText, mayThrow = () => false, weight = 1 } = rules;
  const attempt = async (input: Input): Promise<Breaches> => {
    const begun = performance.now();
    const found: string[] = [];
    try {
      found.push(...(await check(input)));
    } catch (problem) {
      if (!mayThrow(problem))
        found.push(`threw ${problem instanceof Error ? problem.stack : String(problem)}`);
    }
    const took = performance.now() - begun;
    if (took > LONGEST) found.push(`took ${Math.round(took)} ms`);
    if (Object.keys(Object.prototype).length > 0) found.push('a prototype was written to');
    return found;
  };
  return {
    name,
    weight,
    tryText: (text) => attempt(ofText(text)),
    async fuzz(seed, runs) {
      let tried = 0;
      const property = fc.asyncProperty(inputs, async (input) => {
        tried += 1;
        const found = await attempt(input);
        if (found.length > 0) throw new Error(found.join('\n'));
      });
      await fc.assert(property, { seed, numRuns: Math.max(1, Math.round(runs * weight)) });
      return tried;
    },
  };
}
