import { betaBinomial, binomialPmf, convolve, type Distribution } from "#kernels/statistics";

/**
 * How people say yes together:
 * alone: each decides for herself;
 * alike: any two are as alike as this correlation says, as when several come in pairs or rain keeps all at home;
 * pairs: so many couples are known, each coming or staying away as one.
 */
export type Together =
  | { readonly kind: "alone" }
  | { readonly kind: "alike"; readonly correlation: number }
  | { readonly kind: "pairs"; readonly pairs: number };

/**
 * How many of those accepted come. 0.6 of 20 who decide alone is Binomial(20, 0.6); alike by ρ it is
 * beta-binomial with a + b = 1 ÷ ρ − 1; known pairs count twice. Throws on an accepted number that is not whole.
 */
export function turnUpOf(accepted: number, turnUp: number, together: Together): Distribution {
  if (!Number.isInteger(accepted) || accepted < 0) throw new RangeError(`accepted: ${accepted}`);
  switch (together.kind) {
    case "alone":
      return binomial(accepted, turnUp);
    case "alike":
      return alike(accepted, turnUp, together.correlation);
    case "pairs": {
      const pairs = Math.min(together.pairs, Math.floor(accepted / 2));
      return convolve(doubled(binomial(pairs, turnUp)), binomial(accepted - 2 * pairs, turnUp));
    }
  }
}

function alike(accepted: number, turnUp: number, correlation: number): Distribution {
  // nobody and everybody leave nothing to be alike in
  if (correlation === 0 || turnUp === 0 || turnUp === 1) return binomial(accepted, turnUp);
  const weight = 1 / correlation - 1;
  return betaBinomial(accepted, turnUp * weight, (1 - turnUp) * weight);
}

function binomial(trials: number, chance: number): Distribution {
  return Array.from({ length: trials + 1 }, (_, count) => binomialPmf(count, trials, chance));
}

/** Twice a count: the chances of 0, 2, 4 … */
function doubled(distribution: Distribution): Distribution {
  return Array.from({ length: 2 * distribution.length - 1 }, (_, count) =>
    count % 2 === 0 ? (distribution[count / 2] ?? 0) : 0,
  );
}
