/** Prints the floor, its words and its set-out figures; the other parts of the page stay off the paper. */
export function printFloor(): void {
  const { dataset } = document.documentElement;
  dataset["print"] = "floor";
  addEventListener("afterprint", () => delete dataset["print"], { once: true });
  print();
}
