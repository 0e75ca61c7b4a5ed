export { betaBinomial } from "./beta-binomial.ts";
export { binomialAtLeast, binomialAtMost, binomialPmf } from "./binomial.ts";
export { cappedCount, expectedMinimum, expectedOver } from "./capped-count.ts";
export { convolve, convolveTimes } from "./convolve.ts";
export { type CountModel, countAtLeast, countPmf } from "./count-model.ts";
export { type Distribution, meanOf, meanOfLowest, quantileOf, varianceOf } from "./distribution.ts";
export { exactBinomialAtLeast } from "./exact-binomial.ts";
export { negativeBinomialPmf } from "./negative-binomial.ts";
export { poissonPmf } from "./poisson.ts";
