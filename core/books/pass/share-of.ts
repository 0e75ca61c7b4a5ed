/**
 * The price of the k-th class of n, in whole minor units, so that all n of them add to the price: 25.00 in 3 is
 * 8.33 + 8.34 + 8.33. Share k is upTo(k) − upTo(k − 1) with upTo(k) = price × k ÷ n, half a coin going up.
 */
export function shareOf(price: number, size: number, k: number): number {
  if (k < 1) throw new RangeError(`share ${k} of ${size}`);
  return sharesUpTo(price, size, k) - sharesUpTo(price, size, k - 1);
}

/** The first k shares together: round(price × k ÷ n), in whole numbers throughout. */
export function sharesUpTo(price: number, size: number, k: number): number {
  const whole = [price, size, k].every(Number.isInteger);
  if (!whole || price < 0 || size < 1 || k < 0 || k > size)
    throw new RangeError(`shares up to ${k} of ${size} at ${price}`);
  const twice = 2 * price * k + size;
  // below 2^53 the quotient of two whole numbers is never rounded up to the next whole one
  if (twice > Number.MAX_SAFE_INTEGER) throw new RangeError(`too large to share: ${price} by ${k}`);
  return Math.floor(twice / (2 * size));
}
