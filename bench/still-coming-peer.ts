import gammaln from "@stdlib/math-base-special-gammaln";
import type { BgNbd, Repeats } from "#kernels/survival";

// The plain way: the paper's formula for each person by herself, and a climb along one logarithm after another with
// a step that halves when none leads up. It shares nothing with the fit that it stands beside.

type Climbed = { readonly parameters: BgNbd; readonly logLikelihood: number; readonly looks: number };

const LEAST_STEP = 1e-5;

export function plainFit(people: readonly Repeats[]): Climbed {
  let logs = [0, 1, 0, 0];
  let best = plainLogLikelihood(named(logs), people);
  let looks = 1;
  for (let step = 0.5; step > LEAST_STEP; ) {
    const before = best;
    const from = logs;
    for (let index = 0; index < logs.length; index += 1) {
      for (const by of [step, -step]) {
        const at = logs.map((log, other) => (other === index ? log + by : log));
        const value = plainLogLikelihood(named(at), people);
        looks += 1;
        if (value <= best) continue;
        best = value;
        logs = at;
        break;
      }
    }
    // and once more the same way, since r goes with alpha and a with b
    const further = logs.map((log, index) => 2 * log - (from[index] ?? log));
    const value = plainLogLikelihood(named(further), people);
    looks += 1;
    if (value > best) {
      best = value;
      logs = further;
    }
    if (best <= before) step /= 2;
  }
  return { parameters: named(logs), logLikelihood: best, looks };
}

function plainLogLikelihood({ r, alpha, a, b }: BgNbd, people: readonly Repeats[]): number {
  let sum = 0;
  for (const { repeats: x, last, span } of people) {
    const first = gammaln(r + x) - gammaln(r) + r * Math.log(alpha);
    const second = gammaln(a + b) + gammaln(b + x) - gammaln(b) - gammaln(a + b + x);
    const still = (alpha + span) ** -(r + x);
    const gone = x === 0 ? 0 : (a / (b + x - 1)) * (alpha + last) ** -(r + x);
    sum += first + second + Math.log(still + gone);
  }
  return sum;
}

function named(logs: readonly number[]): BgNbd {
  const [r = 0, alpha = 0, a = 0, b = 0] = logs.map((log) => Math.exp(log));
  return { r, alpha, a, b };
}
