/** Half a band that holds four times of five, in standard normal deviates. */
export const FOUR_OF_FIVE = 1.2815515655446004;
